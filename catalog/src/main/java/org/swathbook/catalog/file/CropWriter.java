package org.swathbook.catalog.file;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.function.Function;
import org.swathbook.catalog.Canopy;
import org.swathbook.catalog.Crop;
import org.swathbook.catalog.CropStage;
import org.swathbook.catalog.Source;
import org.swathbook.measure.Unit;
import org.swathbook.source.MapNode;
import org.swathbook.source.MapWriter;
import org.swathbook.source.Node;

/** Writes a crop. */
final class CropWriter {
  private final EntryWriter entry = new EntryWriter();
  private final Crop crop;

  /** Sources of the crop that were not yet written. */
  private final Map<String, Source> left;

  private CropWriter(Crop crop) {
    this.crop = crop;
    this.left = new LinkedHashMap<>(crop.sources());
  }

  static MapNode write(Crop crop) {
    return new CropWriter(crop).keys();
  }

  private MapNode keys() {
    MapWriter map =
        new MapWriter()
            .put("format", CropReader.FORMAT)
            .put("id", crop.id().value())
            .put("name", crop.name())
            .putAll("aliases", crop.aliases())
            .put("stages", stages())
            .put("emergence", crop.emergenceStage())
            .putAll("leafStages", crop.leafStages());
    byStage(map, "bbch", crop.bbch(), code -> Integer.toString(code));
    byStage(
        map, "heights", crop.heightsCm(), cm -> ExactText.quantity(cm, Unit.CENTIMETRE, Unit.INCH));
    map.put("canopy", canopy(crop.canopy()));
    if (!crop.removalBareByRowCm().isEmpty()) {
      map.put("criticalRemoval", removal());
    }
    return map.put("sources", entry.sources(map.node(), left))
        .put("reviewed", crop.reviewed().toString())
        .node();
  }

  /** Moves the source under a name of the crop to the path that leads to the value. */
  private void source(String kept, KeyPath path) {
    Source source = left.remove(kept);
    if (source != null) {
      entry.source(path, source);
    }
  }

  private Node stages() {
    KeyPath at = KeyPath.ROOT.then("stages");
    ThermalClockWriter clock =
        new ThermalClockWriter(
            crop.clock(),
            crop.stages().stream().flatMap(s -> s.degreeDays().stream().boxed()).toList());
    source("stages", at.then("degreeDays"));
    MapWriter points = new MapWriter();
    for (CropStage s : crop.stages()) {
      source("stages.at." + s.name(), at.then("at").then(s.name()));
      if (s.degreeDays().isPresent()) {
        points.put(s.name(), clock.sum(s.degreeDays().getAsDouble()));
      } else {
        String days = Integer.toString(s.daysAfterEmergence().orElseThrow());
        points.put(s.name(), new MapWriter().put("days", days).node());
      }
    }
    return new MapWriter()
        .put("degreeDays", clock.keys().put("from", "planting").node())
        .put("at", points.node())
        .node();
  }

  private <T> void byStage(
      MapWriter into, String key, Map<String, T> values, Function<T, String> text) {
    MapWriter map = new MapWriter();
    values.forEach(
        (stage, value) -> {
          source(key + "." + stage, KeyPath.ROOT.then(key).then(stage));
          map.put(stage, text.apply(value));
        });
    TermsWriter.putUnlessEmpty(into, key, map);
  }

  private Node canopy(Canopy canopy) {
    MapWriter map = new MapWriter();
    canopy.stage().ifPresent(s -> map.put("at", s));
    MapWriter days = new MapWriter();
    canopy.daysByRowCm().forEach((row, d) -> days.put(spacing(row), Integer.toString(d)));
    TermsWriter.putUnlessEmpty(map, "days", days);
    canopy
        .neverBelowBuPerAcre()
        .ifPresent(bu -> map.put("neverBelow", ExactText.number(bu) + " bu/acre"));
    return map.node();
  }

  private static String spacing(double cm) {
    return ExactText.quantity(cm, Unit.CENTIMETRE, Unit.INCH);
  }

  private Node removal() {
    MapWriter map = new MapWriter();
    crop.removalBareByRowCm()
        .forEach(
            (row, stage) -> map.put(row == RemovalReader.ANY_ROW ? "bare" : spacing(row), stage));
    return map.put("afterResidual", afterResidual()).node();
  }

  /** One stage for all rows, or so many leaf stages after that of each row. */
  private String afterResidual() {
    SortedMap<Double, String> after = crop.removalAfterResidualByRowCm();
    List<String> stages = after.values().stream().distinct().toList();
    if (stages.size() == 1) {
      return stages.get(0);
    }
    for (int later = 0; later <= RemovalReader.MOST_LATER; later++) {
      int n = later;
      if (crop.removalBareByRowCm().entrySet().stream()
          .allMatch(
              e -> leaf(e.getValue(), n).equals(Optional.ofNullable(after.get(e.getKey()))))) {
        return "+" + n + " stages";
      }
    }
    throw new IllegalArgumentException(
        "the stages after a residual of " + crop.id() + " follow no one rule");
  }

  /** The leaf stage so many after one; empty past the last. */
  private Optional<String> leaf(String stage, int later) {
    List<String> leaves = crop.leafStages();
    int at = leaves.indexOf(stage);
    return at < 0 || at + later >= leaves.size()
        ? Optional.empty()
        : Optional.of(leaves.get(at + later));
  }
}
