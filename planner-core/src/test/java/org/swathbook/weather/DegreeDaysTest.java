package org.swathbook.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/**
 * Published examples, each row with its source. Left out: a farm-press page that prints 17.5 for 90
 * and 55 °F, which is its own answer for 80 and 55; the four-case method of Met Éireann and daily
 * sums printed without temperatures, which this program does not use.
 */
class DegreeDaysTest {

  @ParameterizedTest(name = "{0} {1}/{2} {3}: {6} ({7})")
  @CsvFileSource(resources = "/published/degree_days.csv", numLinesToSkip = 1)
  void publishedExamples(
      String method,
      double tmax,
      double tmin,
      String unit,
      double base,
      @Nullable Double ceiling,
      double expected,
      String source) {
    double inPrintedUnits =
        switch (method) {
          case "AVERAGE" -> DegreeDays.average(tmax, tmin, base);
          case "CLAMPED" -> DegreeDays.clamped(tmax, tmin, base, required(ceiling));
          case "SINGLE_SINE" ->
              ceiling == null
                  ? DegreeDays.singleSine(tmax, tmin, base)
                  : DegreeDays.singleSine(tmax, tmin, base, ceiling);
          default -> throw new IllegalArgumentException(method);
        };
    assertThat(inPrintedUnits).as(source + " in " + unit).isCloseTo(expected, within(0.001));
  }

  private static double required(@Nullable Double value) {
    if (value == null) {
      throw new IllegalArgumentException("a ceiling is needed");
    }
    return value;
  }

  /** Three days of the Wisconsin column: 25.5, 11 and 6.5 make the printed 43. */
  @Test
  void aPrintedSumOfThreeDays() {
    double sum =
        DegreeDays.clamped(90, 65, 50, 86)
            + DegreeDays.clamped(72, 46, 50, 86)
            + DegreeDays.clamped(63, 42, 50, 86);

    assertThat(sum).isEqualTo(43);
  }

  /** 350 °F-days are 194.4 °C-days: a degree Fahrenheit is 5/9 of a degree Celsius. */
  @Test
  void fahrenheitDaysBecomeCelsiusDays() {
    assertThat(20 * DegreeDays.average(75, 60, 50)).isEqualTo(350);
    assertThat(20 * DegreeDays.average((75 - 32) / 1.8, (60 - 32) / 1.8, 10))
        .isCloseTo(194.4, within(0.05));
  }
}
