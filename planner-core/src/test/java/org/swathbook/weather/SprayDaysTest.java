package org.swathbook.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.OptionalDouble;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SprayDaysTest {
  private static final LocalDate MAY_1 = LocalDate.of(2027, 5, 1);

  private static final double TEN_MPH = 4.4704;

  private static SprayDays rule(IntToDoubleFunction share) {
    return new SprayDays(2.54, 12.7, share, TEN_MPH);
  }

  private static WeatherDay dry(LocalDate date) {
    return new WeatherDay(date, 24, 12, 0);
  }

  private static WeatherDay windy(LocalDate date, double windMs) {
    return new WeatherDay(date, 24, 12, 0, OptionalDouble.of(windMs));
  }

  /** At no share at all, a day with known wind counts; at full share a windy one does not. */
  @Test
  void knownWindDecidesAndTheShareNoMore() {
    for (int i = 0; i < 60; i++) {
      LocalDate date = MAY_1.plusDays(i);
      assertThat(rule(month -> 0).suitable(windy(date, TEN_MPH), 0)).isTrue();
      assertThat(rule(month -> 0).suitable(windy(date, 0), 0)).isTrue();
      assertThat(rule(month -> 1).suitable(windy(date, 4.48), 0)).isFalse();
    }
  }

  @Test
  void rainIsTooMuchInAnyWind() {
    WeatherDay wet = new WeatherDay(MAY_1, 24, 12, 2.54, OptionalDouble.of(1));
    assertThat(rule(month -> 1).suitable(wet, 0)).isFalse();
    assertThat(rule(month -> 1).suitable(windy(MAY_1, 1), 12.7)).isFalse();
  }

  @Test
  void rainExactlyAtALimitIsTooMuch() {
    SprayDays rule = rule(month -> 1);

    assertThat(rule.dryEnough(2.53, 12.69)).isTrue();
    assertThat(rule.dryEnough(2.54, 0)).isFalse();
    assertThat(rule.dryEnough(0, 12.7)).isFalse();
  }

  @Test
  void atFullShareEveryDryDayCountsAndAtNoneNoDay() {
    SprayDays always = rule(month -> 1);
    SprayDays never = rule(month -> 0);

    for (int i = 0; i < 60; i++) {
      assertThat(always.suitable(dry(MAY_1.plusDays(i)), 0)).isTrue();
      assertThat(never.suitable(dry(MAY_1.plusDays(i)), 0)).isFalse();
    }
  }

  /** Low discrepancy: any thirty days in ten years are within two days of it. */
  @ParameterizedTest
  @ValueSource(doubles = {0.3, 0.5, 0.6})
  void everyThirtyDaysKeepTheirShare(double share) {
    SprayDays rule = rule(month -> share);
    for (LocalDate from = LocalDate.of(2017, 1, 1);
        from.getYear() < 2027;
        from = from.plusDays(30)) {
      int days = 0;
      for (int i = 0; i < 30; i++) {
        days += rule.suitable(dry(from.plusDays(i)), 0) ? 1 : 0;
      }
      assertThat((double) days).isCloseTo(30 * share, within(2.0));
    }
  }

  @Test
  void aDayThatCountsAtAShareCountsAtEveryHigherOne() {
    for (int i = 0; i < 200; i++) {
      LocalDate date = MAY_1.plusDays(i);
      if (rule(month -> 0.4).suitable(dry(date), 0)) {
        assertThat(rule(month -> 0.6).suitable(dry(date), 0)).isTrue();
      }
    }
  }

  @Test
  void theMonthChoosesTheShare() {
    SprayDays juneOnly = rule(month -> month == 6 ? 1 : 0);

    assertThat(juneOnly.suitable(dry(LocalDate.of(2027, 5, 31)), 0)).isFalse();
    assertThat(juneOnly.suitable(dry(LocalDate.of(2027, 6, 1)), 0)).isTrue();
  }

  /** The rule written out for one day: 20,937 days since 1970 times the golden ratio. */
  @Test
  void thePatternCanBeRepeatedByHand() {
    LocalDate date = LocalDate.of(2027, 4, 29);
    assertThat(date.toEpochDay()).isEqualTo(20_937);

    assertThat(SprayDays.mark(date)).isCloseTo(20_937 * 0.6180339887498949 - 12_939, within(1e-9));
  }
}
