package org.swathbook.growth;

import java.util.List;
import org.swathbook.model.ModelCard;
import org.swathbook.model.ModelSection;
import org.swathbook.weather.WeatherDay;

/**
 * The one water clock of soil actives and of seeds: the rain and irrigation of the last ten days
 * against a need. Dry soil that does not activate a layer does not let small seeds up either.
 *
 * <p>Ten days and 12 mm: default, after the half inch within 7 to 10 days that Purdue University
 * names for activation.
 */
public final class RainClock {
  /** Days that count, the last one included. */
  public static final int DAYS = 10;

  /** Rain that lets every waiting seedling up, mm. */
  public static final double SEEDLING_NEED_MM = 12;

  private RainClock() {}

  /** Share of the need that the last ten days have brought, 0 to 1; 1 when nothing is needed. */
  public static double share(SeasonTrace trace, int day, double needMm) {
    return share(trace.rainAfter(day - DAYS, day), needMm);
  }

  static double share(double rainOfTenDaysMm, double needMm) {
    return needMm <= 0 ? 1 : Math.min(1, rainOfTenDaysMm / needMm);
  }

  /** Rain of a day and the nine before it, mm. */
  static double rainMm(List<WeatherDay> days, int day) {
    double sum = 0;
    for (int d = Math.max(0, day - DAYS + 1); d <= day; d++) {
      sum += days.get(d).rainMm();
    }
    return sum;
  }

  /** What the reference prints. */
  static List<ModelCard> cards() {
    return List.of(
        ModelCard.of(
                ModelSection.WEEDS,
                RainClock.class,
                "dry soil",
                "of all seedlings that wait, a day brings min(1, rain of the last days / need); the rest waits",
                "default, after Purdue University's half inch in 7–10 days")
            .with("the last", DAYS, "days")
            .with("need", SEEDLING_NEED_MM, "mm")
            .given("the same clock that activates soil actives"));
  }
}
