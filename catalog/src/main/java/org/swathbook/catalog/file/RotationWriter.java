package org.swathbook.catalog.file;

import java.util.List;
import java.util.Map;
import org.swathbook.catalog.CropId;
import org.swathbook.catalog.RotationRow;
import org.swathbook.catalog.SoilCondition;
import org.swathbook.catalog.Stated;
import org.swathbook.catalog.TimePoint;
import org.swathbook.measure.Period;
import org.swathbook.source.MapWriter;
import org.swathbook.source.Node;

/** Writes the next-crop intervals of an ingredient. */
final class RotationWriter {
  private final EntryWriter entry;

  RotationWriter(EntryWriter entry) {
    this.entry = entry;
  }

  void write(MapWriter into, Map<CropId, Stated<List<RotationRow>>> rotation) {
    MapWriter map = new MapWriter();
    KeyPath at = KeyPath.ROOT.then("rotation");
    rotation.forEach((crop, rows) -> entry.stated(map, crop.value(), at, rows, this::rows));
    TermsWriter.putUnlessEmpty(into, "rotation", map);
  }

  private Node rows(List<RotationRow> rows) {
    RotationRow first = rows.get(0);
    boolean plain = rows.size() == 1 && isPlain(first) && !first.interval().equals(Period.NONE);
    return plain
        ? MapWriter.scalar(interval(first.interval()))
        : MapWriter.list(rows.stream().map(RotationWriter::row).toList());
  }

  private static boolean isPlain(RotationRow row) {
    return row.when().equals(SoilCondition.ALWAYS)
        && row.formulations().isEmpty()
        && row.trait().isEmpty()
        && row.sprayedAfter().isEmpty()
        && row.rateAbove().isEmpty()
        && row.rainMm().isEmpty();
  }

  private static String interval(Period period) {
    if (period.equals(Period.NONE)) {
      return "none";
    }
    return period.equals(Period.NEVER) ? "bioassay" : ExactText.period(period);
  }

  private static Node row(RotationRow row) {
    MapWriter map = new MapWriter();
    SoilConditionsWriter.write(map, row.when());
    map.putAll("formulations", row.formulations());
    row.trait().ifPresent(t -> map.put("trait", t.value()));
    row.sprayedAfter().ifPresent(d -> map.put("after", new TimePoint.OnMonthDay(d).toString()));
    row.rateAbove().ifPresent(r -> map.put("rateAbove", ExactText.rate(r)));
    map.put("interval", interval(row.interval()));
    row.rainMm().ifPresent(mm -> map.put("rain", UseWriter.rain(mm)));
    return map.node();
  }
}
