package org.swathbook.control;

import java.util.List;
import java.util.Set;
import org.swathbook.catalog.Ingredient;
import org.swathbook.measure.Unit;
import org.swathbook.model.ModelCard;
import org.swathbook.model.ModelSection;
import org.swathbook.weather.WeatherDay;

/**
 * A day on which weeds stand still and take up little: under 60 F, or after a night under 40 F
 * (common practice, no source).
 */
public final class ColdDay {
  public static final double DAY_F = 60;
  public static final double NIGHT_F = 40;

  private static final Set<Integer> SLOW_SITES = Set.of(9, 10, 27);

  private ColdDay() {}

  public static boolean is(WeatherDay day) {
    return Unit.FAHRENHEIT.fromSi(day.tmaxC()) < DAY_F
        || Unit.FAHRENHEIT.fromSi(day.tminC()) < NIGHT_F;
  }

  /** What the reference prints. */
  static List<ModelCard> cards() {
    return List.of(
        ModelCard.of(
                ModelSection.LEAVES,
                ColdDay.class,
                "cold day",
                "under a by day, or after a night under b",
                "default; common practice, no source")
            .with("a", DAY_F, "°F")
            .with("b", NIGHT_F, "°F"));
  }

  /** Whether an active is of a site that such a day slows through leaves. */
  public static boolean slows(Ingredient active) {
    return SLOW_SITES.contains(active.site().number());
  }
}
