package org.swathbook.book.file;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.SortedMap;
import java.util.TreeMap;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.catalog.Crop;
import org.swathbook.catalog.CropStage;
import org.swathbook.catalog.DropletClass;
import org.swathbook.catalog.IngredientId;
import org.swathbook.catalog.Method;
import org.swathbook.catalog.TankTerms;
import org.swathbook.catalog.Weed;
import org.swathbook.catalog.WeedId;
import org.swathbook.measure.MeasureException;
import org.swathbook.measure.Unit;
import org.swathbook.program.Adjuvant;
import org.swathbook.program.Applicator;
import org.swathbook.program.Carrier;
import org.swathbook.program.Dose;
import org.swathbook.program.EarlierLoad;
import org.swathbook.program.Mix;
import org.swathbook.program.Scouted;
import org.swathbook.program.SprayDay;
import org.swathbook.program.SprayJob;
import org.swathbook.program.SprayWeather;
import org.swathbook.program.Sprayer;
import org.swathbook.program.SprayerSetup;
import org.swathbook.program.SprayerTank;
import org.swathbook.source.MapNode;
import org.swathbook.source.MapReader;
import org.swathbook.source.Node;
import org.swathbook.source.Problems;
import org.swathbook.source.ProblemsException;
import org.swathbook.source.ScalarNode;
import org.swathbook.source.TextParser;
import org.swathbook.source.Texts;
import org.swathbook.source.YamlReader;

/** Reads a mix that is to be sprayed in a field of the book: a spray job. */
public final class MixReader {
  static final String FORMAT = "swathbook.mix/1";
  private static final String EARLIER = "{held: [dicamba], cleaned: water-rinse}";

  private final Book book;
  private final Problems problems = new Problems();
  private final Names names;

  private MixReader(Book book) {
    this.book = book;
    this.names = new Names(book.catalog());
  }

  /**
   * The job in a file of the book or elsewhere.
   *
   * @throws ProblemsException with everything that is wrong with it
   */
  public static SprayJob read(Path file, BookPaths paths, Book book) {
    String name = paths.nameOf(file);
    return read(name, BookFiles.bytes(file, name), book);
  }

  /** The field as a file writes it; empty when it cannot be told, which reading the file tells. */
  public static Optional<String> fieldIn(Path file, BookPaths paths) {
    String name = paths.nameOf(file);
    try {
      return new YamlReader()
          .readMap(name, BookFiles.bytes(file, name)).find("field").stream()
              .filter(ScalarNode.class::isInstance)
              .map(n -> ((ScalarNode) n).text())
              .findFirst();
    } catch (ProblemsException e) {
      return Optional.empty();
    }
  }

  /** The same from its bytes. */
  public static SprayJob read(String name, byte[] content, Book book) {
    return new MixReader(book).read(new YamlReader().readMap(name, content));
  }

  private SprayJob read(MapNode root) {
    MapReader top = new MapReader(root, problems);
    top.require("format", Texts.oneOf(List.of(FORMAT)), FORMAT, FORMAT);
    Optional<Field> field =
        top.require("field", "ND-1")
            .flatMap(n -> MapReader.scalar(n, BookFields.of(book), "ND-1", problems));
    SeasonDates dates = new SeasonDates(Optional.of(book.season()));
    Optional<LocalDate> date =
        top.require("date", "2027-06-08")
            .flatMap(n -> MapReader.scalar(n, dates::inSeason, "2027-06-08", problems));
    Method method =
        top.find("method", Texts.oneOf(Method.values(), Method::spelling), "broadcast")
            .orElse(Method.BROADCAST);
    Optional<LocalTime> time = top.find("time", Texts::time, "\"10:30\"");
    Scouted scouted = scouted(top, field);
    MixParts parts = new MixParts(new DoseParser(names, book.prices()), problems);
    int before = problems.count();
    List<Dose> doses =
        parts.doses(
            top.requireList(
                "products", "products:\n  - {product: glyphosate-4.5sl, rate: 32 fl oz/acre}"));
    if (problems.count() == before && doses.isEmpty()) {
      problems.add(top.mark("products"), "the mix is empty", "name at least one product");
    }
    List<Adjuvant> adjuvants =
        parts.adjuvants(top.findList("adjuvants", "[{kind: crop-oil, rate: 1 % v/v}]"));
    Optional<MapReader> carrier = top.findMap("carrier", "carrier: {volume: 15 gal/acre}");
    OptionalDouble gallons = carrier.map(MixParts::gallonsPerAcre).orElse(OptionalDouble.empty());
    Carrier liquid = carrier.map(this::carrier).orElse(Carrier.UNKNOWN);
    SprayerSetup setup =
        top.findMap("application", "application: {droplets: coarse}")
            .map(this::setup)
            .orElse(SprayerSetup.UNKNOWN);
    SprayerTank tank =
        top.findMap("sprayer", "sprayer: {tank: 1200 gal}")
            .map(this::tank)
            .orElse(SprayerTank.UNKNOWN);
    SprayWeather weather =
        top.findMap("weather", "weather: {wind: 7 mph, windFrom: W}")
            .map(this::weather)
            .orElse(SprayWeather.UNKNOWN);
    List<String> others = top.findAll("others", Texts::text, "organophosphate");
    Optional<Applicator> applicator =
        top.findMap("applicator", "applicator: {name: R. Example, certNo: NE-0001}")
            .flatMap(MixReader::applicator);
    top.done();
    problems.throwIfAny();
    return new SprayJob(
        field.orElseThrow().id(),
        new SprayDay(date.orElseThrow(), time, scouted, weather),
        new Mix(doses, adjuvants, gallons),
        new Sprayer(method, liquid, setup, tank),
        others,
        applicator);
  }

  private static Optional<Applicator> applicator(MapReader map) {
    Optional<String> name =
        map.require("name", "R. Example")
            .flatMap(n -> MapReader.scalar(n, Texts::text, "R. Example", map.problems()));
    Optional<String> certNo = map.find("certNo", Texts::text, "NE-0001");
    Optional<List<String>> trainings =
        map.has("training")
            ? Optional.of(
                map.findAll("training", Texts::text, "dicamba").stream()
                    .filter(t -> !t.equals("none"))
                    .map(t -> t.toLowerCase(Locale.ROOT))
                    .toList())
            : Optional.empty();
    map.done();
    return name.map(n -> new Applicator(n, certNo.orElse(""), trainings));
  }

  private Scouted scouted(MapReader top, Optional<Field> field) {
    Optional<Crop> crop = field.map(f -> book.catalog().crop(f.crop()));
    Optional<String> stage =
        top.find("cropStage", t -> crop.isPresent() ? stage(crop.get(), t) : t, "V3");
    OptionalDouble height = number(top, "cropHeight", heightCm("9 in"), "9 in");
    SortedMap<WeedId, Double> weeds = new TreeMap<>();
    Optional<Node> node = top.find("weeds");
    if (node.isPresent() && !(node.get() instanceof MapNode)) {
      problems.add(
          node.get().mark(), "here stands " + node.get().kind(), "write as 'weeds: {AMAPA: 3 in}'");
    } else if (node.isPresent()) {
      for (MapNode.Entry e : ((MapNode) node.get()).entries()) {
        weed(e, weeds);
      }
    }
    return new Scouted(stage, height, weeds);
  }

  private void weed(MapNode.Entry entry, SortedMap<WeedId, Double> out) {
    Optional<Weed> weed = Optional.empty();
    try {
      weed = Optional.of(names.weed(entry.key()));
    } catch (MeasureException e) {
      problems.add(entry.keyMark(), e, "AMAPA");
    }
    Optional<Double> cm = MapReader.scalar(entry.value(), heightCm("3 in"), "3 in", problems);
    if (weed.isPresent() && cm.isPresent() && out.put(weed.get().id(), cm.get()) != null) {
      problems.add(
          entry.keyMark(),
          "'" + entry.key() + "' is " + weed.get().name() + ", which stands here already",
          "write each weed once, with its tallest");
    }
  }

  private static String stage(Crop crop, String text) {
    List<String> known = crop.stages().stream().map(CropStage::name).toList();
    OptionalInt place = crop.findStage(text);
    if (place.isEmpty()) {
      throw Names.unknown(text, "stage of " + crop.id(), known);
    }
    return known.get(place.getAsInt());
  }

  private static TextParser<Double> heightCm(String example) {
    return text -> {
      double cm = Texts.in(Unit.CENTIMETRE, example).parse(text);
      if (!(cm > 0)) {
        throw new MeasureException(
            "'" + text + "' is not above zero; leave out what does not stand");
      }
      return cm;
    };
  }

  private Carrier carrier(MapReader map) {
    Carrier.Liquid liquid =
        map.find("liquid", Texts.oneOf(Carrier.Liquid.values(), Carrier.Liquid::spelling), "water")
            .orElse(Carrier.Liquid.WATER);
    Optional<MapReader> water = map.findMap("water", "water: {hardness: 320 ppm CaCO3, ph: 7.6}");
    map.done();
    if (water.isEmpty()) {
      return new Carrier(
          liquid, OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());
    }
    MapReader w = water.get();
    Carrier out =
        new Carrier(
            liquid,
            number(w, "hardness", MixCells::hardnessPpmCaCo3, "320 ppm CaCO3"),
            number(w, "ph", MixCells::ph, "7.6"),
            number(w, "iron", MixCells::ppm, "0.3 ppm"));
    w.done();
    return out;
  }

  private SprayerSetup setup(MapReader map) {
    SprayerSetup out =
        new SprayerSetup(
            map.find(
                "droplets",
                Texts.oneOf(DropletClass.values(), DropletClass::spelling),
                "very coarse"),
            number(map, "speed", Texts.in(Unit.MILE_PER_HOUR, "10 mph"), "10 mph"),
            number(map, "pressure", MixCells::psi, "40 psi"),
            map.find("nozzlesListed", Texts::yesNo, "yes"),
            map.find("incorporated", Texts::yesNo, "no"));
    map.done();
    return out;
  }

  private SprayerTank tank(MapReader map) {
    SprayerTank out =
        new SprayerTank(
            number(map, "tank", Texts.in(Unit.GALLON, "1200 gal"), "1200 gal"),
            held(map, "lastLoad"),
            map.find(
                "cleaned",
                Texts.oneOf(TankTerms.Rinse.values(), TankTerms.Rinse::spelling),
                "triple-rinse"),
            earlier(map));
    map.done();
    return out;
  }

  /** {@code none}, one active or a list; products stand for their actives. */
  private Optional<List<IngredientId>> held(MapReader map, String key) {
    Optional<Node> node = map.find(key);
    if (node.isEmpty()) {
      return Optional.empty();
    }
    if (node.get() instanceof ScalarNode s && s.isWord("none")) {
      return Optional.of(List.of());
    }
    List<IngredientId> out = new ArrayList<>();
    for (Node item : MapReader.oneOrMore(node.get())) {
      MapReader.scalar(item, this::actives, "atrazine", problems).ifPresent(out::addAll);
    }
    return Optional.of(out);
  }

  /** {@code none}, or a list of loads, the latest first. */
  private Optional<List<EarlierLoad>> earlier(MapReader map) {
    Optional<Node> node = map.find("earlier");
    if (node.isEmpty()) {
      return Optional.empty();
    }
    if (node.get() instanceof ScalarNode s && s.isWord("none")) {
      return Optional.of(List.of());
    }
    List<EarlierLoad> out = new ArrayList<>();
    for (Node item : MapReader.oneOrMore(node.get())) {
      MapReader.of(item, EARLIER, problems).map(this::earlierLoad).ifPresent(out::add);
    }
    return Optional.of(out);
  }

  private EarlierLoad earlierLoad(MapReader map) {
    if (!map.has("held")) {
      problems.add(map.mark(), "what the load held is missing", "write as " + EARLIER);
    }
    EarlierLoad out =
        new EarlierLoad(
            held(map, "held").orElse(List.of()),
            map.find(
                "cleaned",
                Texts.oneOf(TankTerms.Rinse.values(), TankTerms.Rinse::spelling),
                "triple-rinse"));
    map.done();
    return out;
  }

  private List<IngredientId> actives(String text) {
    return book.catalog()
        .findProduct(text)
        .map(p -> p.contents().stream().map(c -> c.ingredient()).toList())
        .orElseGet(() -> List.of(names.ingredient(text).id()));
  }

  private SprayWeather weather(MapReader map) {
    SprayWeather out =
        new SprayWeather(
            number(map, "wind", Texts.in(Unit.MILE_PER_HOUR, "7 mph"), "7 mph"),
            number(map, "gust", Texts.in(Unit.MILE_PER_HOUR, "12 mph"), "12 mph"),
            number(map, "windFrom", MixCells::degrees, "W"),
            number(map, "temperature", Texts.in(Unit.FAHRENHEIT, "78 F"), "78 F"),
            number(map, "high", Texts.in(Unit.FAHRENHEIT, "84 F"), "84 F"),
            number(map, "nightLow", Texts.in(Unit.FAHRENHEIT, "58 F"), "58 F"),
            number(map, "humidity", t -> 100 * Texts.share(t), "55 %"),
            map.find("inversion", Texts::yesNo, "no"),
            number(map, "rainIn", Texts.in(Unit.HOUR, "12 h"), "12 h"),
            OptionalDouble.empty(),
            number(map, "rainNext24h", Texts.in(Unit.INCH, "0.1 in"), "0.1 in"),
            number(map, "rainNext48h", Texts.in(Unit.INCH, "0.1 in"), "0.1 in"),
            number(map, "rainNext10d", Texts.in(Unit.INCH, "1.2 in"), "1.2 in"),
            number(map, "meanPast3d", Texts.in(Unit.FAHRENHEIT, "61 F"), "61 F"),
            number(map, "meanNext3d", Texts.in(Unit.FAHRENHEIT, "64 F"), "64 F"),
            false);
    map.done();
    return out;
  }

  private static OptionalDouble number(
      MapReader map, String key, TextParser<Double> parser, String example) {
    Optional<Double> value = map.find(key, parser, example);
    return value.isPresent() ? OptionalDouble.of(value.get()) : OptionalDouble.empty();
  }
}
