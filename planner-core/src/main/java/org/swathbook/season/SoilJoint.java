package org.swathbook.season;

import java.util.Arrays;
import java.util.List;
import org.swathbook.control.JointAction;
import org.swathbook.control.SoilEffect;

/**
 * Share of each cohort of a biotype that lives through the soil actives of each pass. Holds its
 * scratch arrays; one belongs to one thread.
 */
final class SoilJoint {
  private final List<PreparedPass> passes;
  private final int withoutSite;
  private final double missed;
  private final SoilGroups groups;
  private final SoilAssignment assignment;
  private final double[][] lives;
  private final int[] from;
  private final int[] to;

  /** Cohorts for which a pass had to be chosen, and what each pass then leaves of them. */
  private int[] assigned = new int[0];

  private double[] assignedFactors = new double[0];
  private int assignedCount;

  SoilJoint(List<PreparedPass> passes, int withoutSite, double missed) {
    this.passes = passes;
    this.withoutSite = withoutSite;
    this.missed = missed;
    this.groups = new SoilGroups(passes);
    this.assignment = new SoilAssignment(passes.size(), groups.count(), missed);
    this.lives = new double[passes.size()][0];
    this.from = new int[passes.size()];
    this.to = new int[passes.size()];
  }

  /** First cohort that a pass touches. */
  int from(int pass) {
    return from[pass];
  }

  /** The cohort after the last that it touches. */
  int to(int pass) {
    return to[pass];
  }

  /** Of a cohort between {@link #from} and {@link #to}. */
  double lives(int pass, int cohort) {
    return lives[pass][cohort];
  }

  void compute(int year, int weed, int biotype, int cohorts) {
    for (int p = 0; p < passes.size(); p++) {
      reset(p, year, weed, cohorts);
      PreparedPass pass = passes.get(p);
      for (int j = 0; j < pass.soilDoses(); j++) {
        double keeps = keeps(p, j, weed, biotype);
        if (groups.of(p, j) < 0 && keeps > 0) {
          pass.soil(year, j, weed).reduce(lives[p], keeps);
        }
      }
    }
    if (groups.count() > 0) {
      repeated(year, weed, biotype, cohorts);
    }
    for (int p = 0; p < passes.size(); p++) {
      double[] l = lives[p];
      for (int c = from[p]; c < to[p]; c++) {
        l[c] = JointAction.withMisses(missed, l[c]);
      }
    }
    for (int a = 0; a < assignedCount; a++) {
      for (int p = 0; p < passes.size(); p++) {
        int c = assigned[a];
        if (c >= from[p] && c < to[p]) {
          lives[p][c] = assignedFactors[a * passes.size() + p];
        }
      }
    }
    assignedCount = 0;
  }

  private void reset(int p, int year, int weed, int cohorts) {
    PreparedPass pass = passes.get(p);
    from[p] = cohorts;
    to[p] = 0;
    for (int j = 0; j < pass.soilDoses(); j++) {
      SoilEffect e = pass.soil(year, j, weed);
      if (e.from() < e.to()) {
        from[p] = Math.min(from[p], e.from());
        to[p] = Math.max(to[p], e.to());
      }
    }
    if (from[p] < to[p]) {
      if (lives[p].length < to[p]) {
        lives[p] = new double[cohorts];
      }
      Arrays.fill(lives[p], from[p], to[p], 1);
    }
  }

  private double keeps(int p, int j, int weed, int biotype) {
    PreparedPass pass = passes.get(p);
    return pass.soilSite(j) == withoutSite ? 0 : pass.keepsInSoil(j, weed, biotype);
  }

  /** Sites put down more than once: a cohort that only one pass touches needs no choice. */
  private void repeated(int year, int weed, int biotype, int cohorts) {
    if (assigned.length < cohorts) {
      assigned = new int[cohorts];
      assignedFactors = new double[cohorts * passes.size()];
    }
    int first = cohorts;
    int last = 0;
    for (int g = 0; g < groups.count(); g++) {
      for (int i = 0; i < groups.size(g); i++) {
        SoilEffect e = passes.get(groups.pass(g, i)).soil(year, groups.dose(g, i), weed);
        first = Math.min(first, e.from());
        last = Math.max(last, e.to());
      }
    }
    for (int c = first; c < last; c++) {
      assignment.clear();
      addRepeated(year, weed, biotype, c);
      if (!assignment.hasChoice()) {
        for (int g = 0; g < groups.count(); g++) {
          if (assignment.isPutDown(g)) {
            lives[assignment.onlyPass(g)][c] *= assignment.onlyLives(g);
          }
        }
      } else {
        choose(c);
      }
    }
  }

  private void choose(int cohort) {
    for (int p = 0; p < passes.size(); p++) {
      if (cohort >= from[p] && cohort < to[p]) {
        assignment.add(p, -1, lives[p][cohort]);
      }
    }
    assignment.choose();
    for (int p = 0; p < passes.size(); p++) {
      assignedFactors[assignedCount * passes.size() + p] = assignment.factor(p);
    }
    assigned[assignedCount++] = cohort;
  }

  private void addRepeated(int year, int weed, int biotype, int cohort) {
    for (int g = 0; g < groups.count(); g++) {
      for (int i = 0; i < groups.size(g); i++) {
        int p = groups.pass(g, i);
        int j = groups.dose(g, i);
        double e = passes.get(p).soil(year, j, weed).control(cohort);
        if (e > 0) {
          assignment.add(p, g, 1 - keeps(p, j, weed, biotype) * e);
        }
      }
    }
  }

  /** Share that lives of plants of a biotype that would come up on the day the crop does. */
  double atCropEmergence(int year, int weed, int biotype) {
    assignment.clear();
    for (int p = 0; p < passes.size(); p++) {
      for (int j = 0; j < passes.get(p).soilDoses(); j++) {
        if (groups.of(p, j) < 0) {
          double e = passes.get(p).soil(year, j, weed).control(SoilEffect.AT_CROP_EMERGENCE);
          assignment.add(p, -1, 1 - keeps(p, j, weed, biotype) * e);
        }
      }
    }
    addRepeated(year, weed, biotype, SoilEffect.AT_CROP_EMERGENCE);
    return assignment.best();
  }
}
