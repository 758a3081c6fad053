package org.swathbook.weather;

import java.time.LocalDate;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import org.swathbook.model.ModelCard;
import org.swathbook.model.ModelSection;

/**
 * Days on which a sprayer can work: little rain, not too much the day before, and no more than so
 * much wind on the day's mean. Of days whose wind is not known only a share counts.
 *
 * <p>The share is taken by a fixed thinning that anybody can repeat: the day with number n since 1
 * January 1970 counts if the fraction of {@code n · 0.6180339887498949} is below the share of its
 * month. Multiples of the golden ratio spread evenly over 0 to 1, so every stretch of days keeps
 * about its share, and a day that counts at a share counts at every higher one. All fields and
 * stations share the pattern, since wind is a matter of the region; a corrected rain changes its
 * own days only.
 *
 * <p>Where the wind is known the share does not thin: what work leaves of the days is the matter of
 * the house's queue. There is no least wind, since the mean of a calm night and a breezy day says
 * nothing of the hours between.
 */
public final class SprayDays {
  private static final double GOLDEN = 0.6180339887498949;

  private final double lessThanMm;
  private final double lessThanBeforeMm;
  private final IntToDoubleFunction shareOfMonth;
  private final double mostWindMs;

  /**
   * @param lessThanMm a spray day has less rain than this
   * @param lessThanBeforeMm and the day before less than this
   * @param shareOfMonth share of such days that count where wind is not known, by month 1 to 12
   * @param mostWindMs most mean wind of a spray day where it is known
   */
  public SprayDays(
      double lessThanMm,
      double lessThanBeforeMm,
      IntToDoubleFunction shareOfMonth,
      double mostWindMs) {
    this.lessThanMm = lessThanMm;
    this.lessThanBeforeMm = lessThanBeforeMm;
    this.shareOfMonth = shareOfMonth;
    this.mostWindMs = mostWindMs;
  }

  /** Whether rain allows it: less than the limits on the day and on the day before. */
  public boolean dryEnough(double rainMm, double rainBeforeMm) {
    return rainMm < lessThanMm && rainBeforeMm < lessThanBeforeMm;
  }

  /** The day's fixed number from 0 to 1, which is compared with the share of its month. */
  public static double mark(LocalDate date) {
    double x = date.toEpochDay() * GOLDEN;
    return x - Math.floor(x);
  }

  /** Whether a day counts. Irrigation is rain here: nobody sprays under a running pivot. */
  public boolean suitable(WeatherDay day, double rainBeforeMm) {
    return dryEnough(day.rainMm(), rainBeforeMm)
        && (day.windMs().isPresent()
            ? day.windMs().getAsDouble() <= mostWindMs
            : mark(day.date()) < shareOfMonth.applyAsDouble(day.date().getMonthValue()));
  }

  /** What the reference prints. */
  static List<ModelCard> cards() {
    return List.of(
        ModelCard.of(
                ModelSection.WEATHER,
                SprayDays.class,
                "spray day",
                "rain below the house limit, the day before below its own, and mean wind at most the house limit; where wind is not known, frac(n · φ) < the house share of the month, n days since 1 January 1970",
                "default")
            .with("φ", GOLDEN, "")
            .given("limits and shares are house rules"));
  }
}
