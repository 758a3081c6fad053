package org.swathbook.catalog.file;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.swathbook.catalog.CropId;
import org.swathbook.catalog.RotationRow;
import org.swathbook.catalog.SoilCondition;
import org.swathbook.catalog.Stated;
import org.swathbook.measure.Period;
import org.swathbook.measure.Unit;
import org.swathbook.source.ListNode;
import org.swathbook.source.MapNode;
import org.swathbook.source.MapReader;
import org.swathbook.source.Node;
import org.swathbook.source.ScalarNode;
import org.swathbook.source.TextParser;
import org.swathbook.source.Texts;

/** Reads the next-crop intervals of an ingredient. */
final class RotationReader {
  private static final String EXAMPLE = "4 months";

  /** A waiting time, that there is none, or that only a bioassay ends it. */
  private static final TextParser<Period> PERIOD =
      text ->
          switch (text.strip()) {
            case "none" -> Period.NONE;
            case "bioassay" -> Period.NEVER;
            default -> Period.parse(text);
          };

  private final Entry entry;
  private final ActiveRates rates;
  private final Names<CropId> crops;

  RotationReader(Entry entry, ActiveRates rates, Names<CropId> crops) {
    this.entry = entry;
    this.rates = rates;
    this.crops = crops;
  }

  Map<CropId, Stated<List<RotationRow>>> read(Node node) {
    Map<CropId, Stated<List<RotationRow>>> out = new LinkedHashMap<>();
    Optional<MapReader> map = MapReader.of(node, "rotation: {corn: 4 months}", entry.problems());
    if (map.isEmpty()) {
      return out;
    }
    for (MapNode.Entry e : map.get().node().entries()) {
      Optional<CropId> crop =
          MapReader.scalar(
              new ScalarNode(e.keyMark(), e.key(), false), crops.known(), "corn", entry.problems());
      Stated<List<RotationRow>> rows =
          entry.stated(
              map.get(),
              e.key(),
              Place.ROOT.then("rotation"),
              "interval before " + e.key(),
              this::rows);
      if (crop.isPresent() && out.put(crop.get(), rows) != null) {
        entry
            .problems()
            .add(e.keyMark(), "the crop " + crop.get() + " stands here twice", "keep one");
      }
    }
    return out;
  }

  private Optional<List<RotationRow>> rows(Node node) {
    if (node instanceof ListNode) {
      return entry.rows(node, "- {interval: 4 months}", this::row);
    }
    return MapReader.scalar(node, PERIOD, EXAMPLE, entry.problems())
        .map(
            p ->
                List.of(
                    new RotationRow(
                        SoilCondition.ALWAYS,
                        Set.of(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        p,
                        OptionalDouble.empty())));
  }

  private Optional<RotationRow> row(MapReader m) {
    return Optional.of(
        new RotationRow(
            SoilConditions.read(m),
            new LinkedHashSet<>(m.findAll("formulations", Formulations.CODE, "CS")),
            m.find("trait", Traits.PARSER, "safened-seed"),
            m.find("after", Texts::monthDay, "06-10"),
            m.find("rateAbove", rates.one(), rates.example()),
            m.require("interval", PERIOD, EXAMPLE, Period.NONE),
            m.find("rain", Texts.in(Unit.MILLIMETRE, "1 in"), "1 in")
                .map(OptionalDouble::of)
                .orElse(OptionalDouble.empty())));
  }
}
