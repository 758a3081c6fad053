package org.swathbook.season;

import java.util.ArrayList;
import java.util.List;
import org.swathbook.season.outcome.LayerSpan;
import org.swathbook.season.outcome.SiteControl;
import org.swathbook.season.outcome.WeedOutcome;

/**
 * What a pass lays into the soil against one weed: its layer in each year, which no other pass
 * changes, and its effective sites.
 */
public final class PassLayers {
  private final List<List<LayerSpan>> byYear;
  private final int effectiveSites;

  private PassLayers(List<List<LayerSpan>> byYear, int effectiveSites) {
    this.byYear = byYear;
    this.effectiveSites = effectiveSites;
  }

  public static PassLayers of(Kernel kernel, PreparedPass pass, int weed) {
    LayerFinder finder = new LayerFinder(kernel, List.of(pass));
    List<List<LayerSpan>> byYear = new ArrayList<>();
    for (int y = 0; y < kernel.traces().years().size(); y++) {
      byYear.add(finder.layers(y, weed));
    }
    long sites = pass.soilSites(kernel, weed).stream().filter(SiteControl::effective).count();
    return new PassLayers(byYear, (int) sites);
  }

  public int effectiveSites() {
    return effectiveSites;
  }

  /** Whether there is a layer in some year. */
  public boolean inSomeYear() {
    return byYear.stream().anyMatch(l -> !l.isEmpty());
  }

  /** Number of years with a layer. */
  public int years() {
    return (int) byYear.stream().filter(l -> !l.isEmpty()).count();
  }

  /** How the layer of a later pass follows this one. */
  public WeedOutcome.LayerOverlap overlap(Kernel kernel, int weed, PassLayers next) {
    List<List<LayerSpan>> both = new ArrayList<>();
    for (int y = 0; y < byYear.size(); y++) {
      List<LayerSpan> spans = new ArrayList<>(byYear.get(y));
      next.byYear
          .get(y)
          .forEach(
              l -> spans.add(new LayerSpan(1, l.weed(), l.ingredients(), l.fromDay(), l.toDay())));
      both.add(spans);
    }
    return LayerFinder.overlap(kernel.traces(), weed, both, 0, 1);
  }
}
