package org.swathbook.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.swathbook.book.Book;
import org.swathbook.book.CropEconomics;
import org.swathbook.book.DriverKind;
import org.swathbook.book.Field;
import org.swathbook.book.HouseRules;
import org.swathbook.book.Resistance;
import org.swathbook.book.ScoutedCount;
import org.swathbook.book.ScoutedHeight;
import org.swathbook.book.Scouting;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.CropId;
import org.swathbook.catalog.IngredientId;
import org.swathbook.catalog.Site;
import org.swathbook.growth.TraceBuilder;
import org.swathbook.growth.TraceSet;
import org.swathbook.measure.Money;
import org.swathbook.plan.choice.DateGrid;
import org.swathbook.plan.choice.OptionMaker;
import org.swathbook.plan.choice.PlanWishes;
import org.swathbook.plan.choice.Strengths;
import org.swathbook.plan.climb.Mending;
import org.swathbook.plan.climb.Moves;
import org.swathbook.plan.climb.Search;
import org.swathbook.plan.climb.Starts;
import org.swathbook.plan.climb.Steps;
import org.swathbook.plan.draft.FieldEvaluator;
import org.swathbook.plan.draft.Legality;
import org.swathbook.plan.draft.PlanSpace;
import org.swathbook.plan.draft.Stop;
import org.swathbook.program.Anchor;
import org.swathbook.program.Pass;
import org.swathbook.season.Kernel;

/**
 * A field drawn at random: one of the demo book's planted on another day, with other weeds to fear,
 * other money and an adviser of other strictness, and passes drawn from what its labels allow on a
 * few dates. Sensible or not: the search must find the best program of any passes.
 */
public final class SmallBook {
  private static final int DATES = 6;

  public final Book book;
  final Field field;
  private final Random random;
  private final PlanSpace space;
  private final Legality legality;
  private final TraceSet traces;
  private final List<Integer> dates;

  private SmallBook(Book demo, Random random, Random seen) {
    this.random = random;
    Field drawn = demo.fields().get(random.nextInt(demo.fields().size()));
    this.field = drawn.plantedOn(drawn.plantDate().plusDays(random.nextInt(29) - 14));
    LocalDate day = field.plantDate().plusDays(seen.nextInt(45) - 5);
    this.book = seenOn(day, withWeeds(withMoney(demo)).withField(field), seen);
    this.traces = TraceBuilder.build(book, field, day);
    DateGrid grid = new DateGrid(field, book.house().dateStepDays());
    this.legality = new Legality(book, traces, grid);
    this.dates = dates(grid);
    this.space =
        new PlanSpace(
            field,
            book.house(),
            grid,
            OptionMaker.make(book, field).options(),
            (option, date) -> dates.contains(date) && legality.allows(option, date),
            legality::allows);
  }

  public static SmallBook draw(Book demo, long seed) {
    return new SmallBook(demo, new Random(seed), new Random(~seed));
  }

  /**
   * In one of three books some weeds were counted on a day, fewer or more than the model has, with
   * their height or without: passes before it then act on other plants than those after it.
   */
  private Book seenOn(LocalDate day, Book from, Random seen) {
    List<Scouting> out = new ArrayList<>();
    if (seen.nextInt(3) == 0) {
      for (WeedPressure w : from.weedsOf(field.id())) {
        double low = 1 + 10 * seen.nextDouble();
        if (seen.nextBoolean()) {
          out.add(
              new Scouting(
                  day,
                  field.id(),
                  "",
                  Optional.of(w.weed().id()),
                  seen.nextBoolean()
                      ? Optional.of(ScoutedHeight.range(low, 2 * low))
                      : Optional.empty(),
                  Optional.of(
                      new ScoutedCount(
                          seen.nextInt(5) == 0 ? 0 : w.perM2() * seen.nextDouble(),
                          OptionalDouble.empty())),
                  Optional.empty(),
                  0));
        }
      }
    }
    return from.withScoutings(out);
  }

  public PlanSpace space() {
    return space;
  }

  /**
   * Sometimes with a budget, sometimes with an active that is to be in a program.
   *
   * @param made passes that stand before all programs
   */
  public FieldEvaluator evaluator(List<Stop> stops, List<Stop> made) {
    TreeSet<IngredientId> include = new TreeSet<>();
    if (random.nextInt(4) == 0) {
      Stop stop = stops.get(random.nextInt(stops.size()));
      include.add(space.option(stop.options().get(0)).ingredient());
    }
    Optional<Money> budget =
        random.nextInt(4) == 0
            ? Optional.of(Money.ofDollars(20 + random.nextInt(100)))
            : Optional.empty();
    PlanWishes wishes =
        new PlanWishes(new TreeSet<>(), new TreeSet<>(), include, budget, OptionalInt.empty());
    List<Pass> facts =
        made.stream()
            .map(s -> new Pass(new Anchor.Made(space.grid().date(s.date())), space.mix(s)))
            .toList();
    return new FieldEvaluator(book, Kernel.of(book, traces), space, legality, wishes, facts);
  }

  /** The planner's starts. */
  public Starts starts(FieldEvaluator evaluator) {
    return new Starts(space, strengths(), book.house(), evaluator);
  }

  /** A search that has met no program yet. */
  public Search search(FieldEvaluator evaluator) {
    Moves moves = new Moves(space, evaluator);
    Mending mending = new Mending(space, strengths(), book.house(), evaluator.offers(), moves);
    return new Search(moves, mending, starts(evaluator), evaluator, new Steps(12, 0.1, true));
  }

  private Strengths strengths() {
    return new Strengths(book, traces, space.options());
  }

  /**
   * Up to so many passes on a few dates. Tanks come back on other dates, and actives in other
   * tanks, so that caps and intervals bind and programs cost the same.
   */
  public List<Stop> passes(int most) {
    Set<Stop> out = new LinkedHashSet<>();
    List<List<Integer>> tanks = new ArrayList<>();
    for (int draw = 0; draw < 3 * most && out.size() < most; draw++) {
      int date = dates.get(random.nextInt(dates.size()));
      List<Integer> known = tanks.isEmpty() ? List.of() : tanks.get(random.nextInt(tanks.size()));
      List<Integer> tank =
          random.nextBoolean() && space.legal(date, known) && !known.isEmpty() ? known : tank(date);
      if (!tank.isEmpty()) {
        tanks.add(tank);
        out.add(new Stop(date, tank));
      }
    }
    return List.copyOf(out);
  }

  private List<Integer> tank(int date) {
    List<Integer> tank = new ArrayList<>();
    List<Integer> legal = space.legalOn(date);
    int wanted = 1 + random.nextInt(space.maxProducts());
    for (int draw = 0; draw < 12 && tank.size() < wanted && !legal.isEmpty(); draw++) {
      int option = legal.get(random.nextInt(legal.size()));
      if (space.takes(date, tank, option)) {
        tank.add(option);
      }
    }
    return tank;
  }

  private List<Integer> dates(DateGrid grid) {
    TreeSet<Integer> out = new TreeSet<>();
    while (out.size() < DATES) {
      out.add(grid.placeOf(random.nextInt(85) - 28));
    }
    return List.copyOf(out);
  }

  private Book withMoney(Book demo) {
    // Without a price for the crop only cost counts, and many programs come to the same net.
    double price = new double[] {0, 0, 0.3, 1, 2}[random.nextInt(5)];
    Map<CropId, CropEconomics> crops = new TreeMap<>();
    demo.crops()
        .forEach(
            (crop, e) ->
                crops.put(
                    crop, new CropEconomics(price * e.dollarsPerBu(), e.yieldGoalBuPerAcre())));
    return new Book(
        demo.name(),
        demo.season(),
        demo.catalog(),
        house(),
        crops,
        Money.ofDollars(random.nextInt(12)),
        demo.resprayExtra(),
        demo.fields(),
        demo.weeds(),
        demo.journal(),
        demo.pastSeasons(),
        demo.prices(),
        demo.stations(),
        demo.scoutings(),
        demo.notes());
  }

  private Book withWeeds(Book from) {
    Book out = from;
    for (WeedPressure w : from.weedsOf(field.id())) {
      WeedPressure drawn =
          new WeedPressure(
              w.field(),
              w.weed(),
              w.perM2() * Math.exp(random.nextGaussian()),
              random.nextInt(3) == 0 ? DriverKind.YES : w.driver(),
              w.biotypes(),
              w.listed(),
              w.note());
      if (random.nextInt(3) == 0) {
        int site = List.of(2, 4, 5, 9, 10, 14, 15, 27).get(random.nextInt(8));
        drawn =
            drawn.resisting(
                new Resistance(
                    Optional.of(Site.of(site)),
                    Optional.empty(),
                    random.nextInt(10) / 10.0,
                    "confirmed"));
      }
      out = out.withWeed(drawn);
    }
    return out;
  }

  private HouseRules house() {
    HouseRules d = HouseRules.DEFAULTS;
    double strict = random.nextInt(3) / 2.0;
    return new HouseRules(
        0.6 + random.nextInt(3) / 10.0,
        0.5 + random.nextInt(3) / 10.0,
        random.nextInt(1 + (int) (2 * strict)),
        random.nextInt(1 + (int) (2 * strict)),
        random.nextInt(1 + (int) Math.ceil(strict)),
        d.layerThreshold(),
        random.nextInt(15) - 7,
        Map.of(),
        1 - strict * random.nextDouble(),
        strict * random.nextDouble(),
        strict * random.nextDouble(),
        d.otherControl(),
        d.maxSurvivorsPerAcre(),
        strict * random.nextDouble(),
        d.sizePercentile(),
        d.suitableRainMm(),
        d.suitableRainBeforeMm(),
        d.suitableShareByMonth(),
        d.suitableShareOther(),
        random.nextInt(5),
        d.missFoliar(),
        d.missUnderCanopy(),
        d.missSoil(),
        d.catalogAgeMonths(),
        1 + random.nextInt(4),
        1 + random.nextInt(4),
        d.dateStepDays(),
        4 * random.nextInt(4),
        d.windMinMph(),
        d.windMaxMph());
  }
}
