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
  /** Stages of which a height is stated, rising, and these heights. */
  private final double[] stages;

  private final double[] heightsCm;
  private final int up;

  CropHeight(Crop crop) {
    SortedMap<Double, Double> byStage = new TreeMap<>();
    this.up = crop.findStage(crop.emergenceStage()).orElseThrow();
    for (Map.Entry<String, Double> e : crop.heightsCm().entrySet()) {
      int index = crop.findStage(e.getKey()).orElseThrow();
      byStage.put((double) index, e.getValue());
    }
    byStage.putIfAbsent((double) up, 0.0);
    this.stages = byStage.keySet().stream().mapToDouble(s -> s).toArray();
    this.heightsCm = byStage.values().stream().mapToDouble(h -> h).toArray();
  }

  /** Height in cm at a running stage. */
  double cm(double stage) {
    if (stage < up) {
      return 0;
    }
    int above = 0;
    while (above < stages.length && stages[above] <= stage) {
      above++;
    }
    double x0 = stages[above - 1];
    double h0 = heightsCm[above - 1];
    if (above == stages.length) {
      return h0;
    }
    return h0 + (heightsCm[above] - h0) * (stage - x0) / (stages[above] - x0);
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
