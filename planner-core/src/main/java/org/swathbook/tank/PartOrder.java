package org.swathbook.tank;

import java.util.ArrayList;
import java.util.List;

/**
 * One order out of guides that disagree: each pair of kinds goes as more of the guides have it, the
 * clearest majorities first, and a pair that would close a circle with those is left out (ranked
 * pairs: Tideman 1987, Independence of clones as a criterion for voting rules).
 */
final class PartOrder {
  private static final TankPart[] KINDS = TankPart.values();
  private static final List<TankPart> IN_ORDER = inOrder(MixingGuide.ALL);

  private PartOrder() {}

  /** The place of a kind, from 0. */
  static int place(TankPart part) {
    return IN_ORDER.indexOf(part);
  }

  /** All kinds as these guides have them; where they leave it open, in the order of the kinds. */
  static List<TankPart> inOrder(List<MixingGuide> guides) {
    int[][] majority = majorities(guides);
    boolean[][] before = new boolean[KINDS.length][KINDS.length];
    for (int clear = guides.size(); clear > 0; clear--) {
      for (int one = 0; one < KINDS.length; one++) {
        for (int other = 0; other < KINDS.length; other++) {
          // Else clearer majorities already have it the other way round.
          if (majority[one][other] == clear && !before[other][one]) {
            lock(before, one, other);
          }
        }
      }
    }
    return ordered(before);
  }

  /** By how many guides more a kind goes before another. */
  private static int[][] majorities(List<MixingGuide> guides) {
    int[][] out = new int[KINDS.length][KINDS.length];
    for (MixingGuide guide : guides) {
      for (int one = 0; one < KINDS.length; one++) {
        for (int other = 0; other < KINDS.length; other++) {
          if (guide.puts(KINDS[one], KINDS[other])) {
            out[one][other]++;
            out[other][one]--;
          }
        }
      }
    }
    return out;
  }

  /** One before the other, and with it all that goes before the one before all after the other. */
  private static void lock(boolean[][] before, int one, int other) {
    for (int a = 0; a < KINDS.length; a++) {
      for (int b = 0; b < KINDS.length; b++) {
        before[a][b] |= (a == one || before[a][one]) && (b == other || before[other][b]);
      }
    }
  }

  /** Always the first kind before which none is left. */
  private static List<TankPart> ordered(boolean[][] before) {
    List<TankPart> out = new ArrayList<>();
    while (out.size() < KINDS.length) {
      for (int next = 0; next < KINDS.length; next++) {
        if (!out.contains(KINDS[next]) && isNext(next, before, out)) {
          out.add(KINDS[next]);
          break;
        }
      }
    }
    return List.copyOf(out);
  }

  private static boolean isNext(int kind, boolean[][] before, List<TankPart> out) {
    for (int other = 0; other < KINDS.length; other++) {
      if (before[other][kind] && !out.contains(KINDS[other])) {
        return false;
      }
    }
    return true;
  }
}
