package org.swathbook.growth;

import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.swathbook.catalog.Crop;
import org.swathbook.model.ModelCard;
import org.swathbook.model.ModelSection;

/**
 * Crop height by running stage: straight lines between the heights that the crop states. 0 before
 * the crop is up; from the ground at emergence to the first stated height; level after the last
 * one.
 */
final class CropHeight {
  private final SortedMap<Double, Double> byStage = new TreeMap<>();
  private final int up;

  CropHeight(Crop crop) {
    this.up = crop.findStage(crop.emergenceStage()).orElseThrow();
    for (Map.Entry<String, Double> e : crop.heightsCm().entrySet()) {
      int index = crop.findStage(e.getKey()).orElseThrow();
      byStage.put((double) index, e.getValue());
    }
    byStage.putIfAbsent((double) up, 0.0);
  }

  /** Height in cm at a running stage. */
  double cm(double stage) {
    if (stage < up) {
      return 0;
    }
    SortedMap<Double, Double> below = byStage.headMap(Math.nextUp(stage));
    SortedMap<Double, Double> above = byStage.tailMap(Math.nextUp(stage));
    double x0 = below.lastKey();
    double h0 = byStage.getOrDefault(x0, 0.0);
    if (above.isEmpty()) {
      return h0;
    }
    double x1 = above.firstKey();
    double h1 = byStage.getOrDefault(x1, h0);
    return h0 + (h1 - h0) * (stage - x0) / (x1 - x0);
  }

  /** What the reference prints. */
  static List<ModelCard> cards() {
    return List.of(
        ModelCard.of(
                ModelSection.CROP,
                CropHeight.class,
                "height",
                "straight lines between the heights stated by stage; 0 before emergence and after harvest",
                "catalog")
            .given("cm"));
  }
}
