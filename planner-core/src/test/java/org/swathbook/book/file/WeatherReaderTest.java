package org.swathbook.book.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.swathbook.source.Problems;
import org.swathbook.weather.ObservedDay;
import org.swathbook.weather.StationWeather;
import org.swathbook.weather.WeatherDay;

class WeatherReaderTest {
  @TempDir Path dir;

  private final Problems problems = new Problems();
  private final List<String> notes = new ArrayList<>();

  private List<ObservedDay> rows(String weather) {
    new BookOnDisk(dir).with("weather/hill.csv", weather);
    List<ObservedDay> rows = WeatherReader.rows(dir, "hill", problems, notes);
    assertThat(problems.report()).isEmpty();
    return rows;
  }

  private Optional<StationWeather> station(String weather) {
    new BookOnDisk(dir).with("weather/hill.csv", weather);
    return WeatherReader.read(dir, "hill", problems, notes);
  }

  /** The book's sound year with some of its rows changed; an empty text takes one out. */
  private static String year(String... dateAndRow) {
    String text = BookOnDisk.soundText("weather/hill.csv");
    for (int i = 0; i < dateAndRow.length; i += 2) {
      String row = dateAndRow[i + 1].isEmpty() ? "" : dateAndRow[i + 1] + "\n";
      text = text.replaceAll(dateAndRow[i] + ".*\n", row);
    }
    return text;
  }

  @Test
  void inchesFahrenheitAndMilesPerHour() {
    ObservedDay day = rows("date,rain_in,tmin_f,tmax_f,wind_mph\n2026-05-01,0.5,50,86,10\n").get(0);
    assertThat(day.tmaxC().orElseThrow()).isEqualTo(30, within(1e-12));
    assertThat(day.tminC().orElseThrow()).isEqualTo(10, within(1e-12));
    assertThat(day.rainMm().orElseThrow()).isEqualTo(12.7, within(1e-12));
    assertThat(day.windMs().orElseThrow()).isEqualTo(4.4704, within(1e-12));
  }

  @Test
  void aTraceIsNoRainAndIrrigationStandsBesideIt() {
    List<ObservedDay> days =
        rows(
            """
            date,tmax_c,tmin_c,rain_mm,irrigation_in
            2026-05-01,20,8,T,0.5
            2026-05-02,20,8,3,
            """);
    assertThat(days.get(0).rainMm()).hasValue(0);
    assertThat(days.get(0).irrigationMm()).isEqualTo(12.7, within(1e-12));
    assertThat(days.get(1).rainMm()).hasValue(3);
    assertThat(days.get(1).irrigationMm()).isZero();
  }

  @Test
  void blankCellsAreMissing() {
    ObservedDay day = rows("date,tmax_c,tmin_c,rain_mm,wind_ms\n2026-05-01,,8,,\n").get(0);
    assertThat(day.tmaxC()).isEmpty();
    assertThat(day.tminC()).hasValue(8);
    assertThat(day.rainMm()).isEmpty();
    assertThat(day.windMs()).isEmpty();
  }

  @Test
  void aRecordWithoutGapsHasNothingToSay() {
    StationWeather weather = station(year()).orElseThrow();
    assertThat(notes).isEmpty();
    assertThat(weather.days()).hasSize(426);
    assertThat(weather.days()).allMatch(d -> d.tmaxC() == 20 && d.tminC() == 8 && d.rainMm() == 0);
  }

  @Test
  void humidityAloneIsNotUsed() {
    String text = year().replace("rain_mm\n", "rain_mm,rh_pct,wind_ms\n");
    text = text.replaceAll("(?m)(\\d|T)$", "$1,55,3.5");
    StationWeather weather = station(text).orElseThrow();

    assertThat(weather.days()).allMatch(d -> d.windMs().orElse(0) == 3.5);
    assertThat(notes)
        .containsExactly(
            "weather/hill.csv: humidity is not used yet.",
            "weather/hill.csv: wind is the mean of a day, which hides calm hours and gusts; a day"
                + " counts for spraying up to the house's most wind.");
  }

  @Test
  void whatWasFilledInIsNoted() {
    StationWeather weather =
        station(
                year(
                    "2026-05-10", "2026-05-10,,8,0",
                    "2026-05-11", "",
                    "2026-06-03", "2026-06-03,20,8,"))
            .orElseThrow();

    assertThat(weather.days()).hasSize(426);
    assertThat(weather.find(LocalDate.of(2026, 5, 11)))
        .contains(new WeatherDay(LocalDate.of(2026, 5, 11), 20, 8, 0));
    assertThat(notes)
        .containsExactly(
            "weather/hill.csv: temperature of 2 days filled in (2026-05-10 to 2026-05-11); rain of"
                + " 2 days unknown and taken for none (2026-05-11, 2026-06-03): layers may be"
                + " active and seedlings up sooner than shown.");
  }

  @Test
  void aYearLeftOutIsNamedWithWhy() {
    StringBuilder text = new StringBuilder("date,tmax_c,tmin_c,rain_mm\n");
    LocalDate end = LocalDate.of(2026, 10, 31);
    for (LocalDate d = LocalDate.of(2024, 9, 1); !d.isAfter(end); d = d.plusDays(1)) {
      boolean gone = d.getYear() == 2025 && d.getMonthValue() == 5 && d.getDayOfMonth() < 10;
      text.append(gone ? "" : d + ",20,8,0\n");
    }
    StationWeather weather = station(text.toString()).orElseThrow();

    assertThat(weather.scenarioYears()).containsExactly(2026);
    assertThat(notes)
        .containsExactly(
            "weather/hill.csv: 2025 left out: no temperature on 9 days in a row from 2025-05-01.");
  }

  @Test
  void withoutAFullYearThereIsNothingToPlanBy() {
    assertThat(station(year("2026-05-1\\d", ""))).isEmpty();
    assertThat(problems.report())
        .containsExactly(
            "weather/hill.csv:1:1: no weather year from 1 September to 31 October of the next year"
                + " is there in full: 2026 left out: no temperature on 10 days in a row from"
                + " 2026-05-10; take a longer record, or a fuller one");
  }

  @Test
  void aRecordThatIsTooShort() {
    assertThat(station("date,tmax_c,tmin_c,rain_mm\n2026-05-01,20,8,0\n")).isEmpty();
    assertThat(problems.report())
        .containsExactly(
            "weather/hill.csv:1:1: no weather year from 1 September to 31 October of the next year"
                + " is there in full; take a longer record, or a fuller one");
  }

  @Test
  void rainWithoutAnyTemperature() {
    assertThat(station("date,tmax_c,tmin_c,rain_mm\n2026-05-01,20,,0\n2026-05-02,,8,0\n"))
        .isEmpty();
    assertThat(problems.report())
        .containsExactly(
            "weather/hill.csv:1:1: no day has both temperatures; take a longer record, or a fuller"
                + " one");
  }

  @Test
  void daysAfterTheLastTemperatureAreNamed() {
    station(year() + "2026-11-01,,,4\n");
    assertThat(notes)
        .containsExactly(
            "weather/hill.csv: nothing used after 2026-10-31, the last day with both"
                + " temperatures.");
  }

  @Test
  void aMistypedCentury() {
    station(year() + "6202-11-01,20,8,0\n");
    assertThat(problems.report())
        .containsExactly(
            "weather/hill.csv:1:1: the days run from 2025-09-01 to 6202-11-01; mend the date that"
                + " is wrong");
  }

  @Test
  void aHeaderWithoutRows() {
    station("date,tmax_c,tmin_c,rain_mm\n");
    assertThat(problems.report())
        .containsExactly(
            "weather/hill.csv:1:1: the station has no day of weather; write a row for every day,"
                + " from the first to the last");
  }

  @Test
  void windInTwoUnits() {
    station("date,tmax_c,tmin_c,rain_mm,wind_ms,wind_mph\n2026-05-01,20,8,0,3,7\n");
    assertThat(problems.report())
        .containsExactly(
            "weather/hill.csv:2:19: the wind stands in mph too; leave one of the two cells blank");
  }
}
