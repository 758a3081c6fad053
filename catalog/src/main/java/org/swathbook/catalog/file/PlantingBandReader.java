package org.swathbook.catalog.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.swathbook.catalog.PlantingBand;
import org.swathbook.catalog.SoilCondition;
import org.swathbook.measure.Unit;
import org.swathbook.source.MapReader;
import org.swathbook.source.Node;
import org.swathbook.source.ScalarNode;
import org.swathbook.source.Texts;

/** Reads how long before planting a use may be made, by rate, soil and rain. */
final class PlantingBandReader {
  private final Entry entry;
  private final ActiveRates rates;

  PlantingBandReader(Entry entry, ActiveRates rates) {
    this.entry = entry;
    this.rates = rates;
  }

  Optional<List<PlantingBand>> read(Node node) {
    if (node instanceof ScalarNode) {
      return MapReader.scalar(node, Texts::days, "14 days", entry.problems())
          .map(
              d ->
                  List.of(
                      new PlantingBand(
                          SoilCondition.ALWAYS, Optional.empty(), d, OptionalDouble.empty())));
    }
    List<Node> items = MapReader.itemsOf(node, "- {days: 14}", entry.problems());
    List<PlantingBand> bands = new ArrayList<>();
    for (Node item : items) {
      Optional<PlantingBand> band = entry.map("- {days: 14}", this::plantingBand).apply(item);
      PlantingBand last = bands.isEmpty() ? null : bands.get(bands.size() - 1);
      if (band.isPresent() && last != null && !rises(last, band.get())) {
        entry
            .problems()
            .add(
                item.mark(),
                "no rate can reach this row, since the row before covers it",
                "write the rows from the lowest 'upTo' to the highest");
      }
      band.ifPresent(bands::add);
    }
    return Optional.of(bands);
  }

  private static boolean rises(PlantingBand before, PlantingBand after) {
    return !before.when().equals(after.when())
        || before.upTo().isPresent()
            && (after.upTo().isEmpty()
                || after.upTo().get().kgPerHa() > before.upTo().get().kgPerHa());
  }

  private Optional<PlantingBand> plantingBand(MapReader m) {
    return Optional.of(
        new PlantingBand(
            SoilConditions.read(m),
            m.find("upTo", rates.one(), rates.example()),
            m.require("days", Texts::bareDays, "14", 0),
            m.find("rain", Texts.in(Unit.MILLIMETRE, "1 in"), "1 in")
                .map(OptionalDouble::of)
                .orElse(OptionalDouble.empty())));
  }
}
