package org.swathbook.season;

import java.util.Arrays;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.swathbook.catalog.Site;
import org.swathbook.control.SoilEffect;

/**
 * What a pass puts into the soil against one weed in every year, dose by dose with its site: equal
 * for passes that hold the same plants. Doses that do nothing to the weed stand in it by their
 * site, since sites multiply in the order in which they first come.
 */
final class SoilStep {
  private final int weed;
  private final int[] sites;

  /** By dose and year. */
  private final SoilEffect[] effects;

  /** By dose and biotype. */
  private final double[] keeps;

  private final int hash;

  private SoilStep(int weed, int[] sites, SoilEffect[] effects, double[] keeps) {
    this.weed = weed;
    this.sites = sites;
    this.effects = effects;
    this.keeps = keeps;
    int h = 31 * (31 * weed + Arrays.hashCode(sites)) + Arrays.hashCode(keeps);
    for (SoilEffect e : effects) {
      h = 31 * h + System.identityHashCode(e);
    }
    this.hash = h;
  }

  /** Null when it puts down nothing that works in the soil. */
  static @Nullable SoilStep of(Kernel kernel, PreparedPass pass, int weed, Optional<Site> without) {
    int off = without.map(Site::number).orElse(-1);
    int many = 0;
    for (int j = 0; j < pass.soilDoses(); j++) {
      many += pass.soilSite(j) == off ? 0 : 1;
    }
    if (many == 0) {
      return null;
    }
    int years = kernel.traces().years().size();
    int biotypes = kernel.traces().weeds().get(weed).biotypes().size();
    int[] sites = new int[many];
    SoilEffect[] effects = new SoilEffect[many * years];
    double[] keeps = new double[many * biotypes];
    int at = 0;
    for (int j = 0; j < pass.soilDoses(); j++) {
      if (pass.soilSite(j) == off) {
        continue;
      }
      sites[at] = pass.soilSite(j);
      boolean works = false;
      for (int y = 0; y < years; y++) {
        SoilEffect e = pass.soil(y, j, weed);
        effects[at * years + y] = e.isIdle() ? SoilEffect.NONE : e;
        works |= !e.isIdle();
      }
      for (int b = 0; b < biotypes && works; b++) {
        keeps[at * biotypes + b] = pass.keepsInSoil(j, weed, b);
      }
      at++;
    }
    return new SoilStep(weed, sites, effects, keeps);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    if (!(other instanceof SoilStep o)
        || hash != o.hash
        || weed != o.weed
        || !Arrays.equals(sites, o.sites)
        || !Arrays.equals(keeps, o.keeps)
        || effects.length != o.effects.length) {
      return false;
    }
    for (int i = 0; i < effects.length; i++) {
      // Effects are kept by dose and day: those of the same plants are mostly the very same.
      if (effects[i] != o.effects[i]) {
        return false;
      }
    }
    return true;
  }

  @Override
  public int hashCode() {
    return hash;
  }
}
