package org.swathbook.season;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.swathbook.season.outcome.LayerSpan;
import org.swathbook.season.outcome.WeedOutcome;

/**
 * What a pass lays into the soil against one weed: its layer in each year, which no other pass
 * changes, and its effective sites.
 */
public final class PassLayers {
  private final List<Optional<LayerSpan>> byYear;
  private final int effectiveSites;
  private final int years;

  PassLayers(List<Optional<LayerSpan>> byYear, int effectiveSites) {
    this.byYear = List.copyOf(byYear);
    this.effectiveSites = effectiveSites;
    this.years = (int) byYear.stream().filter(Optional::isPresent).count();
  }

  public int effectiveSites() {
    return effectiveSites;
  }

  /** Whether there is a layer in some year. */
  public boolean inSomeYear() {
    return years > 0;
  }

  /** Number of years with a layer. */
  public int years() {
    return years;
  }

  /** The layer in a year, as of the first pass of a program. */
  Optional<LayerSpan> in(int year) {
    return byYear.get(year);
  }

  /** How the layer of a later pass follows this one. */
  public WeedOutcome.LayerOverlap overlap(Kernel kernel, int weed, PassLayers next) {
    List<List<LayerSpan>> both = new ArrayList<>();
    for (int y = 0; y < byYear.size(); y++) {
      List<LayerSpan> spans = new ArrayList<>();
      byYear.get(y).ifPresent(spans::add);
      next.in(y).ifPresent(l -> spans.add(ofPass(1, l)));
      both.add(spans);
    }
    return LayerFinder.overlap(kernel.traces(), weed, both, 0, 1);
  }

  /** The same layer as that of a pass at another place of a program. */
  static LayerSpan ofPass(int pass, LayerSpan l) {
    return new LayerSpan(pass, l.weed(), l.ingredients(), l.fromDay(), l.toDay());
  }
}
