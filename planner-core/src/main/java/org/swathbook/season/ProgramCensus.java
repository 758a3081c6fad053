package org.swathbook.season;

import java.util.Arrays;
import java.util.List;
import org.swathbook.book.Biotype;
import org.swathbook.book.HouseRules;
import org.swathbook.control.FoliarTable;
import org.swathbook.control.MixEffect;
import org.swathbook.control.SoilEffect;
import org.swathbook.growth.SeasonTrace;
import org.swathbook.growth.TraceSet;

/**
 * What a walk sees as it goes: the plants that stand at each pass, and which effective sites each
 * cohort has met.
 */
final class ProgramCensus implements Census {
  private final TraceSet traces;
  private final HouseRules house;
  private final Kernel kernel;
  private final List<PreparedPass> passes;
  private final StandingPlants[][][] standing;

  /** By year, weed, biotype and cohort: bit n for site n. */
  private final long[][][][] metSites;

  ProgramCensus(Kernel kernel, List<PreparedPass> passes) {
    this.kernel = kernel;
    this.traces = kernel.traces();
    this.house = kernel.house();
    this.passes = passes;
    int years = traces.years().size();
    int weeds = traces.weeds().size();
    this.standing = new StandingPlants[passes.size()][years][];
    this.metSites = new long[years][][][];
    for (int y = 0; y < years; y++) {
      for (int p = 0; p < passes.size(); p++) {
        standing[p][y] = noneStanding(weeds);
      }
      metSites[y] = new long[weeds][][];
      for (int w = 0; w < weeds; w++) {
        long[] inSoil = soilSites(y, w);
        metSites[y][w] = new long[traces.weeds().get(w).biotypes().size()][];
        for (int b = 0; b < metSites[y][w].length; b++) {
          metSites[y][w][b] = Arrays.copyOf(inSoil, inSoil.length);
        }
      }
    }
  }

  private static StandingPlants[] noneStanding(int weeds) {
    StandingPlants[] out = new StandingPlants[weeds];
    for (int w = 0; w < weeds; w++) {
      out[w] = new StandingPlants();
    }
    return out;
  }

  private long[] soilSites(int year, int weed) {
    long[] out = new long[kernel.cell(year, weed).cohorts];
    for (PreparedPass pass : passes) {
      for (int j = 0; j < pass.soilDoses(); j++) {
        SoilEffect e = pass.soil(year, j, weed);
        if (!pass.effect().isStruck(pass.soilActive(j), weed)) {
          for (int c = e.from(); c < e.to(); c++) {
            if (e.control(c) >= house.effectiveSoilSite()) {
              out[c] |= 1L << pass.soilSite(j);
            }
          }
        }
      }
    }
    return out;
  }

  @Override
  public void standing(StandingCohorts up) {
    PreparedPass prepared = passes.get(up.pass());
    SeasonTrace trace = traces.years().get(up.year());
    int day = prepared.timing().years().get(up.year()).day();
    standing[up.pass()][up.year()][up.weed()].add(kernel, day, up);
    // Before a weed is up no leaf is met, and what the tank does to leaves need not be known.
    boolean any = up.from() < up.up();
    if (any && !prepared.isMissed(up.year()) && day <= trace.harvestDay()) {
      meet(prepared, up);
    }
  }

  private void meet(PreparedPass pass, StandingCohorts up) {
    MixEffect effect = pass.effect();
    FoliarTable table = kernel.foliar(pass, up.year(), up.weed());
    long[] met = metSites[up.year()][up.weed()][up.biotype()];
    for (int a = 0; a < effect.actives().size(); a++) {
      if (effect.isStruck(a, up.weed()) || pass.isSlowed(a)) {
        continue;
      }
      long bit = 1L << effect.actives().get(a).ingredient().site().number();
      for (int c = up.from(); c < up.up(); c++) {
        if (table.alone(a, up.heightClass()[c]) >= house.effectiveSite()) {
          met[c] |= bit;
        }
      }
    }
  }

  StandingPlants standing(int pass, int year, int weed) {
    return standing[pass][year][weed];
  }

  /** Shares, 0 to 1, of a year's plants left by tillage that met none, one, two or more sites. */
  double[] metShares(int year, int weed) {
    YearWeed cell = kernel.cell(year, weed);
    List<Biotype> biotypes = traces.weeds().get(weed).biotypes();
    double[] out = new double[3];
    double all = 0;
    for (int b = 0; b < biotypes.size(); b++) {
      long[] met = inherited(cell, metSites[year][weed][b]);
      for (int c = 0; c < cell.cohorts; c++) {
        double n = cell.emergence[c] * cell.set.tillageSurvival(c) * biotypes.get(b).share();
        out[Math.min(2, Long.bitCount(met[c]))] += n;
        all += n;
      }
    }
    for (int i = 0; i < out.length; i++) {
      out[i] = all > 0 ? out[i] / all : 0;
    }
    return out;
  }

  /** The same in percent, mean over the years. */
  double[] metPct(int weed) {
    int years = traces.years().size();
    double[] out = new double[3];
    for (int y = 0; y < years; y++) {
      double[] shares = metShares(y, weed);
      for (int i = 0; i < out.length; i++) {
        out[i] += 100 * shares[i] / years;
      }
    }
    return out;
  }

  /** Plants that a count replaced have met what all that stand in their place have met. */
  private static long[] inherited(YearWeed cell, long[] met) {
    long[] out = Arrays.copyOf(met, met.length);
    for (int c = cell.cohorts - 1; c >= 0; c--) {
      long all = -1;
      for (int heir = cell.set.heirsFrom(c); heir < cell.set.heirsTo(c); heir++) {
        all &= out[heir];
      }
      if (all != -1) {
        out[c] |= all;
      }
    }
    return out;
  }
}
