package org.swathbook.rules;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.swathbook.book.Application;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.book.HouseRules;
import org.swathbook.book.Journal;
import org.swathbook.book.Prices;
import org.swathbook.book.SprayRecord;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.Catalog;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.IngredientId;
import org.swathbook.catalog.Product;
import org.swathbook.catalog.ProductId;
import org.swathbook.catalog.Source;
import org.swathbook.catalog.Stated;
import org.swathbook.check.DatedMix;
import org.swathbook.check.SequenceJudge;
import org.swathbook.check.UseJudge;
import org.swathbook.growth.PassTiming;
import org.swathbook.growth.SeasonTrace;
import org.swathbook.growth.TraceBuilder;
import org.swathbook.growth.TraceSet;
import org.swathbook.measure.Concentration;
import org.swathbook.measure.Money;
import org.swathbook.measure.Rate;
import org.swathbook.program.Adjuvant;
import org.swathbook.program.Dose;
import org.swathbook.program.Doses;
import org.swathbook.program.Mix;
import org.swathbook.testing.FieldBuilder;
import org.swathbook.testing.Fixtures;
import org.swathbook.testing.IngredientBuilder;
import org.swathbook.weather.StationWeather;
import org.swathbook.weather.WeatherDay;

/**
 * A book of one field in one weather year, made for one question: warm days, no rain but the rain
 * that is asked for, and the actives that are given. Every active has one product of the
 * formulation SC unless another is named.
 */
final class CaseBook {
  static final int SEASON = 2027;
  private static final LocalDate FIRST = LocalDate.of(SEASON - 1, 9, 1);
  private static final LocalDate LAST = LocalDate.of(SEASON, 10, 31);

  private final Field field;
  private final List<Ingredient> actives = new ArrayList<>();
  private final List<Product> products = new ArrayList<>();
  private final Map<LocalDate, Double> rainMm = new LinkedHashMap<>();
  private final List<WeedPressure> weeds = new ArrayList<>();
  private final List<String[]> applied = new ArrayList<>();

  private CaseBook(Field field) {
    this.field = field;
  }

  static CaseBook of(FieldBuilder field) {
    return new CaseBook(field.station("case", 41).build());
  }

  CaseBook active(IngredientBuilder active) {
    return active(active, "SC");
  }

  CaseBook active(IngredientBuilder builder, String formulation) {
    Ingredient active = builder.build();
    actives.add(active);
    Rate spoken = Rate.parseUnit("fl oz/acre");
    products.add(
        new Product(
            new ProductId(active.id() + "-4" + formulation.toLowerCase(java.util.Locale.ROOT)),
            active.name() + " 4 lb/gal",
            List.of(
                new Product.Content(
                    active.id(), Concentration.parse("4 lb/gal", active.rateBasis()))),
            formulation,
            spoken,
            Rate.parse("1 fl oz/acre"),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Stated.unknown("protective equipment"),
            "",
            new Source("default, test case"),
            Map.of()));
    return this;
  }

  /** One more product, of actives that are there already, each at 1 lb/gal. */
  CaseBook product(String id, String... contents) {
    products.add(
        new Product(
            new ProductId(id),
            id,
            Arrays.stream(contents)
                .map(
                    c ->
                        new Product.Content(
                            IngredientId.of(c),
                            Concentration.parse("1 lb/gal", ingredient(c).rateBasis())))
                .toList(),
            "SC",
            Rate.parseUnit("fl oz/acre"),
            Rate.parse("1 fl oz/acre"),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Stated.unknown("protective equipment"),
            "",
            new Source("default, test case"),
            Map.of()));
    return this;
  }

  private Ingredient ingredient(String name) {
    IngredientId id = IngredientId.of(name);
    return actives.stream().filter(i -> i.id().equals(id)).findFirst().orElseThrow();
  }

  CaseBook weed(WeedPressure weed) {
    weeds.add(weed);
    return this;
  }

  CaseBook rain(String date, double inches) {
    rainMm.put(LocalDate.parse(date), inches * 25.4);
    return this;
  }

  /** A journal row: date, season, active, rate, crop, position. */
  CaseBook applied(
      String date, int season, String active, String rate, String crop, String position) {
    applied.add(new String[] {date, Integer.toString(season), active, rate, crop, position, ""});
    return this;
  }

  /** The same on a part of the field. */
  CaseBook appliedOn(double acres, String date, String active, String rate, String position) {
    applied.add(
        new String[] {
          date,
          Integer.toString(SEASON),
          active,
          rate,
          field.crop().value(),
          position,
          Double.toString(acres)
        });
    return this;
  }

  Field field() {
    return field;
  }

  Book book() {
    Catalog fixture = Fixtures.catalog();
    return new Book(
        "test case, invented",
        SEASON,
        new Catalog(
            actives, products, fixture.weeds(), fixture.crops(), fixture.responses(), List.of()),
        HouseRules.DEFAULTS,
        Fixtures.book().crops(),
        Money.ofDollars(9),
        Money.ofDollars(2.5),
        List.of(field),
        weeds,
        new Journal(applied.stream().map(this::application).toList()),
        List.of(),
        new Prices(Map.of()),
        Map.of("case", station()),
        List.of());
  }

  private Application application(String[] row) {
    return new Application(
        "A-" + row[0],
        "1",
        LocalDate.parse(row[0]),
        field.id(),
        Integer.parseInt(row[1]),
        row[6].isEmpty()
            ? OptionalDouble.of(field.acres())
            : OptionalDouble.of(Double.parseDouble(row[6])),
        dose(row[2], row[3]),
        "",
        row[4],
        row[5],
        SprayRecord.EMPTY,
        "");
  }

  private StationWeather station() {
    return new StationWeather(
        "case",
        FIRST
            .datesUntil(LAST.plusDays(1))
            .map(
                d ->
                    d.getMonthValue() >= 4 && d.getMonthValue() <= 10
                        ? new WeatherDay(d, 27, 13, rainMm.getOrDefault(d, 0.0))
                        : new WeatherDay(d, 5, -5, rainMm.getOrDefault(d, 0.0)))
            .toList());
  }

  TraceSet traces() {
    return TraceBuilder.build(book(), field);
  }

  Dose dose(String active, String rate) {
    IngredientId id = IngredientId.of(active);
    Ingredient ingredient =
        actives.stream().filter(i -> i.id().equals(id)).findFirst().orElseThrow();
    Product product =
        products.stream().filter(p -> p.find(id).isPresent()).findFirst().orElseThrow();
    Rate written = Rate.parse(rate);
    return written.isVolume()
        ? Doses.ofProduct(book().catalog(), product, written)
        : Doses.ofIngredient(ingredient, product, written);
  }

  /** A dose of a product by its id. */
  Dose ofProduct(String id, String rate) {
    Product product =
        products.stream().filter(p -> p.id().value().equals(id)).findFirst().orElseThrow();
    return Doses.ofProduct(book().catalog(), product, Rate.parse(rate));
  }

  /** The same mix with adjuvants: kind and rate, kind and rate. */
  static Mix with(Mix mix, String... kindsAndRates) {
    List<Adjuvant> adjuvants = new ArrayList<>();
    for (int i = 0; i < kindsAndRates.length; i += 2) {
      adjuvants.add(new Adjuvant(kindsAndRates[i], kindsAndRates[i + 1]));
    }
    return new Mix(mix.doses(), adjuvants, mix.gallonsPerAcre());
  }

  /** {@code "atrazine", "1.0 lb ai/acre"} and so on. */
  Mix mix(String... activesAndRates) {
    List<Dose> doses = new ArrayList<>();
    for (int i = 0; i < activesAndRates.length; i += 2) {
      doses.add(dose(activesAndRates[i], activesAndRates[i + 1]));
    }
    return Mix.of(doses);
  }

  /** A pass on exactly this day. */
  PassTiming on(LocalDate date) {
    TraceSet traces = traces();
    SeasonTrace trace = traces.years().get(0);
    int day = trace.dayOf(date);
    double stage = trace.stage(day);
    double height = trace.cropHeightCm(day);
    return new PassTiming(
        date,
        List.of(new PassTiming.YearDay(trace.year(), day, stage, height)),
        date,
        stage,
        height);
  }

  /** The first day on which the crop has reached a stage. */
  LocalDate dayOfStage(String stage) {
    SeasonTrace trace = traces().years().get(0);
    return trace.bookDateOf(trace.dayOfStage(trace.crop().findStage(stage).orElseThrow()));
  }

  /** The first day on which the crop is at least so tall. */
  LocalDate dayOfHeight(double inches) {
    SeasonTrace trace = traces().years().get(0);
    int day = trace.plantingDay();
    while (trace.cropHeightCm(day) < inches * 2.54) {
      day++;
    }
    return trace.bookDateOf(day);
  }

  /** What the use rules say of a mix on a day. */
  Findings uses(String date, String... activesAndRates) {
    return uses(LocalDate.parse(date), activesAndRates);
  }

  Findings uses(LocalDate date, String... activesAndRates) {
    Findings out = Findings.all();
    UseJudge.facts(book(), traces(), 0, on(date), mix(activesAndRates))
        .forEach(f -> out.addAll(UseJudge.judge(f)));
    return out;
  }

  /** What the sequence rules say of passes: date and mix, date and mix. */
  Findings sequence(DatedMix... passes) {
    return SequenceJudge.judge(book(), field, Arrays.asList(passes));
  }

  DatedMix pass(int index, String date, String... activesAndRates) {
    LocalDate day = LocalDate.parse(date);
    return new DatedMix(index, day, PassPositions.of(traces(), on(day)), mix(activesAndRates));
  }
}
