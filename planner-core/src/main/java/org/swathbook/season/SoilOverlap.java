package org.swathbook.season;

import java.util.ArrayList;
import java.util.List;

/**
 * The same residual active (by cap group) put down twice counts once per cohort, by the larger
 * effect; of equals the first.
 */
final class SoilOverlap {

  /** Another dose of the same active: its pass and its place there. */
  private record Rival(int pass, int dose, boolean before) {}

  private final List<PreparedPass> passes;
  private final Rival[][][] rivals;

  SoilOverlap(List<PreparedPass> passes) {
    this.passes = passes;
    this.rivals = new Rival[passes.size()][][];
    for (int p = 0; p < passes.size(); p++) {
      int n = passes.get(p).soilDoses();
      rivals[p] = new Rival[n][];
      for (int j = 0; j < n; j++) {
        rivals[p][j] = rivalsOf(p, j);
      }
    }
  }

  private Rival[] rivalsOf(int pass, int dose) {
    String group = passes.get(pass).soilGroup(dose);
    List<Rival> out = new ArrayList<>(0);
    for (int q = 0; q < passes.size(); q++) {
      PreparedPass other = passes.get(q);
      for (int i = 0; i < other.soilDoses(); i++) {
        if ((q != pass || i != dose) && other.soilGroup(i).equals(group)) {
          out.add(new Rival(q, i, q < pass || q == pass && i < dose));
        }
      }
    }
    return out.toArray(Rival[]::new);
  }

  boolean alone(int pass, int dose) {
    return rivals[pass][dose].length == 0;
  }

  /** Whether another dose of the same active has the larger effect on this cohort. */
  boolean isBeaten(int pass, int dose, double effect, int year, int weed, int biotype, int cohort) {
    for (Rival r : rivals[pass][dose]) {
      PreparedPass other = passes.get(r.pass());
      if (!other.isMissed(year)) {
        double e =
            other.soil(year, r.dose(), weed).control(cohort)
                * other.keepsInSoil(r.dose(), weed, biotype);
        if (e > effect || e == effect && r.before()) {
          return true;
        }
      }
    }
    return false;
  }
}
