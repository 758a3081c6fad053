package org.swathbook.testing;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import org.swathbook.book.Application;
import org.swathbook.book.Biotypes;
import org.swathbook.book.Book;
import org.swathbook.book.CropEconomics;
import org.swathbook.book.DriverKind;
import org.swathbook.book.Field;
import org.swathbook.book.HouseRules;
import org.swathbook.book.Journal;
import org.swathbook.book.PastSeason;
import org.swathbook.book.Prices;
import org.swathbook.book.Resistance;
import org.swathbook.book.SprayRecord;
import org.swathbook.book.Tillage;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.Catalog;
import org.swathbook.catalog.CropId;
import org.swathbook.catalog.DropletClass;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.IngredientId;
import org.swathbook.catalog.Method;
import org.swathbook.catalog.Product;
import org.swathbook.catalog.Site;
import org.swathbook.catalog.TankTerms;
import org.swathbook.catalog.Weed;
import org.swathbook.catalog.WeedId;
import org.swathbook.catalog.file.CatalogLoader;
import org.swathbook.check.JudgedMix;
import org.swathbook.check.Judgement;
import org.swathbook.check.MixJudge;
import org.swathbook.check.ProgramJudge;
import org.swathbook.growth.TraceBuilder;
import org.swathbook.growth.TraceSet;
import org.swathbook.measure.Money;
import org.swathbook.measure.Rate;
import org.swathbook.program.Adjuvant;
import org.swathbook.program.Anchor;
import org.swathbook.program.Applicator;
import org.swathbook.program.Carrier;
import org.swathbook.program.Dose;
import org.swathbook.program.Doses;
import org.swathbook.program.EarlierLoad;
import org.swathbook.program.FieldId;
import org.swathbook.program.Mix;
import org.swathbook.program.Pass;
import org.swathbook.program.Program;
import org.swathbook.program.Scouted;
import org.swathbook.program.SprayDay;
import org.swathbook.program.SprayJob;
import org.swathbook.program.Sprayer;
import org.swathbook.program.SprayerSetup;
import org.swathbook.program.SprayerTank;
import org.swathbook.rules.Finding;
import org.swathbook.season.SeasonWalk;
import org.swathbook.weather.StationWeather;
import org.swathbook.weather.SunTimes;

/**
 * A tank in a field of its own with the starter catalog: on a fair day, in soft water, from a new
 * sprayer, of which all is known. Each case then says what is different.
 */
public final class MixCase {
  public static final Catalog CATALOG = new CatalogLoader().starter();
  private static final FieldId ID = new FieldId("CASE");
  private static final LocalDate PLANTED = LocalDate.parse("2027-05-08");

  private final String crop;
  private final List<Dose> doses = new ArrayList<>();
  private final List<Adjuvant> adjuvants = new ArrayList<>();
  private final List<WeedPressure> weeds = new ArrayList<>();
  private final Map<WeedId, Double> heights = new TreeMap<>();
  private final List<Application> applied = new ArrayList<>();
  private final List<PastSeason> past = new ArrayList<>();
  private final FieldBuilder field;
  private final LocalDate planted;
  private int day;
  private Optional<String> stage = Optional.empty();
  private OptionalDouble cropCm = OptionalDouble.empty();
  private OptionalDouble gallons = OptionalDouble.of(15);
  private Method method = Method.BROADCAST;
  private SprayerTank tank =
      new SprayerTank(OptionalDouble.of(1200), Optional.of(List.of()), Optional.empty());
  private Optional<DropletClass> droplets = Optional.empty();
  private Carrier.Liquid liquid = Carrier.Liquid.WATER;
  private OptionalDouble hardness = OptionalDouble.of(60);
  private OptionalDouble ph = OptionalDouble.of(6.5);
  private double iron;
  private Optional<Boolean> nozzlesListed = Optional.of(true);
  private Optional<LocalTime> time = Optional.of(LocalTime.of(11, 0));
  private Optional<SunTimes> sun =
      Optional.of(new SunTimes(LocalTime.of(6, 0), LocalTime.of(20, 45)));
  private Sky sky = Sky.fair();
  private Catalog catalog = CATALOG;
  private List<String> others = List.of();
  private Optional<Boolean> incorporated = Optional.empty();
  private Optional<Applicator> applicator = Optional.empty();
  private UnaryOperator<StationWeather> stationChange = s -> s;

  private MixCase(String crop, FieldBuilder field, LocalDate planted) {
    this.crop = crop;
    this.field = field;
    this.planted = planted;
  }

  public static MixCase in(String crop, String... traits) {
    return planted(PLANTED, crop, traits);
  }

  /** The same planted on another day. */
  public static MixCase planted(LocalDate day, String crop, String... traits) {
    String next = crop.equals("corn") ? "soybean" : "corn";
    return new MixCase(
        crop,
        FieldBuilder.of(ID.value(), crop, day.toString())
            .traits(traits)
            .harvest("2027-10-05")
            .next(next, "2028-05-05"),
        day);
  }

  public MixCase field(java.util.function.Consumer<FieldBuilder> change) {
    change.accept(field);
    return this;
  }

  /** Days after planting, with the crop as seen; no stage where it is not up. */
  public MixCase day(int afterPlanting, String cropStage, double cropInches) {
    day = afterPlanting;
    stage = cropStage.isEmpty() ? Optional.empty() : Optional.of(cropStage);
    cropCm = cropStage.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(2.54 * cropInches);
    return this;
  }

  /** Another catalog; to be named before weeds and tank. */
  public MixCase catalog(Catalog other) {
    catalog = other;
    return this;
  }

  /** A weed of no more account than that it was seen. */
  public MixCase seen(String eppo, double inches) {
    heights.put(catalog.findWeed(eppo).orElseThrow().id(), 2.54 * inches);
    return this;
  }

  /** A driver weed of which nine in ten resist these sites, seen at a height unless it is 0. */
  public MixCase weed(String eppo, double inches, int... resists) {
    Weed weed = catalog.findWeed(eppo).orElseThrow();
    List<Resistance> all =
        Arrays.stream(resists)
            .mapToObj(
                s -> new Resistance(Optional.of(Site.of(s)), Optional.empty(), 0.9, "confirmed"))
            .toList();
    weeds.add(
        new WeedPressure(
            ID,
            weed,
            40,
            DriverKind.YES,
            Biotypes.withSusceptibleRest(Biotypes.together(0.9, all)),
            all,
            ""));
    if (inches > 0) {
      heights.put(weed.id(), 2.54 * inches);
    }
    return this;
  }

  /** {@code mesotrione 0.094 ai + atrazine 0.5 ai}, as tables of the trade write mixes. */
  public MixCase tank(String text) {
    for (String part : text.split(" \\+ ")) {
      doses.add(dose(part.replace(" broadcast", "")));
    }
    return this;
  }

  private Dose dose(String text) {
    String[] words = text.strip().split(" ");
    int n = words.length;
    String name = String.join(" ", Arrays.copyOf(words, n - 2));
    Ingredient active = catalog.findIngredient(name).orElseThrow();
    Rate rate = Rate.parse(words[n - 2] + " lb " + words[n - 1] + "/acre");
    Product single =
        catalog.products().stream()
            .filter(p -> p.isSingle() && p.find(active.id()).isPresent())
            .min(java.util.Comparator.comparing(p -> p.id().value()))
            .orElseThrow();
    return Doses.ofIngredient(active, single, rate);
  }

  /** The same of one formulation. */
  public MixCase product(String id, String rate) {
    doses.add(Doses.ofProduct(catalog, catalog.findProduct(id).orElseThrow(), Rate.parse(rate)));
    return this;
  }

  public MixCase adjuvant(String kind, String rate) {
    adjuvants.add(new Adjuvant(kind, rate));
    return this;
  }

  public MixCase gallons(double perAcre) {
    gallons = OptionalDouble.of(perAcre);
    return this;
  }

  public MixCase gallonsUnknown() {
    gallons = OptionalDouble.empty();
    return this;
  }

  public MixCase droplets(DropletClass chosen) {
    droplets = Optional.of(chosen);
    return this;
  }

  public MixCase applied(int afterPlanting, String text) {
    return applied(afterPlanting, text, crop, 2027, SprayRecord.EMPTY);
  }

  /** A row of the journal with all that may be said of it. */
  public MixCase applied(
      int afterPlanting, String text, String onCrop, int season, SprayRecord record) {
    return applied(afterPlanting, text, onCrop, season, "", record);
  }

  private MixCase applied(
      int afterPlanting,
      String text,
      String onCrop,
      int season,
      String position,
      SprayRecord record) {
    for (String part : text.split(" \\+ ")) {
      applied.add(
          new Application(
              "earlier-" + applied.size(),
              "1",
              planted.plusDays(afterPlanting),
              ID,
              season,
              OptionalDouble.of(80),
              dose(part),
              "",
              onCrop,
              position,
              record,
              ""));
    }
    return this;
  }

  /** On how many acres the last row of the journal went, nobody wrote down. */
  public MixCase acresUnknown() {
    Application a = applied.get(applied.size() - 1);
    return lastRow(a, OptionalDouble.empty(), a.epaRegNo());
  }

  /** The last row of the journal names the registration number of its product. */
  public MixCase registered(String epaRegNo) {
    Application a = applied.get(applied.size() - 1);
    return lastRow(a, a.acres(), epaRegNo);
  }

  private MixCase lastRow(Application a, OptionalDouble acres, String epaRegNo) {
    applied.set(
        applied.size() - 1,
        new Application(
            a.pass(),
            a.line(),
            a.date(),
            a.field(),
            a.season(),
            acres,
            a.dose(),
            epaRegNo,
            a.crop(),
            a.position(),
            a.record(),
            a.note()));
    return this;
  }

  /** A pass of a season gone by, in the same crop at this stage. */
  public MixCase sprayedIn(int season, String stage, String text) {
    return applied(365 * (season - 2027) + 25, text, crop, season, stage, SprayRecord.EMPTY);
  }

  /** A row of this season with the stage of the crop and the insecticides of its day. */
  public MixCase sprayedOn(
      int afterPlanting, String stage, String text, List<String> insecticides) {
    return applied(afterPlanting, text, crop, 2027, stage, SprayRecord.EMPTY.with(insecticides));
  }

  /** What was seen in a season gone by. */
  public MixCase seenIn(int season, String... eppo) {
    past.add(
        new PastSeason(
            ID,
            season,
            CropId.of(crop),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Tillage.NO_TILL,
            Arrays.stream(eppo).map(WeedId::of).toList()));
    return this;
  }

  public MixCase liquid(Carrier.Liquid carrier) {
    liquid = carrier;
    return this;
  }

  public MixCase hardness(double ppmCaCo3) {
    hardness = OptionalDouble.of(ppmCaCo3);
    return this;
  }

  public MixCase ph(double ofWater) {
    ph = OptionalDouble.of(ofWater);
    return this;
  }

  public MixCase iron(double ppm) {
    iron = ppm;
    return this;
  }

  /** Neither hardness nor pH of the water was measured. */
  public MixCase waterUntested() {
    hardness = OptionalDouble.empty();
    ph = OptionalDouble.empty();
    return this;
  }

  public MixCase sky(Sky other) {
    sky = other;
    return this;
  }

  /** Another record of the field's station. */
  public MixCase station(UnaryOperator<StationWeather> change) {
    stationChange = change;
    return this;
  }

  public MixCase others(String... classes) {
    others = List.of(classes);
    return this;
  }

  public MixCase by(Applicator who) {
    applicator = Optional.of(who);
    return this;
  }

  /** The job says whether steel works it in. */
  public MixCase incorporated(boolean by) {
    incorporated = Optional.of(by);
    return this;
  }

  public MixCase time(LocalTime clock) {
    time = Optional.of(clock);
    return this;
  }

  public MixCase timeUnknown() {
    time = Optional.empty();
    return this;
  }

  /** Where the field lies, and so when the sun rises there, is not known. */
  public MixCase placeUnknown() {
    sun = Optional.empty();
    return this;
  }

  public MixCase method(Method other) {
    method = other;
    return this;
  }

  public MixCase lastLoad(String active, TankTerms.Rinse cleaned) {
    IngredientId id = catalog.findIngredient(active).orElseThrow().id();
    tank = new SprayerTank(OptionalDouble.of(1200), Optional.of(List.of(id)), Optional.of(cleaned));
    return this;
  }

  /** Neither what the sprayer held nor how it was cleaned. */
  public MixCase tankUnknown() {
    tank = SprayerTank.UNKNOWN;
    return this;
  }

  /** Whether nozzle and pressure stand on the list of a label, nobody says. */
  public MixCase nozzlesUnlisted() {
    nozzlesListed = Optional.empty();
    return this;
  }

  /** What the sprayer held last; how it was cleaned since, nobody wrote down. */
  public MixCase lastLoad(String active) {
    IngredientId id = catalog.findIngredient(active).orElseThrow().id();
    tank = new SprayerTank(OptionalDouble.of(1200), Optional.of(List.of(id)), Optional.empty());
    return this;
  }

  /** Loads before the last one, the latest first; to be named after the last load. */
  public MixCase earlier(EarlierLoad... loads) {
    tank =
        new SprayerTank(
            tank.gallons(), tank.lastLoad(), tank.cleaned(), Optional.of(List.of(loads)));
    return this;
  }

  public SprayJob job() {
    return new SprayJob(
        ID,
        new SprayDay(
            planted.plusDays(day),
            time,
            new Scouted(stage, cropCm, new TreeMap<>(heights)),
            sky.weather()),
        new Mix(doses, adjuvants, gallons),
        new Sprayer(
            method,
            new Carrier(liquid, hardness, ph, OptionalDouble.of(iron)),
            new SprayerSetup(
                droplets,
                OptionalDouble.of(10),
                OptionalDouble.of(40),
                nozzlesListed,
                incorporated),
            tank),
        others,
        applicator);
  }

  public Book book() {
    Field f = field.build();
    Map<CropId, CropEconomics> crops = new TreeMap<>();
    catalog.crops().forEach(c -> crops.put(c.id(), new CropEconomics(5, 100)));
    StationWeather station = stationChange.apply(Fixtures.station(f.station()));
    return new Book(
        "case",
        2027,
        catalog,
        HouseRules.DEFAULTS,
        crops,
        Money.ofDollars(9),
        Money.ofDollars(2.5),
        List.of(f),
        weeds,
        new Journal(applied),
        past,
        new Prices(Map.of()),
        new LinkedHashMap<>(Map.of(station.id(), station)),
        List.of());
  }

  public MixJudge judge() {
    Book book = book();
    return MixJudge.of(book, book.fields().get(0), job(), planted.plusDays(day), sun);
  }

  public JudgedMix judged() {
    return judge().judge(job());
  }

  public List<Finding> findings() {
    return judged().judgement().findings();
  }

  /** The tanks of other cases made one after the other, as a program that is planned. */
  public Judgement judgedAsProgram(MixCase... tanks) {
    List<Pass> passes = new ArrayList<>();
    for (MixCase t : tanks) {
      passes.add(new Pass(new Anchor.OnDate(t.planted.plusDays(t.day)), t.job().mix()));
    }
    Book book = book();
    Field f = book.fields().get(0);
    TraceSet traces = TraceBuilder.build(book, f);
    return ProgramJudge.judge(
        book,
        traces,
        SeasonWalk.walk(book, traces, new Program("case", ID, passes)),
        LocalDate.parse("2027-03-01"));
  }
}
