package org.swathbook.season;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.IngredientId;
import org.swathbook.growth.TraceSet;
import org.swathbook.season.outcome.LayerSpan;

/**
 * The layers that one pass lays by itself, each weed found when first asked for: no other pass
 * changes them. Two threads may both find them, to the same days.
 */
final class OwnLayers {

  private final @Nullable List<Optional<LayerSpan>>[] byWeed;

  @SuppressWarnings({"unchecked", "rawtypes"}) // there are no arrays of generic lists
  OwnLayers(int weeds) {
    byWeed = (List<Optional<LayerSpan>>[]) new List[weeds];
  }

  /** By year, as of the first pass of a program. */
  List<Optional<LayerSpan>> of(Kernel kernel, PreparedPass pass, int weed) {
    List<Optional<LayerSpan>> found = byWeed[weed];
    if (found == null) {
      found = find(kernel, pass, weed);
      byWeed[weed] = found;
    }
    return found;
  }

  private static List<Optional<LayerSpan>> find(Kernel kernel, PreparedPass pass, int weed) {
    TraceSet traces = kernel.traces();
    WeedPressure pressure = traces.weeds().get(weed);
    List<Optional<LayerSpan>> out = new ArrayList<>();
    for (int y = 0; y < traces.years().size(); y++) {
      SoilDays soil = new SoilDays(List.of(pass), y, weed, pressure, kernel.house());
      out.add(
          layer(
              soil,
              pass.day(y),
              traces.years().get(y).days(),
              kernel.house().layerThreshold(),
              pressure));
    }
    return List.copyOf(out);
  }

  /**
   * It starts when those of its actives whose rain has come hold the threshold together: they are
   * the ones relied on. It ends on the last day on which all together still do.
   */
  private static Optional<LayerSpan> layer(
      SoilDays soil, int sprayed, int days, double threshold, WeedPressure pressure) {
    List<IngredientId> actives = soil.layerOf(0);
    if (actives.isEmpty()) {
      return Optional.empty();
    }
    int start = sprayed + 1;
    while (start < days && soil.layerControl(0, start, true) < threshold) {
      start++;
    }
    int end = start;
    while (end + 1 < days && soil.layerControl(0, end + 1, false) >= threshold) {
      end++;
    }
    return start < days && end - start + 1 >= LayerFinder.LEAST_DAYS
        ? Optional.of(new LayerSpan(0, pressure.weed().id(), actives, start, end))
        : Optional.empty();
  }
}
