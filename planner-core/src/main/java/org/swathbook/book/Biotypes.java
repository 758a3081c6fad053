package org.swathbook.book;

import java.util.ArrayList;
import java.util.List;

/** Splits a weed's plants into biotypes by what they resist. Shares are 0 to 1. */
public final class Biotypes {

  /** Shares that add up to more than 1 by less than this are rounding. */
  private static final double ROUNDING = 1e-9;

  private Biotypes() {}

  /**
   * Resistances that occur independently of each other: a biotype for every combination of at least
   * one of them. 60 % resist A and 20 % B: 12 % both, 48 % only A, 8 % only B. The first listed
   * resistance is given up last; combinations without plants are left out.
   */
  public static List<Biotype> independent(List<Resistance> resistances) {
    List<Biotype> out = new ArrayList<>();
    for (int all = (1 << resistances.size()) - 1, i = all; i > 0; i--) {
      // Bits run against the list so that the first resistance is the last to be given up.
      double share = 1;
      List<Resistance> has = new ArrayList<>();
      for (int j = 0; j < resistances.size(); j++) {
        Resistance r = resistances.get(j);
        boolean in = (i & (1 << (resistances.size() - 1 - j))) != 0;
        share *= in ? r.share() : 1 - r.share();
        if (in) {
          has.add(r);
        }
      }
      if (share > 0) {
        out.add(new Biotype(share, has));
      }
    }
    return out;
  }

  /** Resistances that the same plants have: one biotype. */
  public static List<Biotype> together(double share, List<Resistance> resistances) {
    return share > 0 ? List.of(new Biotype(share, resistances)) : List.of();
  }

  /** Sum of the shares, 1 when it is above that by rounding only. */
  public static double sum(List<Biotype> biotypes) {
    double sum = 0;
    for (Biotype b : biotypes) {
      sum += b.share();
    }
    return sum > 1 && sum < 1 + ROUNDING ? 1 : sum;
  }

  /** The biotypes with the susceptible rest behind them; an error when they exceed the whole. */
  public static List<Biotype> withSusceptibleRest(List<Biotype> resistant) {
    double sum = sum(resistant);
    if (sum > 1) {
      throw new IllegalArgumentException("biotypes add up to more than all plants: " + sum);
    }
    List<Biotype> all = new ArrayList<>(resistant);
    if (1 - sum > ROUNDING) {
      all.add(new Biotype(1 - sum, List.of()));
    }
    return all;
  }
}
