package org.swathbook.weather;

import java.util.List;
import org.swathbook.model.ModelCard;
import org.swathbook.model.ModelSection;

/**
 * Daily mean temperature of bare topsoil, which follows the air with a lag: {@code Ts(J) = Ts(J-1)
 * + 0.25 (Ta(J) - Ts(J-1))} (after Zheng, Hunt and Running 1993, Climate Research 2: 183–191; the
 * daily form from memory).
 */
public final class SoilTemperature {
  /** Share of the difference to the air that a day takes off. */
  public static final double SHARE_PER_DAY = 0.25;

  private final Parameters parameters;

  /**
   * @param sharePerDay share of the difference to the air that a day takes off, 0 to 1
   */
  public record Parameters(double sharePerDay) {
    /** Bare topsoil. */
    public static final Parameters BARE = new Parameters(SHARE_PER_DAY);
  }

  /**
   * @param meanC mean of the day, °C
   */
  public record State(double meanC) {}

  /**
   * @param warmingC change from one day's mean to the next, °C/day
   */
  public record Rates(double warmingC) {}

  public SoilTemperature(Parameters parameters) {
    this.parameters = parameters;
  }

  /** Before the first day of a record: as warm as that day's air. */
  public State before(WeatherDay first) {
    return new State(first.tmeanC());
  }

  public Rates rates(State yesterday, WeatherDay today) {
    return new Rates(parameters.sharePerDay * (today.tmeanC() - yesterday.meanC));
  }

  public State integrate(State yesterday, Rates rates) {
    return new State(yesterday.meanC + rates.warmingC);
  }

  /** What the reference prints. */
  static List<ModelCard> cards() {
    return List.of(
        ModelCard.of(
                ModelSection.WEATHER,
                SoilTemperature.class,
                "soil temperature",
                "rate a (Ta − Ts) a day, bare soil",
                "after Zheng, Hunt & Running 1993, daily form from memory")
            .with("a", SHARE_PER_DAY, "a day")
            .given("starts at the air mean of the first day"));
  }
}
