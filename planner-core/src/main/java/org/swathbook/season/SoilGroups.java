package org.swathbook.season;

import java.util.ArrayList;
import java.util.List;

/** Sites of action whose residual actives a list of passes puts down more than once. */
final class SoilGroups {
  private final List<String> repeated = new ArrayList<>();
  private final int[][] group;
  private final int[][] passOf;
  private final int[][] doseOf;

  SoilGroups(List<PreparedPass> passes) {
    List<String> seen = new ArrayList<>();
    for (PreparedPass pass : passes) {
      for (int j = 0; j < pass.soilDoses(); j++) {
        String g = pass.soilGroup(j);
        if (seen.contains(g) && !repeated.contains(g)) {
          repeated.add(g);
        }
        seen.add(g);
      }
    }
    passOf = new int[repeated.size()][];
    doseOf = new int[repeated.size()][];
    group = new int[passes.size()][];
    int[] size = new int[repeated.size()];
    for (int g = 0; g < passOf.length; g++) {
      passOf[g] = new int[seen.size()];
      doseOf[g] = new int[seen.size()];
    }
    for (int p = 0; p < group.length; p++) {
      group[p] = new int[passes.get(p).soilDoses()];
      for (int j = 0; j < group[p].length; j++) {
        int g = repeated.indexOf(passes.get(p).soilGroup(j));
        group[p][j] = g;
        if (g >= 0) {
          passOf[g][size[g]] = p;
          doseOf[g][size[g]++] = j;
        }
      }
    }
    for (int g = 0; g < passOf.length; g++) {
      passOf[g] = java.util.Arrays.copyOf(passOf[g], size[g]);
    }
  }

  /** Number of sites put down more than once. */
  int count() {
    return repeated.size();
  }

  /** Place of a dose's site among them, -1 for one that is put down once. */
  int of(int pass, int dose) {
    return group[pass][dose];
  }

  /** Number of doses of such a site, in all passes. */
  int size(int group) {
    return passOf[group].length;
  }

  int pass(int group, int i) {
    return passOf[group][i];
  }

  /** Place of the dose in its pass. */
  int dose(int group, int i) {
    return doseOf[group][i];
  }
}
