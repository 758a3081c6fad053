package org.swathbook.season.outcome;

import java.util.List;

/**
 * The passes of a season with their layers, year by year: what a rule on one pass may ask of the
 * others. Of a program all of them; of a tank on its day those made before it, and itself.
 */
public record WalkedPasses(List<PassOutcome> passes, List<Year> years) {

  public WalkedPasses {
    passes = List.copyOf(passes);
    years = List.copyOf(years);
  }

  /**
   * One weather year.
   *
   * @param passDays spray day of each pass, -1 when missed
   */
  public record Year(List<Integer> passDays, List<LayerSpan> layers) {
    public Year {
      passDays = List.copyOf(passDays);
      layers = List.copyOf(layers);
    }
  }
}
