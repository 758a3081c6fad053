package org.swathbook.season;

import java.util.ArrayList;
import java.util.List;

/** Sites of action whose residual actives a list of passes puts down more than once. */
final class SoilGroups {
  private final List<String> repeated = new ArrayList<>();
  private final int[][] group;

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
    group = new int[passes.size()][];
    for (int p = 0; p < group.length; p++) {
      group[p] = new int[passes.get(p).soilDoses()];
      for (int j = 0; j < group[p].length; j++) {
        group[p][j] = repeated.indexOf(passes.get(p).soilGroup(j));
      }
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
}
