package org.swathbook.growth;

import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;
import org.swathbook.catalog.Weed;

/**
 * The cohorts of one weed in one field and weather year: plants that came up in the same few days.
 * Days count from 1 September before the season.
 *
 * <p>Scouting may have changed them: plants whose size was seen have it from that day on, and where
 * plants were counted, cohorts of the count stand from that day on in the place of all that were
 * up. The season's emergence stays that of the model.
 */
public final class CohortSet {
  private final Weed weed;
  private final HeightModel model;
  private final int[] emergedOn;
  private final double[] perM2;
  private final double[] tillageSurvival;
  private final double[] thermal;
  private final @Nullable Seen seen;

  /**
   * The arrays are handed over: nobody writes to them any more.
   *
   * @param emergedOn day on which each cohort counts as up, rising
   * @param perM2 plants per m² of each cohort, all biotypes
   * @param tillageSurvival share that lives through the tillage of this field, 0 to 1
   * @param thermal °C-days of growth summed to the end of each day, on the weed's own base, slowed
   *     under the canopy
   */
  CohortSet(
      Weed weed, int[] emergedOn, double[] perM2, double[] tillageSurvival, double[] thermal) {
    this(weed, emergedOn, perM2, tillageSurvival, thermal, null);
  }

  /**
   * @param emergedOn of a counted cohort the day of the count
   * @param perM2 0 for a counted cohort
   */
  CohortSet(
      Weed weed,
      int[] emergedOn,
      double[] perM2,
      double[] tillageSurvival,
      double[] thermal,
      @Nullable Seen seen) {
    this.weed = weed;
    this.model = new HeightModel(weed.height());
    this.emergedOn = emergedOn;
    this.perM2 = perM2;
    this.tillageSurvival = tillageSurvival;
    this.thermal = thermal;
    this.seen = seen;
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

  /** Day from which the cohort stands: that of its emergence, or that on which it was counted. */
  public int emergedOn(int cohort) {
    return emergedOn[cohort];
  }

  /** Plants per m² that come up, all biotypes; 0 for a counted cohort, which the model knows. */
  public double perM2(int cohort) {
    return perM2[cohort];
  }

  /** Share that lives through the tillage of this field, 0 to 1. */
  public double tillageSurvival(int cohort) {
    return tillageSurvival[cohort];
  }

  /** Whether somebody has seen this weed. */
  public boolean isScouted() {
    return seen != null;
  }

  /** Whether the cohort was counted and is none that the model let come up. */
  public boolean isCounted(int cohort) {
    return seen != null && seen.counted[cohort] > 0;
  }

  /** Day on which a count replaced the cohort; {@link Integer#MAX_VALUE} for never. */
  public int endsOn(int cohort) {
    return seen == null ? Integer.MAX_VALUE : seen.endsOn[cohort];
  }

  /** Number of cohorts that counts up to and with a day have replaced: they are the first ones. */
  public int endedBy(int day) {
    int n = 0;
    while (seen != null && n < count() && seen.endsOn[n] <= day) {
      n++;
    }
    return n;
  }

  /** Day of emergence by which the plants compete. */
  public int competesFrom(int cohort) {
    return seen == null ? emergedOn[cohort] : seen.competesFrom[cohort];
  }

  /** First of the cohorts that stand in the place of one that ended. */
  public int heirsFrom(int cohort) {
    return seen == null ? 0 : seen.heirsFrom[cohort];
  }

  /** The one after the last of them; no more than the first for none. */
  public int heirsTo(int cohort) {
    return seen == null ? 0 : seen.heirsTo[cohort];
  }

  /** First day on which somebody has seen this weed; empty for never. */
  public OptionalInt firstSeenOn() {
    return seen == null || seen.scoutedOn.length == 0
        ? OptionalInt.empty()
        : OptionalInt.of(seen.scoutedOn[0]);
  }

  /** How often the weed was scouted up to and with a day. */
  public int scoutingsBy(int day) {
    return seen == null ? 0 : Seen.last(seen.scoutedOn, day) + 1;
  }

  /** Plants per m² of the cohort when it begins, before tillage, all biotypes. */
  public double atFirst(int cohort) {
    return seen != null && seen.counted[cohort] > 0 ? seen.counted[cohort] : perM2[cohort];
  }

  /**
   * Plants per m² of a cohort that stand at the end of a day when nothing was sprayed.
   *
   * @param tilledOn planting day, on which tillage takes its part
   */
  public double standing(int cohort, int day, int tilledOn) {
    if (emergedOn[cohort] > day || endsOn(cohort) <= day) {
      return 0;
    }
    double n = atFirst(cohort);
    return day >= tilledOn ? n * tillageSurvival[cohort] : n;
  }

  /** °C-days that a plant of the cohort has grown by the end of a day; 0 before it is up. */
  public double age(int cohort, int day) {
    if (seen != null) {
      int[] sizedOn = seen.sizedOn[cohort];
      int at = Seen.last(sizedOn, day);
      if (at >= 0) {
        return seen.ageThen[cohort][at] + (thermal[day] - thermal[sizedOn[at]]);
      }
    }
    return day <= emergedOn[cohort] ? 0 : thermal[day] - thermal[emergedOn[cohort]];
  }

  /** Height in cm of a plant never sprayed. */
  public double heightCm(int cohort, int day) {
    return model.heightCm(age(cohort, day));
  }

  /**
   * Height in cm that a plant never sprayed had on an earlier day; 0 before it was up.
   *
   * @param heightCm which it has on the later day
   */
  public double heightCmBefore(double heightCm, int later, int day) {
    return model.heightCm(model.ageAt(heightCm) - (thermal[later] - thermal[day]));
  }

  /** All plants of the season per m². */
  public double totalPerM2() {
    double sum = 0;
    for (double d : perM2) {
      sum += d;
    }
    return sum;
  }

  /** Not to be written to. */
  double[] thermal() {
    return thermal;
  }
}
