package org.swathbook.testing;

import java.time.MonthDay;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.swathbook.catalog.Cap;
import org.swathbook.catalog.Commodity;
import org.swathbook.catalog.CropId;
import org.swathbook.catalog.HarvestLimit;
import org.swathbook.catalog.Limit;
import org.swathbook.catalog.Method;
import org.swathbook.catalog.PlantingBand;
import org.swathbook.catalog.Position;
import org.swathbook.catalog.RateRow;
import org.swathbook.catalog.Registration;
import org.swathbook.catalog.SoilCondition;
import org.swathbook.catalog.Source;
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
import org.swathbook.measure.Rate;
import org.swathbook.measure.RateRange;

/** A labelled use step by step. What is not set is unknown; lengths are in inches. */
public final class UseBuilder {
  private static final Source SOURCE = new Source("default, test fixture");

  private final Optional<CropId> crop;
  private final Set<Position> positions;
  private Set<String> formulations = Set.of();
  private Set<Method> methods = Set.of();
  private boolean refused;
  private String condition = "";
  private Stated<Set<Trait>> traits = Stated.unknown("trait");
  private Stated<Window> timing = Stated.unknown("timing");
  private Stated<Limit> cropHeight = Stated.unknown("crop height");
  private Stated<List<RateRow>> rates = Stated.unknown("rate");
  private Stated<List<WeedRate>> weedRates = Stated.unknown("least rate for a weed");
  private Stated<Boolean> incorporationRefused = Stated.unknown("whether it may be worked in");
  private Stated<List<PlantingBand>> plantingInterval = Stated.unknown("days before planting");
  private Stated<Limit> soilPh = Stated.unknown("soil pH limit");
  private Stated<List<Cap>> caps = Stated.unknown("cap");
  private Stated<Integer> applications = Stated.unknown("applications per season");
  private Stated<Integer> repeatDays = Stated.unknown("days between applications");
  private final Map<Commodity, Stated<HarvestLimit>> harvest = new HashMap<>();
  private Stated<WeedHeights> weedHeights = Stated.unknown("weed height");
  private StateLimit states = StateLimit.ANYWHERE;
  private Stated<Registration.LabelYears> years = Stated.none(SOURCE);
  private Stated<List<Registration.Cutoff>> cutoffs = Stated.none(SOURCE);

  private UseBuilder(Optional<CropId> crop, Position... positions) {
    this.crop = crop;
    this.positions = new LinkedHashSet<>(Arrays.asList(positions));
  }

  public static UseBuilder of(String crop, Position... positions) {
    return new UseBuilder(Optional.of(CropId.of(crop)), positions);
  }

  public static UseBuilder ofAnyCrop(Position... positions) {
    return new UseBuilder(Optional.empty(), positions);
  }

  public UseBuilder formulations(String... codes) {
    formulations = Set.of(codes);
    return this;
  }

  public UseBuilder refused() {
    refused = true;
    return this;
  }

  /** All needed; with none given the use needs none. */
  public UseBuilder traits(String... names) {
    traits =
        names.length == 0
            ? Stated.none(SOURCE)
            : Stated.value(
                new LinkedHashSet<>(Arrays.stream(names).map(Trait::of).toList()), SOURCE);
    return this;
  }

  /** The window as a label words it: {@code "VE"}, {@code "planting"}, {@code "-14"}, empty. */
  public UseBuilder through(String from, String to) {
    timing = Stated.value(new Window(point(from), point(to), Optional.empty()), SOURCE);
    return this;
  }

  public UseBuilder before(String from, String end) {
    timing = Stated.value(new Window(point(from), Optional.empty(), point(end)), SOURCE);
    return this;
  }

  public UseBuilder noTiming() {
    timing = Stated.none(SOURCE);
    return this;
  }

  private static Optional<TimePoint> point(String text) {
    if (text.isEmpty()) {
      return Optional.empty();
    }
    if (text.equals("planting")) {
      return Optional.of(new TimePoint.FromPlanting(0));
    }
    if (text.matches("[+-]\\d+")) {
      return Optional.of(new TimePoint.FromPlanting(Integer.parseInt(text)));
    }
    if (text.matches("\\d\\d-\\d\\d")) {
      return Optional.of(new TimePoint.OnMonthDay(MonthDay.parse("--" + text)));
    }
    if (text.startsWith("harvest-")) {
      return Optional.of(new TimePoint.BeforeHarvest(Integer.parseInt(text.substring(8))));
    }
    return Optional.of(new TimePoint.AtStage(text));
  }

  public UseBuilder cropHeight(Limit limitCm) {
    cropHeight = Stated.value(limitCm, SOURCE);
    return this;
  }

  public UseBuilder noCropHeight() {
    cropHeight = Stated.none(SOURCE);
    return this;
  }

  /** One row for all soils, as in {@code "0.25-0.5 lb ai/acre"}. */
  public UseBuilder rate(String range) {
    return rates(List.of(new RateRow(SoilCondition.ALWAYS, Optional.of(RateRange.parse(range)))));
  }

  public UseBuilder rates(List<RateRow> rows) {
    rates = Stated.value(List.copyOf(rows), SOURCE);
    return this;
  }

  /** One more row: the least on a weed up to a height; 0 in for any. */
  public UseBuilder weedRate(String weed, double upToIn, String least) {
    List<WeedRate> rows = new ArrayList<>(weedRates.find().orElse(List.of()));
    rows.add(
        new WeedRate(
            Set.of(WeedId.of(weed)),
            upToIn > 0 ? OptionalDouble.of(upToIn * 2.54) : OptionalDouble.empty(),
            Rate.parse(least)));
    weedRates = Stated.value(List.copyOf(rows), SOURCE);
    return this;
  }

  /** The label forbids to work it in. */
  public UseBuilder neverWorkedIn() {
    incorporationRefused = Stated.value(true, SOURCE);
    return this;
  }

  public UseBuilder plantingDays(int days) {
    plantingInterval =
        days == 0
            ? Stated.none(SOURCE)
            : Stated.value(
                List.of(
                    new PlantingBand(
                        SoilCondition.ALWAYS, Optional.empty(), days, OptionalDouble.empty())),
                SOURCE);
    return this;
  }

  /** Bands by rate as {@code "0.5 lb ae/acre"} in rising order, with mm of rain first or 0. */
  public UseBuilder plantingBand(String upTo, int days, double rainMm) {
    List<PlantingBand> bands = new ArrayList<>(plantingInterval.find().orElse(List.of()));
    bands.add(
        new PlantingBand(
            SoilCondition.ALWAYS,
            Optional.of(Rate.parse(upTo)),
            days,
            rainMm > 0 ? OptionalDouble.of(rainMm) : OptionalDouble.empty()));
    plantingInterval = Stated.value(List.copyOf(bands), SOURCE);
    return this;
  }

  public UseBuilder soilPh(Limit limit) {
    soilPh = Stated.value(limit, SOURCE);
    return this;
  }

  public UseBuilder noSoilPh() {
    soilPh = Stated.none(SOURCE);
    return this;
  }

  /** One more most of a season. */
  public UseBuilder cap(String amount) {
    return cap(amount, new Position[0]);
  }

  /** One more most of a season, of what is sprayed in these positions. */
  public UseBuilder cap(String amount, Position... counted) {
    List<Cap> all = new ArrayList<>(caps.find().orElse(List.of()));
    all.add(
        new Cap(
            Rate.parse(amount), Cap.CapPeriod.SEASON, new LinkedHashSet<>(Arrays.asList(counted))));
    caps = Stated.value(List.copyOf(all), SOURCE);
    return this;
  }

  public UseBuilder applications(int most) {
    applications = Stated.value(most, SOURCE);
    return this;
  }

  public UseBuilder repeatDays(int days) {
    repeatDays = Stated.value(days, SOURCE);
    return this;
  }

  public UseBuilder grainDays(int days) {
    harvest.put(Commodity.GRAIN, Stated.value(new HarvestLimit(days, false), SOURCE));
    return this;
  }

  /** The same where nobody knows the source any more. */
  public UseBuilder grainDaysFromMemory(int days) {
    harvest.put(Commodity.GRAIN, Stated.value(new HarvestLimit(days, false), Source.FROM_MEMORY));
    return this;
  }

  public UseBuilder days(Commodity commodity, int days) {
    harvest.put(commodity, Stated.value(new HarvestLimit(days, false), SOURCE));
    return this;
  }

  public UseBuilder refusedFor(Commodity commodity) {
    harvest.put(commodity, Stated.value(new HarvestLimit(0, true), SOURCE));
    return this;
  }

  public UseBuilder weedHeights(double broadleafIn, double grassIn) {
    weedHeights =
        Stated.value(
            new WeedHeights(
                OptionalDouble.of(broadleafIn * 2.54), OptionalDouble.of(grassIn * 2.54)),
            SOURCE);
    return this;
  }

  public UseBuilder onlyIn(String... codes) {
    states = new StateLimit(Set.of(codes), Set.of());
    return this;
  }

  public UseBuilder labelYears(int first, int last) {
    years = Stated.value(new Registration.LabelYears(first, last), SOURCE);
    return this;
  }

  /** Last date in every state, as {@code "06-30"}. */
  public UseBuilder lastDate(String monthDay) {
    cutoffs =
        Stated.value(
            List.of(new Registration.Cutoff(Set.of(), MonthDay.parse("--" + monthDay))), SOURCE);
    return this;
  }

  public UseBuilder notIn(String... codes) {
    states = new StateLimit(Set.of(), Set.of(codes));
    return this;
  }

  /** Only in this way. */
  public UseBuilder by(Method method) {
    methods = Set.of(method);
    return this;
  }

  /** What the label asks beside all limits. */
  public UseBuilder onCondition(String words) {
    condition = words;
    return this;
  }

  /** The use of an active that has neither soil nor foliar terms of its own. */
  public Use build() {
    return build(FixtureTerms.of(Stated.none(SOURCE)));
  }

  Use build(Terms terms) {
    return new Use(
        crop,
        positions,
        formulations,
        methods,
        refused,
        traits,
        timing,
        cropHeight,
        rates,
        weedRates,
        incorporationRefused,
        plantingInterval,
        soilPh,
        caps,
        applications,
        repeatDays,
        harvest,
        weedHeights,
        new Registration(states, years, cutoffs),
        terms,
        condition,
        "");
  }
}
