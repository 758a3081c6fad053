package org.swathbook.catalog.file;

import java.util.List;
import java.util.Map;
import org.swathbook.source.MapNode;
import org.swathbook.source.MapReader;

/** Checks that what stands by stage does not fall from one stage to a later one. */
final class Rising {
  private Rising() {}

  /**
   * A problem at the first value that lies below that of an earlier stage.
   *
   * @param written the map as it stands in the file
   * @param values its values by the crop's own names of stages
   * @param stages in the order in which they are reached
   */
  static void check(MapReader written, Map<String, Double> values, List<String> stages) {
    String last = "";
    double highest = 0;
    for (String stage : stages) {
      double value = values.getOrDefault(stage, highest);
      if (value < highest) {
        problem(written, stage, last);
        return;
      }
      last = values.containsKey(stage) ? stage : last;
      highest = value;
    }
  }

  private static void problem(MapReader written, String stage, String last) {
    written.node().entries().stream()
        .filter(e -> e.key().equalsIgnoreCase(stage))
        .findFirst()
        .map(MapNode.Entry::value)
        .ifPresent(
            v ->
                written
                    .problems()
                    .add(
                        v.mark(),
                        "the value at " + stage + " lies below that at " + last,
                        "check which of the two is wrong"));
  }
}
