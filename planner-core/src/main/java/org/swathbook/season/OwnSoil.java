package org.swathbook.season;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.IngredientId;
import org.swathbook.control.MixEffect;
import org.swathbook.control.TankActive;
import org.swathbook.growth.TraceSet;
import org.swathbook.season.outcome.LayerSpan;
import org.swathbook.season.outcome.SiteControl;

/**
 * What one pass does in the soil by itself, weed by weed, each found when first asked for: no other
 * pass changes it, and passes of the same soil doses on the same days share it. Two threads may
 * both find it, to the same days.
 */
final class OwnSoil {
  private final @Nullable PassLayers[] layers;

  /** By weed: what each of its sites does. */
  private final @Nullable List<SiteControl>[] sites;

  /** All that it rests on: soil doses in their order, and the day in every year. */
  record Key(List<Dose> doses, List<Integer> days) {

    private record Dose(IngredientId active, long rate) {}

    static Key of(MixEffect effect, int[] soilActive, int[] day) {
      List<Dose> doses = new ArrayList<>(soilActive.length);
      for (int a : soilActive) {
        TankActive active = effect.actives().get(a);
        doses.add(new Dose(active.ingredient().id(), Double.doubleToLongBits(active.kgPerHa())));
      }
      return new Key(List.copyOf(doses), Arrays.stream(day).boxed().toList());
    }
  }

  OwnSoil(int weeds) {
    layers = new PassLayers[weeds];
    sites = SiteCounts.none(weeds);
  }

  PassLayers layers(Kernel kernel, PreparedPass pass, int weed) {
    PassLayers found = layers[weed];
    if (found == null) {
      long effective = sites(kernel, pass, weed).stream().filter(SiteControl::effective).count();
      found = new PassLayers(find(kernel, pass, weed), (int) effective);
      layers[weed] = found;
    }
    return found;
  }

  List<SiteControl> sites(Kernel kernel, PreparedPass pass, int weed) {
    List<SiteControl> found = sites[weed];
    if (found == null) {
      found = List.copyOf(new SiteCounts(kernel).soil(pass, weed));
      sites[weed] = found;
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
    return out;
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
