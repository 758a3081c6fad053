package org.swathbook.catalog.file;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.swathbook.catalog.Cap;
import org.swathbook.catalog.Commodity;
import org.swathbook.catalog.Crop;
import org.swathbook.catalog.HarvestLimit;
import org.swathbook.catalog.Method;
import org.swathbook.catalog.PlantingBand;
import org.swathbook.catalog.Position;
import org.swathbook.catalog.RateRow;
import org.swathbook.catalog.Registration;
import org.swathbook.catalog.RotationRow;
import org.swathbook.catalog.SoilCondition;
import org.swathbook.catalog.SoilTexture;
import org.swathbook.catalog.StateLimit;
import org.swathbook.catalog.Stated;
import org.swathbook.catalog.Terms;
import org.swathbook.catalog.TimePoint;
import org.swathbook.catalog.Trait;
import org.swathbook.catalog.Use;
import org.swathbook.catalog.WeedHeights;
import org.swathbook.catalog.WeedId;
import org.swathbook.catalog.WeedRate;
import org.swathbook.catalog.Window;
import org.swathbook.measure.Basis;
import org.swathbook.measure.Period;
import org.swathbook.measure.Rate;
import org.swathbook.measure.RateRange;

/** Random uses of one ingredient: rows by soil, bands, caps, windows, intervals, registration. */
final class RandomUses {
  private static final List<String> CODES = Formulations.CODES;
  private static final List<String> STATES = List.of("IA", "IL", "IN", "KS", "MN", "NE", "SD");
  private static final List<Trait> TRAITS = Trait.NAMES.stream().map(Trait::of).toList();

  private final Draw draw;
  private final Basis basis;
  private final RandomTerms terms;
  private final List<WeedId> weeds;

  RandomUses(Draw draw, Basis basis, RandomTerms terms, List<WeedId> weeds) {
    this.draw = draw;
    this.basis = basis;
    this.terms = terms;
    this.weeds = weeds;
  }

  Use use(Optional<Crop> crop, Terms ofIngredient) {
    return draw.chance(0.15) ? refused(crop, ofIngredient) : allowed(crop, ofIngredient);
  }

  /** What a label forbids outright has no limits of its own. */
  private Use refused(Optional<Crop> crop, Terms ofIngredient) {
    return new Use(
        crop.map(Crop::id),
        draw.some(positions(crop), 1),
        draw.chance(0.2) ? draw.some(CODES, 1) : Set.of(),
        Set.of(),
        true,
        Stated.unknown("trait"),
        Stated.unknown("window"),
        Stated.unknown("crop height"),
        Stated.unknown("rate"),
        Stated.unknown("least rate for a weed"),
        Stated.unknown("whether it may be worked in"),
        Stated.unknown("days before planting"),
        Stated.unknown("soil pH limit"),
        Stated.unknown("cap"),
        Stated.unknown("applications a season"),
        Stated.unknown("days between applications"),
        Map.of(),
        Stated.unknown("weed height"),
        new Registration(
            StateLimit.ANYWHERE,
            Stated.unknown("years of registration"),
            Stated.unknown("last date")),
        ofIngredient,
        "",
        draw.maybe(draw::text).orElse(""));
  }

  private static List<Position> positions(Optional<Crop> crop) {
    return Arrays.stream(Position.values())
        .filter(p -> crop.isPresent() || p.phase() != Position.Phase.IN_CROP)
        .toList();
  }

  private Use allowed(Optional<Crop> crop, Terms ofIngredient) {
    Stated<List<RateRow>> rates = draw.stated("rate", () -> draw.list(1, 4, this::rateRow));
    return new Use(
        crop.map(Crop::id),
        draw.some(positions(crop), 1),
        draw.chance(0.2) ? draw.some(CODES, 1) : Set.of(),
        draw.chance(0.2) ? draw.some(Arrays.asList(Method.values()), 1) : Set.of(),
        false,
        draw.stated("trait", () -> draw.some(TRAITS, 1)),
        draw.stated("window", () -> window(crop)),
        draw.stated("crop height", () -> draw.limit(draw::heightCm)),
        rates,
        draw.stated("least rate for a weed", () -> List.of(weedRate(rates))),
        draw.stated("whether it may be worked in", () -> true),
        draw.stated("days before planting", this::bands),
        draw.stated("soil pH limit", () -> draw.limit(() -> draw.number(0, 14))),
        draw.stated("cap", () -> draw.list(1, 3, () -> cap(rates))),
        draw.stated("applications a season", () -> draw.whole(1, 12)),
        draw.stated("days between applications", () -> draw.whole(0, 400)),
        harvest(),
        draw.stated("weed height", this::weedHeights),
        registration(),
        terms.over(ofIngredient),
        draw.maybe(draw::text).orElse(""),
        draw.maybe(draw::text).orElse(""));
  }

  SoilCondition condition() {
    if (draw.chance(0.4)) {
      return SoilCondition.ALWAYS;
    }
    return new SoilCondition(
        textures(),
        draw.maybe(() -> draw.limit(draw::percentage)),
        draw.maybe(() -> draw.limit(() -> draw.number(0, 14))),
        draw.maybe(() -> draw.chance(0.5)),
        draw.maybe(() -> draw.limit(draw::percentage)));
  }

  private Set<SoilTexture> textures() {
    SoilTexture.Group group = draw.pick(SoilTexture.Group.values());
    List<SoilTexture> all = Arrays.asList(SoilTexture.values());
    return draw.some(
        draw.chance(0.5) ? all.stream().filter(t -> t.group() == group).toList() : all, 0);
  }

  private RateRow rateRow() {
    return new RateRow(
        condition(), draw.chance(0.8) ? Optional.of(draw.range(basis)) : Optional.empty());
  }

  /** Not above the highest rate. */
  private WeedRate weedRate(Stated<List<RateRow>> rates) {
    Rate most =
        rates.find().orElse(List.of()).stream()
            .flatMap(r -> r.rates().stream())
            .map(RateRange::high)
            .max(Comparator.comparingDouble(Rate::kgPerHa))
            .orElseGet(() -> draw.rate(basis));
    return new WeedRate(
        draw.some(weeds, 1),
        draw.chance(0.5) ? Draw.box(draw.heightCm()) : OptionalDouble.empty(),
        most);
  }

  /** From the lowest rate to the highest; the last may be for any. */
  private List<PlantingBand> bands() {
    List<PlantingBand> out = new ArrayList<>();
    Rate upTo = draw.rate(basis);
    int size = draw.whole(1, 4);
    for (int i = 0; i < size; i++) {
      boolean any = i == size - 1 && draw.chance(0.5);
      out.add(
          new PlantingBand(
              condition(),
              any ? Optional.empty() : Optional.of(upTo),
              draw.whole(0, 60),
              draw.chance(0.3) ? Draw.box(draw.rainMm()) : OptionalDouble.empty()));
      upTo = new Rate(upTo.amount() + draw.number(0.1, 1), upTo.unit(), upTo.area(), basis);
    }
    return out;
  }

  /** Not below the highest rate. */
  private Cap cap(Stated<List<RateRow>> rates) {
    Rate least =
        rates.find().orElse(List.of()).stream()
            .flatMap(r -> r.rates().stream())
            .map(RateRange::high)
            .max(Comparator.comparingDouble(Rate::kgPerHa))
            .orElseGet(() -> draw.rate(basis));
    return new Cap(
        draw.above(least),
        draw.pick(Cap.CapPeriod.values()),
        draw.chance(0.3) ? draw.some(Arrays.asList(Position.values()), 1) : Set.of());
  }

  private Map<Commodity, Stated<HarvestLimit>> harvest() {
    Map<Commodity, Stated<HarvestLimit>> out = new LinkedHashMap<>();
    for (Commodity c : draw.some(Arrays.asList(Commodity.values()), 0)) {
      out.put(
          c,
          draw.known(
              () ->
                  draw.chance(0.2)
                      ? new HarvestLimit(0, true)
                      : new HarvestLimit(draw.whole(0, 200), false)));
    }
    return out;
  }

  private WeedHeights weedHeights() {
    OptionalDouble broadleaf =
        draw.chance(0.7) ? Draw.box(draw.heightCm()) : OptionalDouble.empty();
    boolean grass = broadleaf.isEmpty() || draw.chance(0.5);
    return new WeedHeights(broadleaf, grass ? Draw.box(draw.heightCm()) : OptionalDouble.empty());
  }

  private Registration registration() {
    StateLimit states =
        draw.chance(0.7)
            ? StateLimit.ANYWHERE
            : new StateLimit(draw.some(STATES, 0), draw.some(STATES, 1));
    int first = draw.whole(1990, 2040);
    return new Registration(
        states,
        draw.stated(
            "years of registration",
            () -> new Registration.LabelYears(first, first + draw.whole(0, 5))),
        draw.stated(
            "last date",
            () ->
                draw.list(
                    1, 3, () -> new Registration.Cutoff(draw.some(STATES, 0), draw.monthDay()))));
  }

  /** Starts before it ends, as far as that can be seen. */
  private Window window(Optional<Crop> crop) {
    List<String> stages =
        crop.map(c -> c.stages().stream().map(s -> s.name()).toList())
            .orElse(List.of(TimePoint.EMERGENCE));
    int middle = draw.whole(0, stages.size() - 1);
    Optional<TimePoint> from =
        draw.maybe(
            () ->
                draw.pick(
                    new TimePoint.FromPlanting(-draw.whole(0, 60)),
                    new TimePoint.AtStage(stages.get(draw.whole(0, middle))),
                    new TimePoint.OnMonthDay(draw.monthDay()),
                    new TimePoint.BeforeHarvest(draw.whole(50, 90))));
    Optional<TimePoint> to =
        draw.maybe(
            () ->
                draw.pick(
                    new TimePoint.FromPlanting(draw.whole(1, 60)),
                    new TimePoint.AtStage(stages.get(draw.whole(middle, stages.size() - 1))),
                    new TimePoint.OnMonthDay(draw.monthDay()),
                    new TimePoint.BeforeHarvest(draw.whole(0, 49))));
    Optional<TimePoint> before =
        to.isPresent() || from.isPresent() && draw.chance(0.5)
            ? Optional.empty()
            : Optional.of(new TimePoint.FromPlanting(draw.whole(1, 200)));
    return new Window(from, to, before);
  }

  List<RotationRow> rotation() {
    return draw.list(1, 3, this::rotationRow);
  }

  /** Often with one condition alone, which a writer may overlook. */
  private RotationRow rotationRow() {
    int one = draw.whole(0, 7);
    return new RotationRow(
        one == 0 || draw.chance(0.2) ? condition() : SoilCondition.ALWAYS,
        one == 1 || draw.chance(0.1) ? draw.some(CODES, 1) : Set.of(),
        one == 2 || draw.chance(0.1) ? Optional.of(draw.pick(TRAITS)) : Optional.empty(),
        one == 3 || draw.chance(0.1) ? Optional.of(draw.monthDay()) : Optional.empty(),
        one == 4 || draw.chance(0.1) ? Optional.of(draw.rate(basis)) : Optional.empty(),
        period(),
        one == 5 || draw.chance(0.1) ? Draw.box(draw.rainMm()) : OptionalDouble.empty());
  }

  private Period period() {
    return draw.pick(
        Period.NONE,
        Period.NEVER,
        new Period(0, draw.whole(1, 1000)),
        new Period(draw.whole(1, 40), 0),
        new Period(draw.whole(1, 40), draw.whole(0, 30)));
  }
}
