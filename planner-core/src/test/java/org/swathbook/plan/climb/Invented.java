package org.swathbook.plan.climb;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.book.HouseRules;
import org.swathbook.catalog.WeedId;
import org.swathbook.check.BrokenHouseRule;
import org.swathbook.growth.Timings;
import org.swathbook.growth.TraceBuilder;
import org.swathbook.growth.TraceSet;
import org.swathbook.measure.Money;
import org.swathbook.plan.DemoCopy;
import org.swathbook.plan.choice.DateGrid;
import org.swathbook.plan.choice.DoseOption;
import org.swathbook.plan.choice.OptionMaker;
import org.swathbook.plan.choice.Strengths;
import org.swathbook.plan.draft.Draft;
import org.swathbook.plan.draft.Evaluator;
import org.swathbook.plan.draft.PlanSpace;
import org.swathbook.plan.draft.Stop;
import org.swathbook.plan.draft.Walked;
import org.swathbook.plan.draft.WalkedWith;
import org.swathbook.rules.TankOffers;
import org.swathbook.season.outcome.LateCost;
import org.swathbook.season.outcome.PassOutcome;
import org.swathbook.season.outcome.PassWeed;
import org.swathbook.season.outcome.SeasonSums;
import org.swathbook.season.outcome.SiteControl;
import org.swathbook.season.outcome.WalkedPasses;
import org.swathbook.season.outcome.WeedOutcome;
import org.swathbook.season.outcome.WeedOutcome.LayerOverlap;
import org.swathbook.testing.Restated;

/**
 * Soybean with Palmer amaranth that resists sites 2 and 9, and six doses. What a draft is worth,
 * whether it may be and what it breaks is what a test says: no weather decides.
 */
final class Invented implements Evaluator {
  static final Book BOOK = DemoCopy.inMemory();
  static final Field FIELD = BOOK.findField("ND-1").orElseThrow();
  static final TraceSet TRACES = TraceBuilder.build(BOOK, FIELD);
  static final WeedId PALMER = WeedId.of("AMAPA");

  /** No driver: it lacks nothing and asks for nothing. */
  private static final PassWeed VELVETLEAF =
      new PassWeed(WeedId.of("ABUTH"), false, 0, 5, 8, 5, 10, List.of(), List.of());

  private static final List<DoseOption> ALL = OptionMaker.make(BOOK, FIELD).options();

  /** Two rates of site 10, through leaves. */
  static final int GLUFOSINATE = 0;

  static final int MORE_GLUFOSINATE = 1;

  /** Site 4, through leaves. */
  static final int CHOLINE = 2;

  /** Site 15, through the soil. */
  static final int ACETOCHLOR = 3;

  /** Site 5, both ways. */
  static final int METRIBUZIN = 4;

  /** Nothing on this weed. */
  static final int CLETHODIM = 5;

  static final List<DoseOption> SIX =
      List.of(
          option(GLUFOSINATE, "glufosinate-ammonium", 29),
          option(MORE_GLUFOSINATE, "glufosinate-ammonium", 36),
          option(CHOLINE, "2-4-d-choline", 2),
          option(ACETOCHLOR, "acetochlor", 2),
          option(METRIBUZIN, "metribuzin", 10.5),
          option(CLETHODIM, "clethodim", 16));

  /** Place of the day of planting on the grid. */
  static final int PLANTING = 30;

  private final List<DoseOption> options;
  private int maxPasses = 4;
  private int maxProducts = 4;
  private int minDays = 7;
  private PlanSpace.UseVerdict uses = (option, date) -> true;
  private PlanSpace.PairVerdict pairs = (a, b, date) -> true;
  private ToDoubleFunction<Draft> dollars = d -> 0;
  private Predicate<Draft> legal = d -> true;
  private Function<Draft, List<String>> broken = d -> List.of();

  private Function<Stop, PassWeed> weeds = s -> palmerAt(false, List.of(), List.of());
  private Function<Draft, List<WalkedPasses.Year>> years = d -> List.of();
  private List<Stop> made = List.of();
  private WeedOutcome palmer = palmer(100, 100, 0, List.of());

  /** What was walked, in order. */
  final List<Draft> asked = new ArrayList<>();

  private Invented(List<DoseOption> options) {
    this.options = options;
  }

  static Invented ofSix() {
    return new Invented(SIX);
  }

  static Invented ofAll() {
    return new Invented(ALL);
  }

  private static DoseOption option(int index, String active, double amount) {
    DoseOption found =
        ALL.stream()
            .filter(o -> o.ingredient().value().equals(active))
            .filter(o -> o.dose().rate().amount() == amount)
            .findFirst()
            .orElseThrow();
    return new DoseOption(index, found.dose(), found.ingredient(), found.cost());
  }

  Invented passes(int most) {
    maxPasses = most;
    return this;
  }

  Invented products(int most) {
    maxProducts = most;
    return this;
  }

  Invented apart(int days) {
    minDays = days;
    return this;
  }

  Invented allowing(PlanSpace.UseVerdict verdict) {
    uses = verdict;
    return this;
  }

  Invented mixing(PlanSpace.PairVerdict verdict) {
    pairs = verdict;
    return this;
  }

  /** Acetochlor and 2,4-D in one tank: invented. */
  static boolean refuses(DoseOption a, DoseOption b, int date) {
    return !(a.index() == CHOLINE && b.index() == ACETOCHLOR);
  }

  /** Dollars an acre. */
  Invented worth(ToDoubleFunction<Draft> each) {
    dollars = each;
    return this;
  }

  /** Drafts that are named are worth a dollar more each, the last one most; no other may be. */
  Invented onlyAlong(List<Draft> path) {
    dollars = path::indexOf;
    legal = path::contains;
    return this;
  }

  Invented legal(Predicate<Draft> of) {
    legal = of;
    return this;
  }

  /** Names of house rules, each missed by one unit. */
  Invented breaking(Function<Draft, List<String>> of) {
    broken = of;
    return this;
  }

  /** Passes that stand before those of every draft. */
  Invented made(Stop... before) {
    made = List.of(before);
    return this;
  }

  /** What each pass meets of Palmer amaranth. */
  Invented meeting(Function<Stop, PassWeed> of) {
    weeds = of;
    return this;
  }

  /** What the season comes to for it. */
  Invented comingTo(WeedOutcome of) {
    palmer = of;
    return this;
  }

  Invented layers(Function<Draft, List<WalkedPasses.Year>> of) {
    years = of;
    return this;
  }

  static PassWeed palmerAt(boolean stands, List<SiteControl> leaves, List<SiteControl> soil) {
    return new PassWeed(PALMER, stands, stands ? 5 : 0, 5, 8, 5, 10, leaves, soil);
  }

  static WeedOutcome palmer(
      double controlPct, double withoutWeakestPct, double exposedPct, List<LayerOverlap> overlaps) {
    return new WeedOutcome(
        TRACES.weeds().stream().filter(w -> w.weed().id().equals(PALMER)).findFirst().orElseThrow(),
        controlPct,
        controlPct,
        exposedPct,
        exposedPct,
        0,
        0,
        0,
        0,
        1,
        0,
        0,
        100,
        Optional.empty(),
        withoutWeakestPct,
        0,
        overlaps,
        List.of());
  }

  HouseRules house() {
    HouseRules few =
        Restated.with(
            Restated.with(BOOK.house(), "maxProducts", maxProducts), "maxPasses", maxPasses);
    return Restated.with(few, "minDaysBetweenPasses", minDays);
  }

  PlanSpace space() {
    return new PlanSpace(FIELD, house(), new DateGrid(FIELD, 3), options, uses, pairs);
  }

  Strengths strengths() {
    return new Strengths(BOOK, TRACES, options);
  }

  Moves moves() {
    return new Moves(space(), this);
  }

  Starts starts(int firstDate) {
    return new Starts(space(), strengths(), house(), this, firstDate);
  }

  Mending mending() {
    return new Mending(space(), strengths(), house(), new TankOffers(BOOK, TRACES), moves());
  }

  Search search(Steps steps) {
    return new Search(moves(), mending(), starts(0), this, steps);
  }

  @Override
  public double quick(Draft draft) {
    return dollars.applyAsDouble(draft);
  }

  @Override
  public double quickGoal(Draft draft) {
    return dollars.applyAsDouble(draft);
  }

  @Override
  public double goal(Draft draft) {
    return dollars.applyAsDouble(draft);
  }

  @Override
  public boolean legal(Draft draft) {
    return legal.test(draft);
  }

  @Override
  public Walked full(Draft draft) {
    asked.add(draft);
    return walked(draft, List.of());
  }

  /** As {@link #full}, with more that it breaks. */
  Walked walked(Draft draft, List<BrokenHouseRule> more) {
    List<BrokenHouseRule> all = new ArrayList<>(more);
    broken.apply(draft).forEach(name -> all.add(missed(name, 1)));
    return WalkedWith.invented(
        draft,
        new SeasonSums(
            new WalkedPasses(passes(draft), years.apply(draft)),
            List.of(palmer),
            Map.of(),
            Optional.of(Money.ZERO),
            Money.ZERO,
            Optional.of(Money.ofDollars(dollars.applyAsDouble(draft))),
            100),
        all,
        Money.ZERO);
  }

  static BrokenHouseRule missed(String rule, double by) {
    return new BrokenHouseRule(rule, Optional.empty(), OptionalInt.empty(), by, 0);
  }

  private List<PassOutcome> passes(Draft draft) {
    PlanSpace space = space();
    List<PassOutcome> out = new ArrayList<>();
    List<Stop> all = new ArrayList<>(made);
    all.addAll(draft.stops());
    for (Stop s : all) {
      var date = space.grid().date(s.date());
      out.add(
          new PassOutcome(
              out.size(),
              date,
              Timings.at(TRACES, date),
              date,
              date,
              space.grid().daysFromPlanting(s.date()),
              "",
              space.mix(s),
              List.of(),
              Optional.of(Money.ZERO),
              List.of(VELVETLEAF, weeds.apply(s)),
              LateCost.NONE,
              out.size() < made.size()));
    }
    return out;
  }
}
