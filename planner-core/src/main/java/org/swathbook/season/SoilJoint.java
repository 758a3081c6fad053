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
  private final List<PreparedPass> passes;
  private final double missed;
  private final int[][] place;
  private final boolean[][] off;
  private final double[][] strongest;

  /** Sites whose array holds what the cohorts at hand feel; the others do nothing to them. */
  private final boolean[] felt;

  private final double[] bySite;

  SoilJoint(List<PreparedPass> passes, int withoutSite, double missed) {
    this.passes = passes;
    this.missed = missed;
    this.place = new int[passes.size()][];
    this.off = new boolean[passes.size()][];
    int[] sites = new int[0];
    for (int p = 0; p < place.length; p++) {
      int doses = passes.get(p).soilDoses();
      place[p] = new int[doses];
      off[p] = new boolean[doses];
      for (int j = 0; j < doses; j++) {
        int site = passes.get(p).soilSite(j);
        int at = 0;
        while (at < sites.length && sites[at] != site) {
          at++;
        }
        if (at == sites.length) {
          sites = Arrays.copyOf(sites, at + 1);
          sites[at] = site;
        }
        place[p][j] = at;
        off[p][j] = site == withoutSite;
      }
    }
    this.strongest = new double[sites.length][0];
    this.felt = new boolean[sites.length];
    this.bySite = new double[sites.length];
  }

  /**
   * Fills in the share that lives of each cohort.
   *
   * @param upTo passes before this place in the list count
   * @param lastDay passes after it are too late to count
   */
  void compute(
      int year, int weed, int biotype, int cohorts, int upTo, int lastDay, double[] lives) {
    Arrays.fill(felt, false);
    for (int p = 0; p < upTo; p++) {
      PreparedPass pass = passes.get(p);
      if (pass.day(year) <= lastDay) {
        for (int j = 0; j < place[p].length; j++) {
          SoilEffect effect = pass.soil(year, j, weed);
          if (!off[p][j] && effect.from() < effect.to()) {
            int site = place[p][j];
            if (!felt[site]) {
              felt[site] = true;
              clear(site, cohorts);
            }
            effect.raise(strongest[site], pass.keepsInSoil(j, weed, biotype));
          }
        }
      }
    }
    Arrays.fill(lives, 0, cohorts, 1);
    for (int s = 0; s < felt.length; s++) {
      double[] bySite = strongest[s];
      for (int c = 0; felt[s] && c < cohorts; c++) {
        lives[c] *= 1 - bySite[c];
      }
    }
    for (int c = 0; c < cohorts; c++) {
      lives[c] = JointAction.withMisses(missed, lives[c]);
    }
  }

  private void clear(int site, int cohorts) {
    if (strongest[site].length < cohorts) {
      strongest[site] = new double[cohorts];
    } else {
      Arrays.fill(strongest[site], 0, cohorts, 0);
    }
  }

  /** Share that lives of plants of a biotype that would come up on the day the crop does. */
  double atCropEmergence(int year, int weed, int biotype) {
    Arrays.fill(bySite, 0);
    for (int p = 0; p < place.length; p++) {
      for (int j = 0; j < place[p].length; j++) {
        if (!off[p][j]) {
          PreparedPass pass = passes.get(p);
          double e =
              pass.keepsInSoil(j, weed, biotype) * pass.soil(year, j, weed).atCropEmergence();
          bySite[place[p][j]] = Math.max(bySite[place[p][j]], e);
        }
      }
    }
    return JointAction.withMisses(missed, JointAction.survival(bySite));
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
