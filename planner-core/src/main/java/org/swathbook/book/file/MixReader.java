package org.swathbook.book.file;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.catalog.Crop;
import org.swathbook.catalog.Method;
import org.swathbook.measure.Unit;
import org.swathbook.program.Adjuvant;
import org.swathbook.program.Applicator;
import org.swathbook.program.Carrier;
import org.swathbook.program.Dose;
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
import org.swathbook.source.Problems;
import org.swathbook.source.ProblemsException;
import org.swathbook.source.ScalarNode;
import org.swathbook.source.Texts;
import org.swathbook.source.YamlReader;

/** Reads a mix that is to be sprayed in a field of the book: a spray job. */
public final class MixReader {
  static final String FORMAT = "swathbook.mix/1";

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
    Optional<Field> field = top.require("field", BookFields.of(book), "ND-1");
    SeasonDates dates = new SeasonDates(Optional.of(book.season()));
    Optional<LocalDate> date = top.require("date", dates::inSeason, "2027-06-08");
    Method method =
        top.find("method", Texts.oneOf(Method.values(), Method::spelling), "broadcast")
            .orElse(Method.BROADCAST);
    Optional<LocalTime> time = top.find("time", Texts::time, "\"10:30\"");
    Scouted scouted = new ScoutedPart(names, problems).read(top, field.map(this::crop));
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
    SprayerPart sprayer = new SprayerPart(names, problems);
    Carrier liquid = carrier.map(SprayerPart::carrier).orElse(Carrier.UNKNOWN);
    SprayerSetup setup =
        top.findMap("application", "application: {droplets: coarse}")
            .map(SprayerPart::setup)
            .orElse(SprayerSetup.UNKNOWN);
    SprayerTank tank =
        top.findMap("sprayer", "sprayer: {tank: 1200 gal}")
            .map(sprayer::tank)
            .orElse(SprayerTank.UNKNOWN);
    SprayWeather weather =
        top.findMap("weather", "weather: {wind: 7 mph, windFrom: W}")
            .map(MixReader::weather)
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
    Optional<String> name = map.require("name", Texts::text, "R. Example");
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

  private static SprayWeather weather(MapReader map) {
    SprayWeather out =
        new SprayWeather(
            map.findNumber("wind", Texts.in(Unit.MILE_PER_HOUR, "7 mph"), "7 mph"),
            map.findNumber("gust", Texts.in(Unit.MILE_PER_HOUR, "12 mph"), "12 mph"),
            map.findNumber("windFrom", MixCells::degrees, "W"),
            map.findNumber("temperature", Texts.in(Unit.FAHRENHEIT, "78 F"), "78 F"),
            map.findNumber("high", Texts.in(Unit.FAHRENHEIT, "84 F"), "84 F"),
            map.findNumber("nightLow", Texts.in(Unit.FAHRENHEIT, "58 F"), "58 F"),
            map.findNumber("humidity", t -> 100 * Texts.share(t), "55 %"),
            map.find("inversion", Texts::yesNo, "no"),
            map.findNumber("rainIn", Texts.in(Unit.HOUR, "12 h"), "12 h"),
            OptionalDouble.empty(),
            map.findNumber("rainNext24h", Texts.in(Unit.INCH, "0.1 in"), "0.1 in"),
            map.findNumber("rainNext48h", Texts.in(Unit.INCH, "0.1 in"), "0.1 in"),
            map.findNumber("rainNext10d", Texts.in(Unit.INCH, "1.2 in"), "1.2 in"),
            map.findNumber("meanPast3d", Texts.in(Unit.FAHRENHEIT, "61 F"), "61 F"),
            map.findNumber("meanNext3d", Texts.in(Unit.FAHRENHEIT, "64 F"), "64 F"),
            false);
    map.done();
    return out;
  }

  private Crop crop(Field field) {
    return book.catalog().crop(field.crop());
  }
}
