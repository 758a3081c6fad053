package org.swathbook.season;

import java.util.Arrays;
import org.swathbook.control.JointAction;

/**
 * Joint soil survival of one cohort over all passes, when residual actives of the same site of
 * action were put down more than once, in one tank or in two: the site counts once, by its largest
 * effect in the pass where that leaves the fewest plants. Two actives of one site hit one target,
 * so Colby's product of independent actions would promise too much; default, ours: the dose of both
 * added up lies between.
 *
 * <p>Where the passes share the plants that they miss differently, that is not always the pass of
 * the larger effect; counting by the larger effect alone would let a little more of an active
 * control a little less.
 */
final class SoilAssignment {

  private static final class Choice {
    int[] passes = new int[4];
    double[] lives = new double[4];
    int size;
    int at;

    void add(int pass, double share) {
      for (int i = 0; i < size; i++) {
        if (passes[i] == pass) {
          lives[i] = Math.min(lives[i], share);
          return;
        }
      }
      if (size == passes.length) {
        passes = Arrays.copyOf(passes, 2 * size);
        lives = Arrays.copyOf(lives, 2 * size);
      }
      passes[size] = pass;
      lives[size] = share;
      size++;
    }
  }

  private final double missed;
  private final double[] base;
  private final double[] tried;
  private final double[] factor;
  private final Choice[] choices;

  SoilAssignment(int passes, int groups, double missed) {
    this.missed = missed;
    this.base = new double[passes];
    this.tried = new double[passes];
    this.factor = new double[passes];
    this.choices = new Choice[groups];
    for (int g = 0; g < groups; g++) {
      choices[g] = new Choice();
    }
  }

  /** Starts a cohort: nothing put down by any pass. */
  void clear() {
    Arrays.fill(base, 1);
    for (Choice c : choices) {
      c.size = 0;
    }
  }

  /** An active that is put down once, or is no part of any group (group below 0). */
  void add(int pass, int group, double lives) {
    if (lives < 1) {
      if (group < 0) {
        base[pass] *= lives;
      } else {
        choices[group].add(pass, lives);
      }
    }
  }

  /** Whether any site was put down by more than one pass. */
  boolean hasChoice() {
    for (Choice c : choices) {
      if (c.size > 1) {
        return true;
      }
    }
    return false;
  }

  boolean isPutDown(int group) {
    return choices[group].size > 0;
  }

  /** The pass of a site that only one pass puts down. */
  int onlyPass(int group) {
    return choices[group].passes[0];
  }

  double onlyLives(int group) {
    return choices[group].lives[0];
  }

  /** Least share that lives, of all ways to count each repeated site once. */
  double best() {
    for (Choice c : choices) {
      c.at = 0;
    }
    double best = Double.POSITIVE_INFINITY;
    do {
      double total = tryThis();
      if (total < best) {
        best = total;
        System.arraycopy(tried, 0, factor, 0, factor.length);
      }
    } while (next());
    return best;
  }

  /** Finds the best way and keeps what each pass then leaves; see {@link #factor}. */
  void choose() {
    Choice open = null;
    int several = 0;
    for (Choice c : choices) {
      if (c.size > 1) {
        open = c;
        several++;
      }
    }
    if (open == null || several > 1) {
      best();
      return;
    }
    for (Choice c : choices) {
      if (c.size == 1) {
        base[c.passes[0]] *= c.lives[0];
      }
    }
    // One site in several passes: only the factors of two passes differ between two ways.
    int at = 0;
    for (int i = 1; i < open.size; i++) {
      int p = open.passes[at];
      int q = open.passes[i];
      double inP = with(p, open.lives[at]) * with(q, 1);
      double inQ = with(p, 1) * with(q, open.lives[i]);
      at = inQ < inP ? i : at;
    }
    base[open.passes[at]] *= open.lives[at];
    for (int p = 0; p < base.length; p++) {
      factor[p] = with(p, 1);
    }
  }

  private double with(int pass, double lives) {
    return JointAction.withMisses(missed, base[pass] * lives);
  }

  private double tryThis() {
    System.arraycopy(base, 0, tried, 0, base.length);
    for (Choice c : choices) {
      if (c.size > 0) {
        tried[c.passes[c.at]] *= c.lives[c.at];
      }
    }
    double total = 1;
    for (int p = 0; p < tried.length; p++) {
      tried[p] = JointAction.withMisses(missed, tried[p]);
      total *= tried[p];
    }
    return total;
  }

  private boolean next() {
    for (Choice c : choices) {
      if (c.at + 1 < c.size) {
        c.at++;
        return true;
      }
      c.at = 0;
    }
    return false;
  }

  /** Share that lives through one pass in the best way. */
  double factor(int pass) {
    return factor[pass];
  }
}
