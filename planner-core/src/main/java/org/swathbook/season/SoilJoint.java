package org.swathbook.season;

import java.util.Arrays;
import java.util.List;
import org.swathbook.control.JointAction;
import org.swathbook.control.SoilEffect;
import org.swathbook.model.ModelCard;
import org.swathbook.model.ModelSection;

/**
 * Share of each cohort of a biotype that lives through all that is in the soil.
 *
 * <p>Actives of one site of action hit one target, so of them only the largest effect counts, put
 * down in one tank or in two (default, ours: the dose of both added up lies between); Colby's
 * product of independent actions runs over sites. Plants that a residual misses – under residue,
 * between clods – are missed by the next one too, so the season has one share of misses and not one
 * a pass. So more of an active, or one more pass, can never control less.
 *
 * <p>Holds its scratch arrays; one belongs to one thread.
 */
final class SoilJoint {
  private final PreparedPass[] passes;
  private final double missed;

  /** Of each site, in the order in which they first come, the passes that bring its doses. */
  private final int[][] passOf;

  /** And the place of each of these doses in its tank. */
  private final int[][] doseOf;

  private double[] strongest = new double[0];

  SoilJoint(PreparedPass[] passes, int withoutSite, double missed) {
    this.passes = passes;
    this.missed = missed;
    int all = 0;
    for (PreparedPass pass : passes) {
      all += pass.soilDoses();
    }
    int[] sites = new int[all];
    int[] many = new int[all];
    int[][] byPass = new int[all][];
    int[][] byDose = new int[all][];
    int found = 0;
    for (int p = 0; p < passes.length; p++) {
      PreparedPass pass = passes[p];
      for (int j = 0; j < pass.soilDoses(); j++) {
        int site = pass.soilSite(j);
        if (site == withoutSite) {
          continue;
        }
        int at = 0;
        while (at < found && sites[at] != site) {
          at++;
        }
        if (at == found) {
          sites[at] = site;
          byPass[at] = new int[all];
          byDose[at] = new int[all];
          found++;
        }
        byPass[at][many[at]] = p;
        byDose[at][many[at]] = j;
        many[at]++;
      }
    }
    this.passOf = new int[found][];
    this.doseOf = new int[found][];
    for (int s = 0; s < found; s++) {
      passOf[s] = Arrays.copyOf(byPass[s], many[s]);
      doseOf[s] = Arrays.copyOf(byDose[s], many[s]);
    }
  }

  /**
   * Fills in the share that lives of each cohort.
   *
   * @param upTo passes before this place in the list count
   * @param lastDay passes after it are too late to count
   */
  void compute(
      int year, int weed, int biotype, int cohorts, int upTo, int lastDay, double[] lives) {
    Arrays.fill(lives, 0, cohorts, 1);
    int first = cohorts;
    int end = 0;
    for (int s = 0; s < passOf.length; s++) {
      SoilEffect alone = null;
      double keepsAlone = 0;
      int from = cohorts;
      int to = 0;
      boolean several = false;
      for (int i = 0; i < passOf[s].length && passOf[s][i] < upTo; i++) {
        PreparedPass pass = passes[passOf[s][i]];
        if (pass.day(year) > lastDay) {
          continue;
        }
        SoilEffect effect = pass.soil(year, doseOf[s][i], weed);
        if (effect.from() >= effect.to()) {
          continue;
        }
        double keeps = pass.keepsInSoil(doseOf[s][i], weed, biotype);
        from = Math.min(from, effect.from());
        to = Math.max(to, effect.to());
        if (alone == null) {
          alone = effect;
          keepsAlone = keeps;
          continue;
        }
        if (!several) {
          several = true;
          clear(cohorts);
          alone.raise(strongest, keepsAlone);
        }
        effect.raise(strongest, keeps);
      }
      if (several) {
        for (int c = from; c < to; c++) {
          lives[c] *= 1 - strongest[c];
        }
      } else if (alone != null) {
        alone.leave(lives, keepsAlone);
      }
      first = Math.min(first, from);
      end = Math.max(end, to);
    }
    // Cohorts that nothing touches live, whatever is missed.
    for (int c = first; c < end; c++) {
      lives[c] = JointAction.withMisses(missed, lives[c]);
    }
  }

  /** Whether a biotype, not the first, feels all that is in the soil as the one before it does. */
  boolean isFeltAsBefore(int weed, int biotype) {
    for (PreparedPass pass : passes) {
      if (!pass.soilIsFeltAsBefore(weed, biotype)) {
        return false;
      }
    }
    return true;
  }

  private void clear(int cohorts) {
    if (strongest.length < cohorts) {
      strongest = new double[cohorts];
    } else {
      Arrays.fill(strongest, 0, cohorts, 0);
    }
  }

  /** Share that lives of plants of a biotype that would come up on the day the crop does. */
  double atCropEmergence(int year, int weed, int biotype) {
    double survival = 1;
    for (int s = 0; s < passOf.length; s++) {
      double most = 0;
      for (int i = 0; i < passOf[s].length; i++) {
        PreparedPass pass = passes[passOf[s][i]];
        int j = doseOf[s][i];
        double there = pass.soil(year, j, weed).atCropEmergence();
        if (there > 0) {
          most = Math.max(most, pass.keepsInSoil(j, weed, biotype) * there);
        }
      }
      survival *= 1 - most;
    }
    return JointAction.withMisses(missed, survival);
  }

  /** What the reference prints. */
  static List<ModelCard> cards() {
    return List.of(
        ModelCard.of(
            ModelSection.SOIL,
            SoilJoint.class,
            "one site twice",
            "counts once per cohort, by its largest effect, in one tank or over passes",
            "default: actives of one site hit one target; their doses added up lie between"));
  }
}
