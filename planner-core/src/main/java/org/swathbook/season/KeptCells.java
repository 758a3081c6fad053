package org.swathbook.season;

import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;
import org.swathbook.catalog.Site;
import org.swathbook.growth.Kept;

/**
 * What some passes have left of a weed in every year, by what each of them did to it: programs that
 * begin alike, or differ in what does nothing to the weed, have it in common. Leaves and soil are
 * kept apart, since each changes less often than both. Several threads may use it: what two of them
 * find at once is the same.
 */
final class KeptCells {
  /** So many bytes, about, of each of the two kinds: default, ours. */
  private static final long BYTES = 24L << 20;

  /** Of a cohort after leaves and after soil: doubles and a mark; of a year with all its arrays. */
  private static final int BYTES_A_COHORT_ON_LEAVES = 33;

  private static final int BYTES_A_COHORT_IN_SOIL = 8;
  private static final int BYTES_A_YEAR = 200;

  /** After some passes, by year, biotype and whether a layer held when the crop came up. */
  static final class Leaves {
    final @Nullable LeafState[] states;

    Leaves(int states) {
      this.states = new LeafState[states];
    }
  }

  /** A final field, so that another thread sees what is in it. */
  static final class Lives {
    final double[] share;

    Lives(double[] share) {
      this.share = share;
    }
  }

  /** After some passes: what lives, by year and biotype, and of plants that come up with the crop. */
  static final class InSoil {
    final @Nullable Lives[] lives;
    final byte[] layer;

    InSoil(int years, int biotypes) {
      this.lives = new Lives[years * biotypes];
      this.layer = new byte[years];
    }
  }

  /** One pass more. */
  private record Longer(Object before, Object step) {
    @Override
    public boolean equals(@Nullable Object other) {
      return other instanceof Longer o && before == o.before && step == o.step;
    }

    @Override
    public int hashCode() {
      return 31 * System.identityHashCode(before) + System.identityHashCode(step);
    }
  }

  private final int[] biotypes;
  private final int years;
  private final Leaves[] noLeaves;
  private final InSoil[] noSoil;
  private final Map<LeafStep, LeafStep> leafSteps = new ConcurrentHashMap<>();
  private final Map<SoilStep, SoilStep> soilSteps = new ConcurrentHashMap<>();
  private final Kept<Longer, Leaves> leaves;
  private final Kept<Longer, InSoil> soil;

  /**
   * @param biotypes of each weed
   * @param cohorts of all biotypes of all weeds in all years
   */
  KeptCells(int[] biotypes, int years, int cohorts) {
    this.biotypes = biotypes;
    this.years = years;
    this.noLeaves = new Leaves[biotypes.length];
    this.noSoil = new InSoil[biotypes.length];
    for (int w = 0; w < biotypes.length; w++) {
      noLeaves[w] = leaves(w);
      noSoil[w] = new InSoil(years, biotypes[w]);
    }
    long ofWeed = cohorts / Math.max(1, biotypes.length);
    this.leaves = new Kept<>(most(BYTES_A_COHORT_ON_LEAVES * ofWeed));
    this.soil = new Kept<>(most(BYTES_A_COHORT_IN_SOIL * ofWeed));
  }

  private int most(long bytes) {
    return (int) Math.max(64, BYTES / (bytes + (long) BYTES_A_YEAR * years));
  }

  private Leaves leaves(int weed) {
    return new Leaves(2 * years * biotypes[weed]);
  }

  /** The one step of all that do the same. */
  @Nullable LeafStep same(@Nullable LeafStep step) {
    return step == null ? null : leafSteps.computeIfAbsent(step, s -> s);
  }

  @Nullable SoilStep same(@Nullable SoilStep step) {
    return step == null ? null : soilSteps.computeIfAbsent(step, s -> s);
  }

  /** Of a weed after no pass, then after each more; the same where a pass does nothing to it. */
  Leaves[] leaves(Kernel kernel, PreparedPass[] passes, int weed, Optional<Site> without) {
    Leaves[] out = new Leaves[passes.length + 1];
    out[0] = noLeaves[weed];
    for (int p = 0; p < passes.length; p++) {
      LeafStep step = passes[p].steps().leaf(kernel, passes[p], weed, without);
      out[p + 1] =
          step == null ? out[p] : leaves.get(new Longer(out[p], step), k -> leaves(weed));
    }
    return out;
  }

  InSoil[] soil(Kernel kernel, PreparedPass[] passes, int weed, Optional<Site> without) {
    InSoil[] out = new InSoil[passes.length + 1];
    out[0] = noSoil[weed];
    for (int p = 0; p < passes.length; p++) {
      SoilStep step = passes[p].steps().soil(kernel, passes[p], weed, without);
      out[p + 1] =
          step == null
              ? out[p]
              : soil.get(new Longer(out[p], step), k -> new InSoil(years, biotypes[weed]));
    }
    return out;
  }
}
