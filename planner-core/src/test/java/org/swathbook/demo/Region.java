package org.swathbook.demo;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * What both stations share day by day: the passing warm and cold air, and the chance of rain. One
 * entry per day from {@link InventedYears#FIRST}.
 *
 * @param air first-order autoregressive anomalies of unit variance
 * @param wetChance uniform draws, low for rain
 */
record Region(List<Double> air, List<Double> wetChance) {
  private static final long SEED = 20_160_949L;

  /** Correlation of one day's anomaly with the next; common practice, no source. */
  static final double PERSISTENCE = 0.65;

  static Region draw() {
    Draws draws = new Draws(SEED);
    List<Double> air = autoregressive(draws, days());
    List<Double> chance = new ArrayList<>();
    for (int i = 0; i < days(); i++) {
      chance.add(draws.uniform());
    }
    return new Region(air, List.copyOf(chance));
  }

  static int days() {
    return (int) (InventedYears.LAST.toEpochDay() - InventedYears.FIRST.toEpochDay()) + 1;
  }

  static LocalDate day(int index) {
    return InventedYears.FIRST.plusDays(index);
  }

  static List<Double> autoregressive(Draws draws, int length) {
    double innovation = StrictMath.sqrt(1 - PERSISTENCE * PERSISTENCE);
    List<Double> series = new ArrayList<>();
    double value = draws.normal();
    for (int i = 0; i < length; i++) {
      series.add(value);
      value = PERSISTENCE * value + innovation * draws.normal();
    }
    return List.copyOf(series);
  }
}
