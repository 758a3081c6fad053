package org.swathbook.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** The demo weather is what the generator writes, and is what the demo's read-me says of it. */
class DemoWeatherTest {

  @ParameterizedTest
  @EnumSource(DemoStation.class)
  void theCommittedFileIsWhatTheGeneratorWrites(DemoStation station) throws IOException {
    Path file = Path.of("..", "demo-data", "weather", station.id() + ".csv");

    assertThat(Files.readString(file, StandardCharsets.UTF_8))
        .as("to write %s anew: DemoWeatherFiles with the folder as its argument", file)
        .isEqualTo(new String(DemoWeatherFiles.bytes(station), StandardCharsets.UTF_8));
  }

  @ParameterizedTest
  @EnumSource(DemoStation.class)
  void everyDayIsThereOnceAndItsMinimumIsBelowItsMaximum(DemoStation station) {
    List<DemoDay> days = DemoWeather.generate(station);

    assertThat(days)
        .extracting(DemoDay::date)
        .containsExactlyElementsOf(
            InventedYears.FIRST.datesUntil(InventedYears.LAST.plusDays(1)).toList());
    assertThat(days).allMatch(day -> day.tminTenthsC() < day.tmaxTenthsC());
  }

  @ParameterizedTest
  @CsvSource({"SEDGE_FORK,600,700", "DRY_BUTTE,460,540"})
  void theTenYearsAreAsWetAsTheStationIsMeantToBe(DemoStation station, double low, double high) {
    double tenths =
        DemoWeather.generate(station).stream()
            .filter(day -> day.date().getYear() >= 2017)
            .mapToLong(DemoDay::rainTenthsMm)
            .sum();

    assertThat(tenths / 10 / 10).isBetween(low, high);
  }

  @Test
  void sedgeForkHasNoRainInTheSixteenDaysAfterThePassThatSaysSo() {
    assertThat(rainMm(DemoStation.SEDGE_FORK, "2026-05-25", "2026-06-09")).isZero();
  }

  @Test
  void dryAndWetMaysBothOccurAtBothStations() {
    for (DemoStation station : DemoStation.values()) {
      assertThat(rainMm(station, "2018-05-05", "2018-05-24")).isZero();
      // three inches in three days is where a mobile active is taken to leave the surface
      assertThat(rainMm(station, "2019-05-20", "2019-05-22")).isGreaterThan(76);
    }
  }

  private static double rainMm(DemoStation station, String from, String to) {
    LocalDate first = LocalDate.parse(from);
    LocalDate last = LocalDate.parse(to);
    return DemoWeather.generate(station).stream()
            .filter(day -> !day.date().isBefore(first) && !day.date().isAfter(last))
            .mapToLong(DemoDay::rainTenthsMm)
            .sum()
        / 10.0;
  }
}
