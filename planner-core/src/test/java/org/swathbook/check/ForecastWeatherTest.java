package org.swathbook.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.swathbook.program.FieldId;
import org.swathbook.program.Mix;
import org.swathbook.program.SprayJob;
import org.swathbook.program.SprayWeather;
import org.swathbook.testing.Sky;
import org.swathbook.weather.HourlyForecast;

class ForecastWeatherTest {
  private static final LocalDate DAY = LocalDate.parse("2027-06-04");
  private static final SprayJob JOB =
      SprayJob.of(new FieldId("CASE"), DAY, Mix.of(List.of())).on(DAY, LocalTime.of(10, 30));

  /** 3 mm at 18:00, 12.7 mm at noon of the third day, hottest at 15:00. */
  private static ForecastHours forecast(int hours) {
    return ForecastHours.fair("2027-06-04", hours)
        .degreesF(15, 16, 88)
        .rain(18, 19, OptionalDouble.of(3))
        .rain(60, 61, OptionalDouble.of(12.7));
  }

  @Test
  void whatTheJobLeavesOutIsTheForecasts() {
    SprayWeather w = ForecastWeather.fill(JOB, forecast(264).build()).weather();

    assertThat(w.windMph().orElseThrow()).isCloseTo(6, within(1e-9));
    assertThat(w.gustMph().orElseThrow()).isCloseTo(8, within(1e-9));
    assertThat(w.windFromDegrees()).hasValue(270);
    assertThat(w.temperatureF().orElseThrow()).isCloseTo(75, within(1e-9));
    assertThat(w.highF().orElseThrow()).isCloseTo(88, within(1e-9));
    assertThat(w.humidityPct()).hasValue(60);
    assertThat(w.hoursToRain()).hasValue(7.5);
    assertThat(w.rainNext24hIn().orElseThrow()).isCloseTo(3 / 25.4, within(1e-9));
    assertThat(w.rainNext48hIn().orElseThrow()).isCloseTo(3 / 25.4, within(1e-9));
    assertThat(w.rainNext10dIn().orElseThrow()).isCloseTo(15.7 / 25.4, within(1e-9));
    assertThat(w.inversion()).isEmpty();
    assertThat(w.coldestNightF()).isEmpty();
  }

  @Test
  void whatSomebodySawStands() {
    SprayWeather seen = Sky.fair().wind(9).high(81).rain(30, 0.4).weather();
    SprayWeather w = ForecastWeather.fill(JOB.with(seen), forecast(264).build()).weather();

    assertThat(w).isEqualTo(seen);
    // Gusts of a forecast do not belong to a wind that was measured.
    assertThat(w.gustMph()).isEmpty();
  }

  /** Rain of seven days at least stands for the next days; of fewer nothing is said. */
  @Test
  void rainOfAShorterForecast() {
    assertThat(rainOfDays(11 + 7 * 24)).isCloseTo(15.7 / 25.4, within(1e-9));
    assertThat(ForecastWeather.fill(JOB, forecast(10 + 7 * 24).build()).weather().rainNext10dIn())
        .isEmpty();
  }

  private static double rainOfDays(int hours) {
    return ForecastWeather.fill(JOB, forecast(hours).build())
        .weather()
        .rainNext10dIn()
        .orElseThrow();
  }

  @Test
  void aDryForecastSaysHowLongItIsDry() {
    HourlyForecast dry = ForecastHours.fair("2027-06-04", 40).build();
    SprayWeather w = ForecastWeather.fill(JOB, dry).weather();

    assertThat(w.hoursToRain()).isEmpty();
    assertThat(w.dryHours()).hasValue(29.5);
    assertThat(
            ForecastWeather.fill(JOB.with(Sky.fair().rain(5, 0.1).weather()), dry)
                .weather()
                .dryHours())
        .isEmpty();
  }

  /** 10 °F-degrees colder from the day on: (75 + 65)/2 on the first day, 65 on the next two. */
  @Test
  void meansOfThreeDaysAreThoseOfTheirExtremes() {
    HourlyForecast colder = ForecastHours.fair("2027-06-01", 264).degreesF(73, 264, 65).build();
    SprayWeather w = ForecastWeather.fill(JOB, colder).weather();

    assertThat(w.meanPast3dF().orElseThrow()).isCloseTo(75, within(1e-9));
    assertThat(w.meanNext3dF().orElseThrow()).isCloseTo((70 + 65 + 65) / 3.0, within(1e-9));
    assertThat(ForecastWeather.fill(JOB, forecast(71).build()).weather().meanNext3dF()).isEmpty();
  }

  @Test
  void windIsAForecastUnlessTheJobNamesIt() {
    HourlyForecast windy = forecast(72).build();
    SprayWeather measured = Sky.fair().wind(9).weather();

    assertThat(ForecastWeather.fill(JOB, windy).weather().windForecast()).isTrue();
    assertThat(ForecastWeather.fill(JOB.with(measured), windy).weather().windForecast()).isFalse();
  }

  /** Nobody knows the hour: the day's high and the rain to come are all that can be said. */
  @Test
  void aJobWithoutATimeTakesItsDay() {
    SprayJob job = SprayJob.of(new FieldId("CASE"), DAY, Mix.of(List.of()));
    SprayWeather w = ForecastWeather.fill(job, forecast(264).build()).weather();

    assertThat(w.highF().orElseThrow()).isCloseTo(88, within(1e-9));
    assertThat(w.rainNext10dIn()).isPresent();
    assertThat(w.windMph()).isEmpty();
    assertThat(w.hoursToRain()).isEmpty();
    assertThat(w.dryHours()).isEmpty();
  }

  @Test
  void aForecastOfOtherDaysSaysNothing() {
    SprayWeather w =
        ForecastWeather.fill(JOB, ForecastHours.fair("2027-06-10", 48).build()).weather();

    assertThat(w).isEqualTo(SprayWeather.UNKNOWN);
  }
}
