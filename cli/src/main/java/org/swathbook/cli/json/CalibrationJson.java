package org.swathbook.cli.json;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.OptionalDouble;
import org.swathbook.calibration.Calibration;
import org.swathbook.cli.report.Cautions;

/** The result of {@code calibrate}. */
public final class CalibrationJson {
  private CalibrationJson() {}

  public static String of(Calibration c) {
    ObjectNode root = Json.NODES.objectNode();
    root.put("format", "swathbook.calibrate/1");
    root.set("cautions", Json.texts(Cautions.ALL));
    root.set("widthIn", Json.significant(c.widthIn(), 6));
    root.set("courseFeet", Json.significant(c.course(), 6));
    put(root, "mph", c.mph());
    put(root, "courseSeconds", c.courseSeconds());
    put(root, "wantedGallonsPerAcre", c.wanted());
    put(root, "wantedGallonsPerMinute", c.wantedFlow());
    put(root, "wantedCatchOunces", c.wantedCatch());
    put(root, "waterGallonsPerAcre", c.waterVolume());
    put(root, "measuredGallonsPerAcre", c.measuredVolume());
    put(root, "measuredGallonsPerMinute", c.measuredFlow());
    put(root, "measuredPsi", c.psi());
    OptionalDouble off = c.off();
    put(
        root,
        "offPct",
        off.isPresent() ? OptionalDouble.of(100 * off.getAsDouble()) : OptionalDouble.empty());
    put(root, "psiForWanted", c.psiForWanted());
    put(root, "mphForWanted", c.mphForWanted());
    root.putNull("droplets");
    return Json.write(root);
  }

  private static void put(ObjectNode node, String key, OptionalDouble value) {
    node.set(key, Json.significant(value.orElse(Double.NaN), 6));
  }
}
