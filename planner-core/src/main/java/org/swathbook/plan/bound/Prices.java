package org.swathbook.plan.bound;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.swathbook.catalog.IngredientId;
import org.swathbook.catalog.Site;
import org.swathbook.season.Reach;

/**
 * What one more unit of each thing changes of what is bounded, dollars on an acre: a pass on a day,
 * a use of an active, and by cohort a logarithm of soil effect and of effect on leaves on a day,
 * which save so much. A measure without a site pays nothing for what the site does.
 */
final class Prices {
  private final int cohorts;
  private final double[] passes;
  private final Table all;
  private final Map<Site, Table> notPaid = new TreeMap<>();
  private final Map<Site, Table> paid = new TreeMap<>();
  private final Map<IngredientId, Double> uses;

  /** By cohort, and by day and cohort. */
  private static final class Table {
    private final double[] soil;
    private final double[] @Nullable [] leaves;

    private Table(int cohorts, int days) {
      this.soil = new double[cohorts];
      this.leaves = new double[days][];
    }

    double[] leaves(int day) {
      double[] out = leaves[day];
      if (out == null) {
        out = new double[soil.length];
        leaves[day] = out;
      }
      return out;
    }
  }

  /**
   * @param uses dollars that a use of an active costs beside its price
   */
  Prices(AllDoses all, Map<IngredientId, Double> uses) {
    this.cohorts = all.cohorts();
    this.passes = new double[all.days().size()];
    this.all = new Table(cohorts, passes.length);
    this.uses = uses;
  }

  void addPass(int day, double price) {
    passes[day] += price;
  }

  /** What a unit of soil effect on a cohort saves in a measure. */
  void addSoil(Optional<Site> without, int cohort, double saves) {
    all.soil[cohort] += saves;
    without.ifPresent(s -> notPaid(s).soil[cohort] += saves);
    paid.clear();
  }

  /** What a unit of effect on leaves saves. */
  void addLeaves(Optional<Site> without, int day, int cohort, double saves) {
    all.leaves(day)[cohort] += saves;
    without.ifPresent(s -> notPaid(s).leaves(day)[cohort] += saves);
    paid.clear();
  }

  private Table notPaid(Site site) {
    return notPaid.computeIfAbsent(site, s -> new Table(cohorts, passes.length));
  }

  /** What a unit of what a site does saves. */
  private Table paid(Site site) {
    Table less = notPaid.get(site);
    return less == null ? all : paid.computeIfAbsent(site, s -> minus(less));
  }

  private Table minus(Table less) {
    Table out = new Table(cohorts, passes.length);
    for (int c = 0; c < cohorts; c++) {
      out.soil[c] = all.soil[c] - less.soil[c];
    }
    for (int d = 0; d < passes.length; d++) {
      for (int c = 0; c < cohorts && all.leaves[d] != null; c++) {
        out.leaves(d)[c] = all.leaves(d)[c] - less.leaves(d)[c];
      }
    }
    return out;
  }

  double ofPass(int day) {
    return passes[day];
  }

  /** What a use of its active costs beside its price. */
  double ofUse(Part part) {
    return uses.getOrDefault(part.option().ingredient(), 0.0);
  }

  double saves(Site site, int day, Reach reach) {
    Table t = paid(site);
    double out = reach.soilAt(t.soil);
    return reach.isOnLeaves() ? out + reach.leavesAt(t.leaves(day)) : out;
  }

  /** What a tank costs, less what it saves. */
  double of(Tank tank) {
    double sum = passes[tank.day()] + tank.cost();
    for (Part p : tank.parts()) {
      sum += ofUse(p);
    }
    for (Map.Entry<Site, Reach> e : tank.reach().entrySet()) {
      sum -= saves(e.getKey(), tank.day(), e.getValue());
    }
    return sum;
  }
}
