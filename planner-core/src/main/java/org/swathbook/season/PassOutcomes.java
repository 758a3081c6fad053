package org.swathbook.season;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.swathbook.book.Book;
import org.swathbook.growth.PassTiming;
import org.swathbook.growth.SeasonTrace;
import org.swathbook.growth.TraceSet;
import org.swathbook.measure.Money;
import org.swathbook.model.ModelCard;
import org.swathbook.model.ModelSection;
import org.swathbook.season.outcome.LateCost;
import org.swathbook.season.outcome.LayerSpan;
import org.swathbook.season.outcome.PassOutcome;
import org.swathbook.season.outcome.PassSize;
import org.swathbook.season.outcome.PassWeed;

/** Describes each pass of a walked program. */
final class PassOutcomes {
  /**
   * A weed stands from so many plants/m², 400 on an acre (default, ours). No share of its
   * emergence: survivors are selected by plants, and one in a hundred of a dense stand are
   * thousands.
   */
  private static final double STANDS_PER_M2 = 0.1;

  private final Book book;
  private final Kernel kernel;
  private final TraceSet traces;
  private final List<PreparedPass> passes;
  private final ProgramCensus census;
  private final PassSites sites;

  /** By weed, then by year. */
  private final List<List<List<LayerSpan>>> layers;

  PassOutcomes(
      Book book,
      Kernel kernel,
      List<PreparedPass> passes,
      ProgramCensus census,
      List<List<List<LayerSpan>>> layers) {
    this.book = book;
    this.kernel = kernel;
    this.traces = kernel.traces();
    this.passes = passes;
    this.census = census;
    this.sites = new PassSites(kernel, census);
    this.layers = layers;
  }

  PassOutcome of(int index) {
    PreparedPass pass = passes.get(index);
    PassTiming timing = pass.timing();
    List<LocalDate> days = new ArrayList<>();
    for (int y = 0; y < traces.years().size(); y++) {
      SeasonTrace trace = traces.years().get(y);
      int day = timing.years().get(y).day();
      if (day < trace.days()) {
        days.add(trace.bookDateOf(day));
      }
    }
    List<PassWeed> weeds = new ArrayList<>();
    for (int w = 0; w < traces.weeds().size(); w++) {
      weeds.add(weed(pass, index, w));
    }
    return new PassOutcome(
        index,
        pass.planned(),
        timing,
        days.stream().min(LocalDate::compareTo).orElse(pass.planned()),
        days.stream().max(LocalDate::compareTo).orElse(pass.planned()),
        (int) ChronoUnit.DAYS.between(traces.field().plantDate(), timing.medianDate()),
        stageName(timing),
        pass.mix(),
        pass.missedYears(),
        book.prices().perAcre(pass.mix()),
        weeds,
        lateCost(index),
        pass.isMade());
  }

  private LateCost lateCost(int index) {
    int years = traces.years().size();
    double share = 0;
    double more = 0;
    int comes = 0;
    for (int y = 0; y < years; y++) {
      int day = passes.get(index).timing().years().get(y).day();
      if (day < traces.years().get(y).days()) {
        double now = lost(index, y, day);
        share += now;
        more += Math.max(0, lost(index, y, day + 1) - now);
        comes++;
      }
    }
    return comes == 0
        ? LateCost.NONE
        : new LateCost(share / comes, Money.ofDollars(more / comes * kernel.weedFreeDollars()));
  }

  /**
   * Share of the yield that the plants standing at a pass have cost if they live to a day: of what
   * all of them would cost alive, the part that late removal gives the day.
   */
  private double lost(int index, int year, int day) {
    double alive = 0;
    double byThen = 0;
    for (int w = 0; w < traces.weeds().size(); w++) {
      double x = kernel.yieldLoss().perPlant(w) * census.standing(index, year, w).weightedPerM2();
      alive += x;
      byThen += x * kernel.removed(year, day, layerHolds(year, w));
    }
    return alive > 0 ? kernel.yieldLoss().share(alive) * byThen / alive : 0;
  }

  /** Whether a layer of any pass holds a weed on the day the crop comes up. */
  private boolean layerHolds(int year, int weed) {
    int up = traces.years().get(year).emergenceDay();
    return layers.get(weed).get(year).stream().anyMatch(l -> l.fromDay() <= up && up <= l.toDay());
  }

  /** Weeds that stand at the passes made in a year: by pass, then in the field's order. */
  List<PassSize> sizes(int year) {
    List<PassSize> out = new ArrayList<>();
    for (int p = 0; p < passes.size(); p++) {
      for (int w = 0; w < traces.weeds().size() && !passes.get(p).isMissed(year); w++) {
        StandingPlants plants = census.standing(p, year, w);
        if (stands(plants.perM2())) {
          out.add(
              new PassSize(
                  p,
                  traces.weeds().get(w).weed().id(),
                  plants.perM2(),
                  plants.percentileCm(0.5),
                  plants.percentileCm(kernel.house().sizePercentile())));
        }
      }
    }
    return out;
  }

  private String stageName(PassTiming timing) {
    int i = (int) Math.floor(timing.medianStage());
    if (i >= 0) {
      return traces.crop().stages().get(i).name();
    }
    return timing.medianDate().isBefore(traces.field().plantDate()) ? "not planted" : "planted";
  }

  private PassWeed weed(PreparedPass pass, int index, int weed) {
    double[] perM2 = sites.perM2(index, weed);
    boolean[] stands = sites.standing(perM2);
    double median = Stats.median(perM2);
    double percentile = kernel.house().sizePercentile();
    double[] p90 = heights(index, weed, stands, percentile);
    return new PassWeed(
        traces.weeds().get(weed).weed().id(),
        stands(median),
        median,
        Stats.median(heights(index, weed, stands, 0.5)),
        Stats.median(p90),
        Arrays.stream(p90).min().orElse(Double.NaN),
        Arrays.stream(p90).max().orElse(Double.NaN),
        sites.foliar(pass, index, weed),
        pass.soilSites(kernel, weed));
  }

  static boolean stands(double perM2) {
    return perM2 >= STANDS_PER_M2;
  }

  private double[] heights(int index, int weed, boolean[] stands, double percentile) {
    double[] out = new double[stands.length];
    int n = 0;
    for (int y = 0; y < stands.length; y++) {
      if (stands[y]) {
        out[n++] = census.standing(index, y, weed).percentileCm(percentile);
      }
    }
    return Arrays.copyOf(out, n);
  }

  /** What the reference prints. */
  static List<ModelCard> cards() {
    return List.of(
        ModelCard.of(
                ModelSection.COST,
                PassOutcomes.class,
                "stands",
                "from so many plants in the median year, whatever the season's emergence",
                "default, ours")
            .with("plants/m²", STANDS_PER_M2, ""));
  }
}
