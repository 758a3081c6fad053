package org.swathbook.catalog;

import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * A crop: its stages in order, heights by stage, canopy and the critical time of weed removal.
 *
 * @param stages in the order they are reached; the emergence stage is among them
 * @param leafStages the vegetative stages that serve as the clock of competition, in order
 * @param heightsCm height by stage name
 * @param bbch code of the international BBCH scale by stage name
 * @param removalBareByRowCm stage by which weeds must be gone without a residual, by row spacing
 *     (cm); one entry, whatever its spacing, when it does not differ; none when not stated
 * @param removalAfterResidualByRowCm the same after a residual
 * @param sources by path, {@code stages}, {@code stages.at.V3}, {@code heights.V5}, {@code canopy},
 *     {@code criticalRemoval}, {@code leafStages}
 */
public record Crop(
    CropId id,
    String name,
    List<String> aliases,
    ThermalClock clock,
    List<CropStage> stages,
    String emergenceStage,
    List<String> leafStages,
    Map<String, Integer> bbch,
    Map<String, Double> heightsCm,
    Canopy canopy,
    SortedMap<Double, String> removalBareByRowCm,
    SortedMap<Double, String> removalAfterResidualByRowCm,
    Map<String, Source> sources,
    LocalDate reviewed) {

  public Crop {
    aliases = List.copyOf(aliases);
    stages = List.copyOf(stages);
    leafStages = List.copyOf(leafStages);
    bbch = Ordered.map(bbch);
    heightsCm = Ordered.map(heightsCm);
    removalBareByRowCm = Collections.unmodifiableSortedMap(new TreeMap<>(removalBareByRowCm));
    removalAfterResidualByRowCm =
        Collections.unmodifiableSortedMap(new TreeMap<>(removalAfterResidualByRowCm));
    sources = Ordered.map(sources);
  }

  /**
   * Place of a stage in the order, empty for a name that the crop does not have. Case counts for
   * nothing; {@code emergence} is the emergence stage whatever the crop calls it.
   */
  public OptionalInt findStage(String stage) {
    if (stage.equalsIgnoreCase(TimePoint.EMERGENCE) && !emergenceStage.equalsIgnoreCase(stage)) {
      return findStage(emergenceStage);
    }
    for (int i = 0; i < stages.size(); i++) {
      if (stages.get(i).name().equalsIgnoreCase(stage)) {
        return OptionalInt.of(i);
      }
    }
    return OptionalInt.empty();
  }
}
