package org.swathbook.book;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Map;
import org.swathbook.catalog.Ordered;
import org.swathbook.catalog.WeedId;
import org.swathbook.measure.Inches;

/**
 * The adviser's thresholds; shares are 0 to 1.
 *
 * @param effectiveSite least control by a foliar site that counts as effective
 * @param effectiveSoilSite least mean control over its first 21 active days by a soil site that
 *     counts
 * @param layerThreshold joint control of newly emerging plants below which a layer has ended
 * @param maxExposedEmergence by weed; {@link #maxExposed} falls back to the rest
 * @param sizePercentile share of the standing plants that is no taller than "the" height
 * @param suitableRainMm a spray day has less rain than this
 * @param suitableRainBeforeMm and the day before less than this
 * @param minDaysBetweenPasses days from one pass that is planned to the next, by their dates;
 *     limits what is laid out, judges nothing that is written
 * @param windMinMph least and most wind to spray in where no label says; a spray day of the trace
 *     has a mean wind of at most the latter
 * @param missFoliar share of plants that no partner of a pass reaches
 */
public record HouseRules(
    double effectiveSite,
    double effectiveSoilSite,
    int minFoliarSites,
    int minSoilSitesFirst,
    int minSoilSitesOverlap,
    double layerThreshold,
    int minLayerOverlapDays,
    Map<WeedId, Double> maxExposedEmergence,
    double maxExposedEmergenceOthers,
    double seasonControl,
    double oneSiteGone,
    double otherControl,
    double maxSurvivorsPerAcre,
    double windowConfidence,
    double sizePercentile,
    double suitableRainMm,
    double suitableRainBeforeMm,
    Map<Integer, Double> suitableShareByMonth,
    double suitableShareOther,
    int queueDays,
    double missFoliar,
    double missUnderCanopy,
    double missSoil,
    int catalogAgeMonths,
    int maxPasses,
    int maxProducts,
    int dateStepDays,
    int minDaysBetweenPasses,
    double windMinMph,
    double windMaxMph) {

  public HouseRules {
    maxExposedEmergence = Ordered.map(maxExposedEmergence);
    suitableShareByMonth = Ordered.map(suitableShareByMonth);
  }

  public double maxExposed(WeedId weed) {
    return maxExposedEmergence.getOrDefault(weed, maxExposedEmergenceOthers);
  }

  /**
   * Share of the days of a month (1 to 12) that are dry enough and whose wind is not known on which
   * spraying is possible.
   */
  public double suitableShare(int month) {
    return suitableShareByMonth.getOrDefault(month, suitableShareOther);
  }

  /** Whether passes planned for two days lie as far apart as the planner keeps them. */
  public boolean areApart(LocalDate one, LocalDate other) {
    return Math.abs(ChronoUnit.DAYS.between(one, other)) >= minDaysBetweenPasses;
  }

  /**
   * The same thresholds with other limits of what the planner lays out.
   *
   * @param passes at most so many, {@code products} in a tank at most so many, and {@code days} at
   *     least from pass to pass
   */
  public HouseRules laidOut(int passes, int products, int days) {
    return new HouseRules(
        effectiveSite,
        effectiveSoilSite,
        minFoliarSites,
        minSoilSitesFirst,
        minSoilSitesOverlap,
        layerThreshold,
        minLayerOverlapDays,
        maxExposedEmergence,
        maxExposedEmergenceOthers,
        seasonControl,
        oneSiteGone,
        otherControl,
        maxSurvivorsPerAcre,
        windowConfidence,
        sizePercentile,
        suitableRainMm,
        suitableRainBeforeMm,
        suitableShareByMonth,
        suitableShareOther,
        queueDays,
        missFoliar,
        missUnderCanopy,
        missSoil,
        catalogAgeMonths,
        passes,
        products,
        dateStepDays,
        days,
        windMinMph,
        windMaxMph);
  }

  /** The thresholds of a book that names none: ours, each to be set by the adviser. */
  public static final HouseRules DEFAULTS =
      new HouseRules(
          0.80,
          0.70,
          2,
          2,
          1,
          0.70,
          7,
          Map.of(WeedId.of("AMAPA"), 0.05, WeedId.of("AMATU"), 0.05),
          0.10,
          0.95,
          0.90,
          0.80,
          200,
          0.80,
          0.90,
          Inches.toCm(1),
          Inches.toCm(5),
          Map.of(4, 0.5, 5, 0.5, 6, 0.6),
          0.5,
          3,
          0.01,
          0.03,
          0.02,
          18,
          4,
          4,
          3,
          7,
          3,
          10);
}
