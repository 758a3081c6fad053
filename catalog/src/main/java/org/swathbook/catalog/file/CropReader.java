package org.swathbook.catalog.file;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import org.swathbook.catalog.Canopy;
import org.swathbook.catalog.Crop;
import org.swathbook.catalog.CropId;
import org.swathbook.catalog.CropStage;
import org.swathbook.catalog.Slug;
import org.swathbook.catalog.Source;
import org.swathbook.measure.MeasureException;
import org.swathbook.measure.Numbers;
import org.swathbook.measure.Unit;
import org.swathbook.source.MapNode;
import org.swathbook.source.MapReader;
import org.swathbook.source.Mark;
import org.swathbook.source.Nearest;
import org.swathbook.source.Node;
import org.swathbook.source.ScalarNode;
import org.swathbook.source.TextParser;
import org.swathbook.source.Texts;

/** Reads a crop. */
final class CropReader {
  static final String FORMAT = "swathbook.crop/1";

  private final Entry entry;
  private final MapReader map;
  private final String stem;
  private final Map<String, Source> sources = new LinkedHashMap<>();

  private CropReader(CatalogFile file, MapReader map) {
    this.entry = new Entry(file, map, FORMAT);
    this.map = map;
    this.stem = file.stem();
  }

  static Optional<Crop> read(CatalogFile file, MapReader map) {
    return new CropReader(file, map).read();
  }

  private Optional<Crop> read() {
    String id = map.require("id", Texts::text, "corn", "?");
    if (!Slug.of(id).equals(id) && entry.isSound()) {
      entry
          .problems()
          .add(map.mark("id"), "'" + id + "' is no id", "write it as '" + Slug.of(id) + "'");
    }
    entry.checkFileName("id", id);
    Optional<MapReader> stageKeys = map.requireMap("stages", "{degreeDays: …, at: {VE: 115, …}}");
    ThermalClocks clock = stageKeys.flatMap(this::clock).orElse(ThermalClocks.UNREAD);
    List<CropStage> stages = stageKeys.map(m -> stages(m, clock)).orElse(List.of());
    List<String> names = stages.stream().map(CropStage::name).toList();
    TextParser<String> stage = stage(names);
    String emergence = map.require("emergence", stage, "VE", names.isEmpty() ? "?" : names.get(0));
    List<String> leaves = map.findAll("leafStages", stage, "V1");
    checkEmergence(stages, emergence);
    checkRising(leaves, names);
    Removal removal = new RemovalReader(entry, stage, names, leaves).read();
    entry.keepSources(map, Place.ROOT, "leafStages", "name");
    if (!removal.bare().isEmpty()) {
      keep(Place.ROOT.then("criticalRemoval"), "criticalRemoval", map.mark("criticalRemoval"));
    }
    Crop crop =
        new Crop(
            new CropId(stem),
            map.require("name", Texts::text, "corn", "?"),
            entry.aliases(),
            clock.clock(),
            stages,
            emergence,
            leaves,
            byStage("bbch", names, CropReader::bbch, "9"),
            heights(names),
            canopy(stage),
            removal.bare(),
            removal.afterResidual(),
            allSources(),
            entry.reviewed());
    map.done();
    return entry.isSound() ? Optional.of(crop) : Optional.empty();
  }

  /** Keeps the source of a value that has no place of its own for it. */
  private void keep(Place place, String path, Mark mark) {
    sources.put(path, entry.source(place, mark));
  }

  private Map<String, Source> allSources() {
    Map<String, Source> all = new LinkedHashMap<>(sources);
    all.putAll(entry.kept());
    return all;
  }

  private static TextParser<String> stage(List<String> names) {
    return text ->
        names.stream()
            .filter(n -> n.equalsIgnoreCase(text.strip()))
            .findFirst()
            .orElseThrow(
                () ->
                    new MeasureException(
                        "'" + text + "' is no stage of this crop; " + Nearest.hint(text, names)));
  }

  private Optional<ThermalClocks> clock(MapReader stages) {
    Optional<MapReader> days = stages.requireMap("degreeDays", "{method: 86/50 F, from: planting}");
    keep(Place.ROOT.then("stages").then("degreeDays"), "stages", stages.mark("degreeDays"));
    return days.map(
        d -> {
          ThermalClocks clock = ThermalClocks.read(d);
          d.require("from", Texts.oneOf(List.of("planting")), "planting", "planting");
          d.done();
          return clock;
        });
  }

  private List<CropStage> stages(MapReader m, ThermalClocks clock) {
    List<CropStage> out = new ArrayList<>();
    Place place = Place.ROOT.then("stages").then("at");
    Optional<MapReader> at = m.requireMap("at", "{VE: 115, V1: 197}");
    for (MapNode.Entry e : at.map(a -> a.node().entries()).orElse(List.of())) {
      keep(place.then(e.key()), "stages.at." + e.key(), e.value().mark());
      stage(e, clock).ifPresent(s -> add(out, s, e.keyMark()));
    }
    m.done();
    return out;
  }

  private Optional<CropStage> stage(MapNode.Entry e, ThermalClocks clock) {
    if (e.value() instanceof ScalarNode) {
      double sum =
          MapReader.scalar(e.value(), Texts::number, "115", entry.problems())
              .map(clock::celsiusDays)
              .orElse(Double.NaN);
      return Optional.of(new CropStage(e.key(), OptionalDouble.of(sum), OptionalInt.empty()));
    }
    return MapReader.of(e.value(), e.key() + ": {days: 42}", entry.problems())
        .map(
            m -> {
              int days = m.require("days", Texts::bareDays, "42", -1);
              m.done();
              return days < 0
                  ? unread(e.key())
                  : new CropStage(e.key(), OptionalDouble.empty(), OptionalInt.of(days));
            });
  }

  /** Known by name, so that what names it is not a mistake too; comes neither before nor after. */
  private static CropStage unread(String name) {
    return new CropStage(name, OptionalDouble.of(Double.NaN), OptionalInt.empty());
  }

  /**
   * Later stages come later; stages by days and by degree-days are each compared among themselves.
   */
  private void add(List<CropStage> stages, CropStage next, Mark mark) {
    for (CropStage s : stages) {
      boolean sums = s.degreeDays().isPresent() && next.degreeDays().isPresent();
      boolean days = s.daysAfterEmergence().isPresent() && next.daysAfterEmergence().isPresent();
      if (s.name().equalsIgnoreCase(next.name())
          || sums && s.degreeDays().getAsDouble() >= next.degreeDays().getAsDouble()
          || days && s.daysAfterEmergence().getAsInt() >= next.daysAfterEmergence().getAsInt()) {
        entry
            .problems()
            .add(
                mark,
                "the stage " + next.name() + " does not come after " + s.name(),
                "write the stages in the order in which they are reached, each once");
        break;
      }
    }
    stages.add(next);
  }

  private void checkEmergence(List<CropStage> stages, String emergence) {
    stages.stream()
        .filter(s -> s.name().equals(emergence) && s.degreeDays().isEmpty())
        .forEach(
            s ->
                entry
                    .problems()
                    .add(
                        map.mark("emergence"),
                        "the emergence stage counts days after itself",
                        "give it degree-days from planting"));
  }

  private void checkRising(List<String> leaves, List<String> stages) {
    for (int i = 1; i < leaves.size(); i++) {
      if (stages.indexOf(leaves.get(i)) <= stages.indexOf(leaves.get(i - 1))) {
        entry
            .problems()
            .add(
                map.mark("leafStages"),
                "the leaf stage " + leaves.get(i) + " does not come after " + leaves.get(i - 1),
                "write them in the order of the stages");
      }
    }
  }

  private static int bbch(String text) {
    int code = Texts.whole(text);
    if (code < 0 || code > 99) {
      throw new MeasureException("'" + text + "' is no BBCH code; write 0 to 99");
    }
    return code;
  }

  /** Codes may fall where side stages run beside each other; heights may not. */
  private Map<String, Double> heights(List<String> stages) {
    Map<String, Double> heights =
        byStage("heights", stages, Texts.in(Unit.CENTIMETRE, "6 in"), "6 in");
    map.findMap("heights", "{VE: 1 in}").ifPresent(h -> Rising.check(h, heights, stages));
    return heights;
  }

  private <T> Map<String, T> byStage(
      String key, List<String> stages, TextParser<T> value, String example) {
    Map<String, T> out = new LinkedHashMap<>();
    Optional<MapReader> values = map.findMap(key, key + ": {VE: " + example + "}");
    for (MapNode.Entry e : values.map(v -> v.node().entries()).orElse(List.of())) {
      Optional<String> name =
          MapReader.scalar(
              new ScalarNode(e.keyMark(), e.key(), false), stage(stages), "VE", entry.problems());
      String path = key + "." + name.orElse(e.key());
      keep(Place.ROOT.then(key).then(e.key()), path, e.value().mark());
      Optional<T> read = MapReader.scalar(e.value(), value, example, entry.problems());
      if (name.isPresent() && read.isPresent()) {
        out.put(name.get(), read.get());
      }
    }
    return out;
  }

  private Canopy canopy(TextParser<String> stage) {
    String example = "{at: V10}";
    Optional<MapReader> found = map.requireMap("canopy", example);
    Source source =
        found.map(m -> entry.source(Place.ROOT.then("canopy"), m.mark())).orElse(Source.NOT_GIVEN);
    sources.put("canopy", source);
    Optional<String> at = found.flatMap(m -> m.find("at", stage, "V10"));
    TreeMap<Double, Integer> days = new TreeMap<>();
    found
        .flatMap(m -> m.findMap("days", "{15 in: 40, 30 in: 55}"))
        .ifPresent(
            d -> byRow(d, n -> MapReader.scalar(n, Texts::bareDays, "40", entry.problems()), days));
    Optional<Double> never =
        found.flatMap(m -> m.find("neverBelow", CropReader::bushels, "100 bu/acre"));
    found.ifPresent(
        m -> {
          m.done();
          checkWiderRows(m, days);
          if (at.isPresent() == !days.isEmpty() && entry.isSound()) {
            entry
                .problems()
                .add(
                    m.mark(),
                    "the rows close at a stage or by days, one of them",
                    "write '" + example + "' or '{days: {15 in: 40, 30 in: 55}}'");
          }
        });
    return new Canopy(
        at, days, never.map(OptionalDouble::of).orElse(OptionalDouble.empty()), source);
  }

  /** Wider rows take longer to close. */
  private static void checkWiderRows(MapReader canopy, SortedMap<Double, Integer> days) {
    int longest = 0;
    for (int d : days.values()) {
      if (d < longest) {
        canopy
            .problems()
            .add(
                canopy.mark("days"),
                "wider rows close in " + d + " days, narrower ones in " + longest,
                "let the days rise with the spacing");
        return;
      }
      longest = d;
    }
  }

  private static double bushels(String text) {
    Numbers.Split s = Numbers.split(text);
    if (!s.rest().equals("bu/acre") || s.number() < 0) {
      throw new MeasureException("'" + text + "' is no yield; write for example '100 bu/acre'");
    }
    return s.number();
  }

  /** Reads {@code {15 in: …, 30 in: …}}: row spacings in cm with what holds at each. */
  private <T> void byRow(MapReader m, Function<Node, Optional<T>> value, Map<Double, T> into) {
    for (MapNode.Entry e : m.node().entries()) {
      Optional<Double> spacing =
          MapReader.scalar(
              new ScalarNode(e.keyMark(), e.key(), false),
              Texts.in(Unit.CENTIMETRE, "30 in"),
              "30 in",
              entry.problems());
      Optional<T> read = value.apply(e.value());
      if (spacing.isPresent() && read.isPresent()) {
        into.put(spacing.get(), read.get());
      }
    }
  }
}
