package org.swathbook.season;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Site;
import org.swathbook.control.TankActive;
import org.swathbook.growth.TraceSet;
import org.swathbook.season.loss.Seedbank;
import org.swathbook.season.outcome.PassOutcome;
import org.swathbook.season.outcome.WeedOutcome;

/** Sums up what a walked program does to each weed. */
final class WeedOutcomes {
  private final TraceSet traces;
  private final List<PreparedPass> passes;
  private final List<PassOutcome> passOutcomes;
  private final Score score;
  private final ProgramCensus census;
  private final List<Site> sites;
  private final List<WithoutSite> without;

  WeedOutcomes(
      Kernel kernel,
      List<PreparedPass> passes,
      List<PassOutcome> passOutcomes,
      Score score,
      ProgramCensus census) {
    this.traces = kernel.traces();
    this.passes = passes;
    this.passOutcomes = passOutcomes;
    this.score = score;
    this.census = census;
    this.sites = sitesOf(passes);
    this.without = sites.stream().map(s -> WithoutSite.of(kernel, passes, s, score)).toList();
  }

  /** Sites of all actives of the passes, in order. */
  static List<Site> sitesOf(List<PreparedPass> passes) {
    TreeSet<Site> out = new TreeSet<>();
    for (PreparedPass p : passes) {
      p.effect().actives().forEach(a -> out.add(a.ingredient().site()));
    }
    return List.copyOf(out);
  }

  private double seedbankFactor(int weed) {
    double sum = 0;
    for (int y = 0; y < score.years(); y++) {
      sum +=
          Seedbank.factor(
              traces.weeds().get(weed).weed().seed(),
              score.seedReturnPerM2(weed, y),
              traces.years().get(y).cohorts(weed).totalPerM2());
    }
    return sum / score.years();
  }

  WeedOutcome of(int weed, List<WeedOutcome.LayerOverlap> overlaps) {
    double control = score.controlPct(weed);
    Optional<Site> weakest = Optional.empty();
    double withoutWeakest = control;
    double survivorsWithout = score.survivorsPerAcre(weed);
    for (int s = 0; s < sites.size(); s++) {
      WithoutSite.Left left = without.get(s).left(weed);
      if (left.controlPct() < withoutWeakest) {
        weakest = Optional.of(sites.get(s));
        withoutWeakest = left.controlPct();
        survivorsWithout = left.survivorsPerAcre();
      }
    }
    double[] met = census.metPct(weed);
    return new WeedOutcome(
        traces.weeds().get(weed),
        control,
        score.worstYearControlPct(weed),
        100 * score.exposedMedian(weed),
        100 * score.exposedWorstFifth(weed),
        100 * score.exposedToNothingMedian(weed),
        score.survivorsPerAcre(weed),
        score.allSurvivorsPerAcre(weed),
        score.seedReturnPerM2(weed),
        seedbankFactor(weed),
        met[0],
        met[1],
        met[2],
        weakest,
        withoutWeakest,
        survivorsWithout,
        overlaps,
        unknown(weed));
  }

  /**
   * Actives of which nothing that they could do to this weed where they are used is known: through
   * leaves where it stands, through the soil until control is needed no more.
   */
  private List<String> unknown(int weed) {
    TreeSet<String> known = new TreeSet<>();
    TreeSet<String> asked = new TreeSet<>();
    for (int p = 0; p < passes.size(); p++) {
      PreparedPass pass = passes.get(p);
      boolean stands = passOutcomes.get(p).weeds().get(weed).stands();
      for (int a = 0; a < pass.effect().actives().size(); a++) {
        TankActive active = pass.effect().actives().get(a);
        Ingredient i = active.ingredient();
        boolean leaves = stands && !i.foliar().isNone();
        boolean soil = !i.residual().isNone() && soilMatters(pass, weed);
        if (leaves || soil) {
          asked.add(i.name());
        }
        if (leaves && foliarKnown(pass, a, weed)
            || soil && pass.effect().fresh(a, weed).isPresent()) {
          known.add(i.name());
        }
      }
    }
    List<String> out = new ArrayList<>(asked);
    out.removeAll(known);
    return out;
  }

  private boolean soilMatters(PreparedPass pass, int weed) {
    for (int y = 0; y < score.years(); y++) {
      if (!pass.isMissed(y) && pass.day(y) <= traces.years().get(y).neededUntil(weed)) {
        return true;
      }
    }
    return false;
  }

  private boolean foliarKnown(PreparedPass pass, int active, int weed) {
    for (int y = 0; y < score.years(); y++) {
      if (!pass.effect().foliarKnown(active, weed, pass.phase(y))) {
        return false;
      }
    }
    return true;
  }
}
