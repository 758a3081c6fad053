package org.swathbook.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.swathbook.weather.HourlyForecast.Hour;

class HourlyForecastTest {
  private static final LocalDateTime START = LocalDateTime.parse("2027-06-08T00:00");

  private static Hour hour(int after, OptionalDouble rainMm) {
    OptionalDouble none = OptionalDouble.empty();
    return new Hour(
        START.plusHours(after),
        OptionalDouble.of(15 + after % 24),
        none,
        OptionalDouble.of(after),
        none,
        none,
        rainMm);
  }

  /** Dry but for 1 mm in the hours named. */
  private static List<Hour> hours(int count, Integer... wet) {
    List<Hour> out = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      out.add(hour(i, OptionalDouble.of(List.of(wet).contains(i) ? 1 : 0)));
    }
    return out;
  }

  private static LocalDateTime at(String clock) {
    return LocalDateTime.parse("2027-06-08T" + clock);
  }

  @Test
  void anHourReachesToTheNext() {
    HourlyForecast f = new HourlyForecast(hours(24));

    assertThat(f.at(at("10:00")).orElseThrow().windMs()).hasValue(10);
    assertThat(f.at(at("10:59:59")).orElseThrow().windMs()).hasValue(10);
    assertThat(f.at(at("11:00")).orElseThrow().windMs()).hasValue(11);
    assertThat(f.at(at("10:00").plusDays(1))).isEmpty();
  }

  @Test
  void rainIsCountedFromTheVeryMinute() {
    HourlyForecast f = new HourlyForecast(hours(48, 15));

    assertThat(f.hoursToRain(at("10:00"))).hasValue(5);
    assertThat(f.hoursToRain(at("10:30"))).hasValue(4.5);
    assertThat(f.hoursToRain(at("14:59")).orElseThrow()).isCloseTo(1 / 60.0, within(1e-9));
    assertThat(f.hoursToRain(at("15:20"))).hasValue(0);
  }

  @Test
  void aForecastThatEndsDrySaysHowLongItIsDry() {
    HourlyForecast f = new HourlyForecast(hours(48));

    assertThat(f.hoursToRain(at("10:00"))).isEmpty();
    assertThat(f.dryHours(at("10:00"))).hasValue(38);
    assertThat(f.dryHours(at("10:15"))).hasValue(37.75);
    assertThat(f.dryHours(START.plusHours(48))).isEmpty();
    assertThat(f.dryHours(START.minusHours(2))).isEmpty();
    assertThat(new HourlyForecast(hours(48, 15)).dryHours(at("15:30"))).hasValue(0);
  }

  @Test
  void aHoleIsNotDry() {
    List<Hour> holed = hours(72, 20);
    holed.remove(12);
    HourlyForecast gone = new HourlyForecast(holed);
    List<Hour> blank = hours(72, 20);
    blank.set(12, hour(12, OptionalDouble.empty()));
    HourlyForecast silent = new HourlyForecast(blank);

    for (HourlyForecast f : List.of(gone, silent)) {
      assertThat(f.hoursToRain(at("10:00"))).isEmpty();
      assertThat(f.dryHours(at("10:00"))).hasValue(2);
      assertThat(f.hoursToRain(at("13:00"))).hasValue(7);
      assertThat(f.rainMm(at("10:00"), 2)).hasValue(0);
      assertThat(f.rainMm(at("10:00"), 3)).isEmpty();
      assertThat(f.rainMm(at("13:00"), 24)).hasValue(1);
    }
  }

  @Test
  void rainOfHoursThatAreBegunCountsWhole() {
    HourlyForecast f = new HourlyForecast(hours(48, 10, 34));

    assertThat(f.rainMm(at("10:00"), 24)).hasValue(1);
    assertThat(f.rainMm(at("10:30"), 24)).hasValue(2);
    assertThat(f.rainMm(at("11:00"), 24)).hasValue(1);
    assertThat(f.rainMm(at("11:00"), 48)).isEmpty();
  }

  /** 0.2 mm, 0.01 in rounded, is the least that a gauge tips for (common practice, no source). */
  @Test
  void lessThanAGaugeTellsIsNoRain() {
    List<Hour> hours = hours(48);
    hours.set(12, hour(12, OptionalDouble.of(0.19)));
    hours.set(14, hour(14, OptionalDouble.of(0.2)));

    assertThat(new HourlyForecast(hours).hoursToRain(at("10:00"))).hasValue(4);
  }

  @Test
  void theHighIsThatOfTheHoursOfTheDay() {
    HourlyForecast f = new HourlyForecast(hours(30));

    assertThat(f.highC(LocalDate.parse("2027-06-08"))).hasValue(38);
    assertThat(f.highC(LocalDate.parse("2027-06-09"))).hasValue(20);
    assertThat(f.highC(LocalDate.parse("2027-06-10"))).isEmpty();
  }

  @Test
  void theOrderOfTheHoursDoesNotMatter() {
    List<Hour> mixed = hours(48, 15, 40);
    Collections.shuffle(mixed, new Random(7));

    assertThat(new HourlyForecast(mixed).hours()).isEqualTo(hours(48, 15, 40));
  }

  @Test
  void hoursAreFullAndThereOnce() {
    assertThatThrownBy(
            () ->
                new Hour(
                    at("10:30"),
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    OptionalDouble.empty()))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(
            () ->
                new HourlyForecast(
                    List.of(hour(1, OptionalDouble.of(0)), hour(1, OptionalDouble.of(2)))))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
