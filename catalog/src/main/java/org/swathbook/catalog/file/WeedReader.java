package org.swathbook.catalog.file;

import java.time.MonthDay;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.swathbook.catalog.Competition;
import org.swathbook.catalog.CropId;
import org.swathbook.catalog.Emergence;
import org.swathbook.catalog.HeightCurve;
import org.swathbook.catalog.SeedBiology;
import org.swathbook.catalog.Source;
import org.swathbook.catalog.Weed;
import org.swathbook.catalog.WeedId;
import org.swathbook.catalog.WeedKind;
import org.swathbook.measure.Dimension;
import org.swathbook.measure.MeasureException;
import org.swathbook.measure.Quantity;
import org.swathbook.measure.Unit;
import org.swathbook.source.MapNode;
import org.swathbook.source.MapReader;
import org.swathbook.source.ScalarNode;
import org.swathbook.source.TextParser;
import org.swathbook.source.Texts;

/** Reads a weed. */
final class WeedReader {
  static final String FORMAT = "swathbook.weed/1";

  private static final Pattern EPPO = Pattern.compile("[A-Z0-9]{5}");
  private static final Pattern PER_DEGREE_DAY = Pattern.compile("(.+) per degree-day");
  private static final Pattern PER_PLANT = Pattern.compile("(.+ ?%) per plant/(.+)");

  private static final Pattern MEGAPASCALS = Pattern.compile("\\s*(.+?)\\s*MPa\\s*");

  private final Names<CropId> crops;

  WeedReader(Names<CropId> crops) {
    this.crops = crops;
  }

  Optional<Weed> read(CatalogFile file, MapReader map) {
    Entry entry = new Entry(file, map, FORMAT);
    String eppo = map.require("eppo", WeedReader::eppo, "AMAPA", "XXXXX");
    entry.checkFileName("eppo", eppo.toLowerCase(Locale.ROOT));
    entry.keepSources(map, Place.ROOT, "name", "latin", "kind", "family", "genus");
    Weed weed =
        new Weed(
            new WeedId(eppo),
            map.require("name", Texts::text, "Palmer amaranth", "?"),
            map.require("latin", Texts::text, "Amaranthus palmeri", "?"),
            entry.aliases(),
            WeedKind.valueOf(
                map.require(
                        "kind",
                        Texts.oneOf(List.of("broadleaf", "grass", "sedge")),
                        "broadleaf",
                        "broadleaf")
                    .toUpperCase(Locale.ROOT)),
            map.require("family", Texts::text, "amaranthaceae", "?").toLowerCase(Locale.ROOT),
            map.require("genus", Texts::text, "amaranthus", "?").toLowerCase(Locale.ROOT),
            emergence(entry),
            height(entry),
            competition(entry),
            seed(entry),
            entry.kept(),
            entry.reviewed());
    map.done();
    return entry.isSound() ? Optional.of(weed) : Optional.empty();
  }

  private static String eppo(String text) {
    String code = text.strip();
    if (!EPPO.matcher(code).matches()) {
      throw new MeasureException(
          "'" + text + "' is no EPPO code; write its five capitals, as AMAPA");
    }
    return code;
  }

  private static final Emergence NO_EMERGENCE =
      new Emergence(
          ThermalClocks.UNREAD.clock(),
          MonthDay.of(1, 1),
          1,
          2,
          3,
          Optional.empty(),
          OptionalDouble.empty(),
          Source.NOT_GIVEN);

  private static Emergence emergence(Entry entry) {
    Optional<MapReader> found = entry.map().requireMap("emergence", "{degreeDays: …, points: …}");
    if (found.isEmpty()) {
      return NO_EMERGENCE;
    }
    MapReader m = found.get();
    int before = entry.problems().count();
    Place place = Place.ROOT.then("emergence");
    Source source = entry.source(place.then("points"), m.mark("points"));
    entry.keepSources(m, place, "degreeDays", "tail", "water");
    Optional<MapReader> days =
        m.requireMap("degreeDays", "{method: average, base: 48 F, start: Jan 1}");
    Optional<MapReader> points = m.requireMap("points", "{10 %: 10, 50 %: 60, 90 %: 300}");
    if (days.isEmpty() || points.isEmpty()) {
      return NO_EMERGENCE;
    }
    ThermalClocks clock = ThermalClocks.read(days.get());
    MonthDay start = days.get().require("start", Texts::monthDay, "Jan 1", MonthDay.of(1, 1));
    days.get().done();
    TextParser<Double> sum = text -> clock.celsiusDays(Texts.number(text));
    double at10 = points.get().require("10 %", sum, "10", 1.0);
    double at50 = points.get().require("50 %", sum, "60", 2.0);
    double at90 = points.get().require("90 %", sum, "300", 3.0);
    points.get().done();
    Optional<Emergence.Tail> tail =
        m.findMap("tail", "{share: 5 %, until: 1400}")
            .map(
                t -> {
                  Emergence.Tail read =
                      new Emergence.Tail(
                          t.require("share", Texts::share, "5 %", 0.0),
                          t.require("until", sum, "1400", at90));
                  t.done();
                  return read;
                });
    OptionalDouble waterBase = waterBase(m);
    m.done();
    if (entry.problems().count() > before) {
      return NO_EMERGENCE;
    }
    if (!(at10 > 0 && at10 < at50 && at50 < at90)) {
      entry
          .problems()
          .add(
              points.get().mark(),
              "the points do not rise from above zero",
              "let 50 % come after 10 %, and 90 % after 50 %");
      return NO_EMERGENCE;
    }
    if (tail.isPresent() && !(tail.get().until() > at90)) {
      entry
          .problems()
          .add(m.mark("tail"), "the tail ends before the 90 % point", "let it end later");
      return NO_EMERGENCE;
    }
    if (tail.isPresent() && tail.get().share() > 0.1) {
      entry
          .problems()
          .add(
              m.mark("tail"),
              "the tail holds more than the last tenth of the plants",
              "write a share of at most 10 %");
      return NO_EMERGENCE;
    }
    return new Emergence(clock.clock(), start, at10, at50, at90, tail, waterBase, source);
  }

  private static OptionalDouble waterBase(MapReader emergence) {
    Optional<MapReader> water = emergence.findMap("water", "{base: -10 MPa}");
    if (water.isEmpty()) {
      return OptionalDouble.empty();
    }
    double base = water.get().require("base", WeedReader::megapascals, "-10 MPa", -10.0);
    water.get().done();
    return OptionalDouble.of(base);
  }

  private static double megapascals(String text) {
    Matcher potential = MEGAPASCALS.matcher(text);
    if (!potential.matches()) {
      throw new MeasureException(
          "'" + text + "' is no water potential; write for example '-10 MPa'");
    }
    double value = Texts.number(potential.group(1));
    if (!(value < Emergence.DRAINED_MPA)) {
      throw new MeasureException(
          "'" + text + "' is not below that of drained soil; write less than '-0.033 MPa'");
    }
    return value;
  }

  private static HeightCurve height(Entry entry) {
    Optional<MapReader> found =
        entry.map().requireMap("height", "{base: 10 C, slope: 0.2 cm per degree-day, …}");
    if (found.isEmpty()) {
      return new HeightCurve(0, 1, 1, 1, 1, Source.NOT_GIVEN);
    }
    MapReader m = found.get();
    Place place = Place.ROOT.then("height");
    entry.keepSources(m, place, "base", "r", "lag", "max");
    TextParser<Double> slope =
        text -> {
          Matcher rate = PER_DEGREE_DAY.matcher(text.strip());
          if (!rate.matches()) {
            throw new MeasureException(
                "'" + text + "' is no growth; write for example '0.2 cm per degree-day'");
          }
          return positive(
              Texts.in(Unit.CENTIMETRE, "0.2 cm per degree-day").parse(rate.group(1)), text);
        };
    HeightCurve curve =
        new HeightCurve(
            m.require("base", WeedReader::celsius, "10 C", 0.0),
            m.require("slope", slope, "0.2 cm per degree-day", 1.0),
            m.require("r", t -> positive(Texts.number(t), t), "0.03", 1.0),
            m.require("lag", t -> positive(Texts.number(t), t), "90", 1.0),
            m.require(
                "max", t -> positive(Texts.in(Unit.CENTIMETRE, "2 m").parse(t), t), "2 m", 1.0),
            entry.source(place.then("slope"), m.mark("slope")));
    m.done();
    return curve;
  }

  /** The curve counts °C-days on base 10 °C, so a base in °F would leave in doubt what it is of. */
  private static double celsius(String text) {
    Quantity q = Quantity.parse(text, Dimension.TEMPERATURE, "10 C");
    if (q.unit() != Unit.CELSIUS) {
      throw new MeasureException(
          "'" + text + "' is not in °C, as slope, r and lag are; write for example '10 C'");
    }
    return q.value();
  }

  private static double positive(double value, String text) {
    if (!(value > 0)) {
      throw new MeasureException("'" + text + "' is not above zero; write a number above zero");
    }
    return value;
  }

  private Map<CropId, Competition> competition(Entry entry) {
    Map<CropId, Competition> out = new LinkedHashMap<>();
    Optional<MapReader> map =
        entry.map().requireMap("competition", "{corn: {i: 6 % per plant/m2, a: 60 %}}");
    for (MapNode.Entry e : map.map(m -> m.node().entries()).orElse(List.of())) {
      Optional<CropId> crop =
          MapReader.scalar(
              new ScalarNode(e.keyMark(), e.key(), false), crops.known(), "corn", entry.problems());
      Optional<Competition> values =
          MapReader.of(e.value(), "{i: 6 % per plant/m2, a: 60 %}", entry.problems())
              .map(
                  m -> {
                    Competition read =
                        new Competition(
                            m.require("i", WeedReader::perPlant, "6 % per plant/m2", 0.0),
                            m.require("a", Texts::share, "60 %", 0.0),
                            entry.source(Place.ROOT.then("competition").then(e.key()), m.mark()));
                    m.done();
                    return read;
                  });
      if (crop.isPresent() && values.isPresent() && out.put(crop.get(), values.get()) != null) {
        entry
            .problems()
            .add(e.keyMark(), "the crop " + crop.get() + " stands here twice", "keep one");
      }
    }
    return out;
  }

  /** Share of the yield lost per plant on a square metre, as density nears zero; may exceed 1. */
  private static double perPlant(String text) {
    Matcher m = PER_PLANT.matcher(text.strip());
    Optional<Unit> area = m.matches() ? Unit.find(m.group(2)) : Optional.empty();
    if (area.isEmpty() || area.get().dimension() != Dimension.AREA) {
      throw new MeasureException(
          "'" + text + "' is no loss per plant; write for example '6 % per plant/m2'");
    }
    double loss = Quantity.parse(m.group(1), Dimension.SHARE, "6 %").si();
    return positive(loss, text) * area.get().toSi(1);
  }

  private static SeedBiology seed(Entry entry) {
    Optional<MapReader> found =
        entry.map().requireMap("seed", "{emerged: 26 %, survival: 5 %, fecundity: 14000, …}");
    if (found.isEmpty()) {
      return new SeedBiology(0, 0, 0, 0, Source.NOT_GIVEN);
    }
    MapReader m = found.get();
    Place place = Place.ROOT.then("seed");
    entry.keepSources(m, place, "emerged", "survival", "selfing");
    SeedBiology seed =
        new SeedBiology(
            m.require("emerged", Texts::share, "26 %", 0.0),
            m.require("survival", Texts::share, "5 %", 0.0),
            m.require("fecundity", t -> positive(Texts.number(t), t), "14000", 1.0),
            m.require("selfing", Texts::share, "50 %", 0.0),
            entry.source(place.then("fecundity"), m.mark("fecundity")));
    m.done();
    return seed;
  }
}
