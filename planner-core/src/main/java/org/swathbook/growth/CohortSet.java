package org.swathbook.growth;

import org.swathbook.catalog.Weed;

/**
 * The cohorts of one weed in one field and weather year: plants that came up in the same few days.
 * Days count from 1 September before the season.
 */
public final class CohortSet {
  private final Weed weed;
  private final HeightModel model;
  private final int[] emergedOn;
  private final double[] perM2;
  private final double[] tillageSurvival;
  private final double[] thermal;

  /**
   * @param emergedOn day on which each cohort counts as up, rising
   * @param perM2 plants per m² of each cohort, all biotypes
   * @param tillageSurvival share that lives through the tillage of this field, 0 to 1
   * @param thermal °C-days of growth summed to the end of each day, on the weed's own base, slowed
   *     under the canopy
   */
  CohortSet(
      Weed weed, int[] emergedOn, double[] perM2, double[] tillageSurvival, double[] thermal) {
    this.weed = weed;
    this.model = new HeightModel(weed.height());
    this.emergedOn = emergedOn.clone();
    this.perM2 = perM2.clone();
    this.tillageSurvival = tillageSurvival.clone();
    this.thermal = thermal.clone();
  }

  public Weed weed() {
    return weed;
  }

  public HeightModel model() {
    return model;
  }

  public int count() {
    return emergedOn.length;
  }

  public int emergedOn(int cohort) {
    return emergedOn[cohort];
  }

  public double perM2(int cohort) {
    return perM2[cohort];
  }

  public double tillageSurvival(int cohort) {
    return tillageSurvival[cohort];
  }

  /** °C-days that a plant of the cohort has grown by the end of a day; 0 before it is up. */
  public double age(int cohort, int day) {
    return day <= emergedOn[cohort] ? 0 : thermal[day] - thermal[emergedOn[cohort]];
  }

  /** Height in cm of a plant never sprayed. */
  public double heightCm(int cohort, int day) {
    return model.heightCm(age(cohort, day));
  }

  /** All plants of the season per m². */
  public double totalPerM2() {
    double sum = 0;
    for (double d : perM2) {
      sum += d;
    }
    return sum;
  }
}
