package org.swathbook.plan.change;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.swathbook.book.HouseRules;
import org.swathbook.growth.PassTiming;
import org.swathbook.growth.Timings;
import org.swathbook.growth.TraceSet;
import org.swathbook.plan.choice.DoseOption;
import org.swathbook.plan.choice.Strengths;
import org.swathbook.program.Dose;

/**
 * Tanks for a pass that is added to a program: dose by dose the one that brings the most missing
 * effective sites, then the best quick score.
 */
public final class AddedTanks {
  private final TraceSet traces;
  private final HouseRules house;
  private final ChangeMaker maker;
  private final List<DoseOption> options;
  private final Strengths strengths;
  private final ToDoubleFunction<SingleChange> score;

  public AddedTanks(
      TraceSet traces,
      HouseRules house,
      ChangeMaker maker,
      List<DoseOption> options,
      Strengths strengths,
      ToDoubleFunction<SingleChange> score) {
    this.traces = traces;
    this.house = house;
    this.maker = maker;
    this.options = List.copyOf(options);
    this.strengths = strengths;
    this.score = score;
  }

  /** Each tank on the way counts: what takes the leaves, what holds the soil, and both. */
  public List<SingleChange> all() {
    return on(maker.openDates());
  }

  /** The same on days that are nearer to a pass than the house asks. */
  List<SingleChange> near() {
    return on(maker.nearDates());
  }

  private List<SingleChange> on(List<LocalDate> dates) {
    Map<String, SingleChange> out = new LinkedHashMap<>();
    for (LocalDate date : dates) {
      PassTiming timing = Timings.at(traces, date);
      fill(date, timing, house.minFoliarSites(), 0, out);
      fill(date, timing, 0, house.minSoilSitesFirst(), out);
      fill(date, timing, house.minFoliarSites(), house.minSoilSitesOverlap(), out);
    }
    return List.copyOf(out.values());
  }

  private void fill(
      LocalDate date, PassTiming timing, int foliar, int soil, Map<String, SingleChange> out) {
    List<DoseOption> tank = new ArrayList<>();
    while (tank.size() < house.maxProducts()) {
      int missing = missing(tank, foliar, soil);
      DoseOption best = null;
      SingleChange bestChange = null;
      int bestMissing = missing;
      double bestScore = Double.NEGATIVE_INFINITY;
      for (DoseOption option : maker.legalOn(date)) {
        List<DoseOption> with = new ArrayList<>(tank);
        with.add(option);
        int m = missing(with, foliar, soil);
        if (m == missing || m > bestMissing || !maker.takes(doses(tank), option.dose(), timing)) {
          continue;
        }
        SingleChange change = maker.added(date, doses(with));
        double s = score.applyAsDouble(change);
        if (m < bestMissing || s > bestScore) {
          best = option;
          bestChange = change;
          bestMissing = m;
          bestScore = s;
        }
      }
      if (best == null || bestChange == null) {
        return;
      }
      tank.add(best);
      out.putIfAbsent(bestChange.key(), bestChange);
    }
  }

  private int missing(List<DoseOption> tank, int foliar, int soil) {
    return strengths.missing(
        tank.stream().map(DoseOption::index).toList(),
        foliar,
        soil,
        o -> options.get(o).dose().actives().get(0).ingredient().site());
  }

  private static List<Dose> doses(List<DoseOption> tank) {
    return tank.stream().map(DoseOption::dose).toList();
  }
}
