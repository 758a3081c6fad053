package org.swathbook.plan.bound;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.swathbook.catalog.IngredientId;
import org.swathbook.catalog.Site;
import org.swathbook.season.Reach;

/**
 * Programs sprayed in parts: shares that add up to at most 1, the rest is a field without a pass.
 */
final class Blend {
  static final Blend NOTHING = new Blend(List.of());

  private final List<Share> shares;

  /**
   * @param tanks a program, by day
   */
  record Share(List<Tank> tanks, double share) {}

  private Blend(List<Share> shares) {
    this.shares = shares;
  }

  /** A program as it stands. */
  static Blend of(List<Tank> program) {
    return new Blend(List.of(new Share(program, 1)));
  }

  /** The way to a program, gone in part. */
  Blend towards(List<Tank> program, double part) {
    List<Share> out = new ArrayList<>();
    for (Share s : shares) {
      if (s.share * (1 - part) > 0) {
        out.add(new Share(s.tanks, s.share * (1 - part)));
      }
    }
    out.add(new Share(program, part));
    return new Blend(out);
  }

  /** Dollars on an acre. */
  double cost() {
    double sum = 0;
    for (Share s : shares) {
      for (Tank t : s.tanks) {
        sum += s.share * t.cost();
      }
    }
    return sum;
  }

  /** By active, how often it is sprayed. */
  Map<IngredientId, Double> uses() {
    Map<IngredientId, Double> out = new TreeMap<>();
    for (Share s : shares) {
      for (Tank t : s.tanks) {
        for (Part p : t.parts()) {
          out.merge(p.option().ingredient(), s.share, Double::sum);
        }
      }
    }
    return out;
  }

  /** Sum of what its programs are worth at some prices. */
  double at(Prices prices) {
    double sum = 0;
    for (Share s : shares) {
      for (Tank t : s.tanks) {
        sum += s.share * prices.of(t);
      }
    }
    return sum;
  }

  /**
   * What it does, added up.
   *
   * @param without a site that does nothing
   */
  Sums sums(AllDoses all, Optional<Site> without) {
    Sums out = new Sums(all.cohorts(), all.days().size());
    for (Share s : shares) {
      for (Tank t : s.tanks) {
        out.passes[t.day()] += s.share;
        for (Map.Entry<Site, Reach> e : t.reach().entrySet()) {
          if (without.isEmpty() || !without.get().equals(e.getKey())) {
            e.getValue().addSoil(out.soil, s.share);
            if (e.getValue().isOnLeaves()) {
              e.getValue().addLeaves(out.leaves(t.day()), s.share);
            }
          }
        }
      }
    }
    return out;
  }

  /** Logarithms by cohort, as {@link Reach} has them, each times its share. */
  static final class Sums {
    private final double[] soil;
    private final double[] passes;
    private final double[][] leaves;

    private Sums(int cohorts, int days) {
      this.soil = new double[cohorts];
      this.passes = new double[days];
      this.leaves = new double[days][0];
    }

    private double[] leaves(int day) {
      if (leaves[day].length == 0) {
        leaves[day] = new double[soil.length];
      }
      return leaves[day];
    }

    double soil(int cohort) {
      return soil[cohort];
    }

    /** Share of the programs that have a pass on a day. */
    double passes(int day) {
      return passes[day];
    }

    /** Whether anything is done through leaves on a day. */
    boolean isOnLeaves(int day) {
      return leaves[day].length > 0;
    }

    double leaves(int day, int cohort) {
      return leaves[day].length > 0 ? leaves[day][cohort] : 0;
    }
  }
}
