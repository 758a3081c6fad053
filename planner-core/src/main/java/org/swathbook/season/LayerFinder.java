package org.swathbook.season;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.swathbook.book.HouseRules;
import org.swathbook.book.WeedPressure;
import org.swathbook.growth.CohortSet;
import org.swathbook.growth.SeasonTrace;
import org.swathbook.growth.TraceSet;
import org.swathbook.model.ModelCard;
import org.swathbook.model.ModelSection;
import org.swathbook.season.outcome.GapSpan;
import org.swathbook.season.outcome.LayerSpan;
import org.swathbook.season.outcome.WeedOutcome;

/** Layers and gaps of a program, year by year and weed by weed. Belongs to one thread. */
final class LayerFinder {
  static final int LEAST_DAYS = 7;

  private final Kernel kernel;
  private final TraceSet traces;
  private final HouseRules house;
  private final List<PreparedPass> passes;
  private final @Nullable SoilDays[][] kept;

  LayerFinder(Kernel kernel, List<PreparedPass> passes) {
    this.kernel = kernel;
    this.traces = kernel.traces();
    this.house = kernel.house();
    this.passes = passes;
    this.kept = new SoilDays[traces.years().size()][traces.weeds().size()];
  }

  /** Layers by weed, then by year. */
  List<List<List<LayerSpan>>> layersByWeed() {
    List<List<List<LayerSpan>>> out = new ArrayList<>();
    for (int w = 0; w < traces.weeds().size(); w++) {
      List<List<LayerSpan>> byYear = new ArrayList<>();
      for (int y = 0; y < traces.years().size(); y++) {
        byYear.add(layers(y, w));
      }
      out.add(byYear);
    }
    return out;
  }

  /** Layers of a weed in a year, in the order of the passes. */
  List<LayerSpan> layers(int year, int weed) {
    List<LayerSpan> out = new ArrayList<>();
    for (int p = 0; p < passes.size(); p++) {
      Optional<LayerSpan> own = passes.get(p).ownLayers(kernel, weed).in(year);
      if (own.isPresent()) {
        LayerSpan l = own.get();
        out.add(p == 0 ? l : PassLayers.ofPass(p, l));
      }
    }
    return out;
  }

  private SoilDays days(int year, int weed) {
    SoilDays found = kept[year][weed];
    if (found == null) {
      found = new SoilDays(passes, year, weed, traces.weeds().get(weed), house);
      kept[year][weed] = found;
    }
    return found;
  }

  /** Days from planting to needed-until on which all soil actives together hold too little. */
  List<GapSpan> gaps(int year, int weed) {
    SoilDays soil = days(year, weed);
    SeasonTrace trace = traces.years().get(year);
    WeedPressure pressure = traces.weeds().get(weed);
    List<GapSpan> out = new ArrayList<>();
    int last = Math.min(trace.neededUntil(weed), trace.days() - 1);
    int from = -1;
    for (int d = trace.plantingDay(); d <= last + 1; d++) {
      boolean open = d <= last && soil.control(d) < house.layerThreshold();
      if (open && from < 0) {
        from = d;
      } else if (!open && from >= 0) {
        double share = emergence(trace.cohorts(weed), from, d - 1);
        out.add(new GapSpan(pressure.weed().id(), from, d - 1, share));
        from = -1;
      }
    }
    return out;
  }

  /** Share of the season's emergence that counts as up from a day to a day. */
  static double emergence(CohortSet cohorts, int from, int to) {
    double sum = 0;
    for (int c = 0; c < cohorts.count(); c++) {
      if (cohorts.emergedOn(c) >= from && cohorts.emergedOn(c) <= to) {
        sum += cohorts.perM2(c);
      }
    }
    double total = cohorts.totalPerM2();
    return total > 0 ? sum / total : 0;
  }

  /**
   * Overlaps of consecutive layers of a weed; passes that make a layer in no year are passed over.
   *
   * @param byYear layers of the weed in each year
   */
  List<WeedOutcome.LayerOverlap> overlaps(int weed, List<List<LayerSpan>> byYear) {
    List<WeedOutcome.LayerOverlap> out = new ArrayList<>();
    int previous = -1;
    for (int p = 0; p < passes.size(); p++) {
      int pass = p;
      if (byYear.stream().anyMatch(y -> find(y, pass).isPresent())) {
        if (previous >= 0) {
          out.add(overlap(traces, weed, byYear, previous, p));
        }
        previous = p;
      }
    }
    return out;
  }

  static WeedOutcome.LayerOverlap overlap(
      TraceSet traces, int weed, List<List<LayerSpan>> byYear, int first, int next) {
    List<Double> days = new ArrayList<>();
    List<Double> toCome = new ArrayList<>();
    int holes = 0;
    int toCanopy = 0;
    for (int y = 0; y < byYear.size(); y++) {
      Optional<LayerSpan> a = find(byYear.get(y), first);
      Optional<LayerSpan> b = find(byYear.get(y), next);
      if (a.isPresent()) {
        SeasonTrace trace = traces.years().get(y);
        toCome.add(100 * emergence(trace.cohorts(weed), a.get().toDay() + 1, trace.days()));
      }
      if (a.isPresent() && b.isPresent()) {
        days.add((double) a.get().toDay() - b.get().fromDay());
      }
      if (a.isPresent() && a.get().toDay() + 1 >= traces.years().get(y).canopyDay()) {
        toCanopy++;
      } else if (b.isEmpty() || a.isPresent() && a.get().toDay() < b.get().fromDay()) {
        holes++;
      }
    }
    return new WeedOutcome.LayerOverlap(
        first,
        next,
        Stats.median(array(days)),
        (double) holes / byYear.size(),
        (double) toCanopy / byYear.size(),
        Stats.median(array(toCome)));
  }

  private static Optional<LayerSpan> find(List<LayerSpan> layers, int pass) {
    for (LayerSpan l : layers) {
      if (l.pass() == pass) {
        return Optional.of(l);
      }
    }
    return Optional.empty();
  }

  private static double[] array(List<Double> values) {
    return values.stream().mapToDouble(Double::doubleValue).toArray();
  }

  /** What the reference prints. */
  static List<ModelCard> cards() {
    return List.of(
        ModelCard.of(
                ModelSection.SOIL,
                LayerFinder.class,
                "a layer",
                "holds the house threshold for so long at least",
                "default")
            .with("at least", LEAST_DAYS, "days"));
  }
}
