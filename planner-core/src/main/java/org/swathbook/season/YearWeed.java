package org.swathbook.season;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.swathbook.book.Biotype;
import org.swathbook.book.WeedPressure;
import org.swathbook.growth.CohortSet;
import org.swathbook.growth.SeasonTrace;
import org.swathbook.model.ModelCard;
import org.swathbook.model.ModelSection;
import org.swathbook.season.loss.CountCosts;
import org.swathbook.season.loss.Removal;

/** What is fixed of one weed in one year before any pass. */
final class YearWeed {
  /** Loss of competition per leaf stage that the crop is ahead (default). */
  static final double HEAD_START = 0.6;

  /** Least days from planting at which control is rated. */
  private static final int RATED_FROM_DAYS = 60;

  /** Of each biotype of the weed. */
  final double[] shares;

  final CohortSet set;
  final int cohorts;

  /** Plants/m² when the cohort begins, before tillage. */
  final double[] first;

  /** Plants/m² left by tillage. */
  final double[] start;

  /** Competition of a plant of the cohort beside one up before the crop. */
  final double[] weight;

  /** Plants/m² that come up by the model; none of a counted cohort. */
  final double[] emergence;

  /** Null where nothing was counted. */
  final @Nullable CountCosts costs;

  final boolean[] upByNeeded;
  final double totalEmergence;
  final int ratedOn;
  final int upWhenRated;
  final double untreatedWhenRated;
  final int endedWhenRated;
  final int upByHarvest;
  final int endedByHarvest;
  final int exposedFrom;
  final int exposedTo;

  YearWeed(SeasonTrace trace, int weed, WeedPressure pressure, Removal removal) {
    shares = pressure.biotypes().stream().mapToDouble(Biotype::share).toArray();
    set = trace.cohorts(weed);
    cohorts = set.count();
    start = new double[cohorts];
    weight = new double[cohorts];
    first = new double[cohorts];
    emergence = new double[cohorts];
    for (int c = 0; c < cohorts; c++) {
      emergence[c] = set.perM2(c);
      first[c] = set.atFirst(c);
      start[c] = first[c] * set.tillageSurvival(c);
      weight[c] = StrictMath.exp(-HEAD_START * trace.leafStages(set.competesFrom(c)));
    }
    totalEmergence = set.totalPerM2();
    ratedOn = ratedOn(trace);
    upWhenRated = DayView.upBy(set, ratedOn);
    endedWhenRated = set.endedBy(ratedOn);
    double sum = 0;
    for (int c = endedWhenRated; c < upWhenRated; c++) {
      sum += start[c] * weight[c];
    }
    untreatedWhenRated = sum;
    int harvest = Math.min(trace.harvestDay(), trace.days() - 1);
    upByHarvest = DayView.upBy(set, harvest);
    endedByHarvest = set.endedBy(harvest);
    upByNeeded = new boolean[cohorts];
    for (int c = 0; c < cohorts; c++) {
      int up = set.isCounted(c) ? set.competesFrom(c) : set.emergedOn(c);
      upByNeeded[c] = up <= trace.neededUntil(weed);
    }
    exposedFrom = DayView.upBy(set, trace.plantingDay() - 1);
    exposedTo = Math.max(exposedFrom, DayView.upBy(set, trace.neededUntil(weed)));
    costs = CountCosts.of(trace, set, harvest, removal);
  }

  /** Canopy closure or 60 days after planting, the later; 60 days where the rows never close. */
  static int ratedOn(SeasonTrace trace) {
    int sixty = trace.plantingDay() + RATED_FROM_DAYS;
    int canopy = trace.canopyDay() < trace.days() ? trace.canopyDay() : sixty;
    return Math.min(trace.days() - 1, Math.max(canopy, sixty));
  }

  /** What the reference prints. */
  static List<ModelCard> cards() {
    return List.of(
        ModelCard.of(
                ModelSection.COST,
                YearWeed.class,
                "late weeds",
                "a plant weighs exp(−C T), T crop leaf stages at its emergence, 0 before the crop",
                "default: a ratio of 8 over some 3.5 leaves, Knezevic, Weise & Swanton 1994")
            .with("C", HEAD_START, "a stage"),
        ModelCard.of(
                ModelSection.COST,
                YearWeed.class,
                "control",
                "100 (1 − W/W untreated) at canopy or so many days after planting, the later, W by the weights above; where plants were counted, W untreated is W of the count and of what came up later, and of what passes had killed before the count",
                "definition")
            .with("days", RATED_FROM_DAYS, "")
            .given("percent; summed by `CellWalk`"));
  }
}
