package org.swathbook.book.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.swathbook.source.ProblemsException;
import org.swathbook.weather.HourlyForecast;
import org.swathbook.weather.HourlyForecast.Hour;

class HourlyReaderTest {
  @TempDir Path book;

  private Optional<HourlyForecast> read(String table) throws IOException {
    Path folder = Files.createDirectories(book.resolve("weather"));
    Files.write(folder.resolve("hill-hourly.csv"), table.getBytes(StandardCharsets.UTF_8));
    return HourlyReader.read(book, "hill");
  }

  private List<String> problems(String table) {
    ProblemsException e = catchThrowableOfType(ProblemsException.class, () -> read(table));
    return e.problems().stream().map(Object::toString).toList();
  }

  /** One mile an hour is 0.44704 m/s, one inch 25.4 mm, exactly (NIST Special Publication 811). */
  @Test
  void usUnits() throws IOException {
    Hour h =
        read("""
                time,temp_f,rh_pct,wind_mph,gust_mph,from,rain_in
                2027-06-08T10:00,77,55,10,15,NNW,0.5
                """)
            .orElseThrow()
            .hours()
            .get(0);

    assertThat(h.time()).hasToString("2027-06-08T10:00");
    assertThat(h.temperatureC().orElseThrow()).isCloseTo(25, within(1e-9));
    assertThat(h.humidityPct()).hasValue(55);
    assertThat(h.windMs().orElseThrow()).isCloseTo(4.4704, within(1e-9));
    assertThat(h.gustMs().orElseThrow()).isCloseTo(6.7056, within(1e-9));
    assertThat(h.windFromDegrees()).hasValue(337.5);
    assertThat(h.rainMm().orElseThrow()).isCloseTo(12.7, within(1e-9));
  }

  @Test
  void metricUnitsInAnyOrderWithBlanks() throws IOException {
    List<Hour> hours =
        read("""
                \uFEFFrain_mm,from,wind_ms,time,temp_c
                2.5,280 degrees,3,2027-06-08 11:00,21.5
                ,,,2027-06-08T10:00,
                """
                .replace("\n", "\r\n"))
            .orElseThrow()
            .hours();

    assertThat(hours).hasSize(2);
    Hour blank = hours.get(0);
    assertThat(blank.time()).hasToString("2027-06-08T10:00");
    assertThat(blank.temperatureC()).isEmpty();
    assertThat(blank.windMs()).isEmpty();
    assertThat(blank.windFromDegrees()).isEmpty();
    assertThat(blank.rainMm()).isEmpty();
    Hour full = hours.get(1);
    assertThat(full.temperatureC()).hasValue(21.5);
    assertThat(full.windMs()).hasValue(3);
    assertThat(full.windFromDegrees()).hasValue(280);
    assertThat(full.rainMm()).hasValue(2.5);
    assertThat(full.gustMs()).isEmpty();
    assertThat(full.humidityPct()).isEmpty();
  }

  @Test
  void aBookNeedsNone() {
    assertThat(HourlyReader.read(book, "hill")).isEmpty();
    assertThat(HourlyReader.read(book, "../hill")).isEmpty();
  }

  @Test
  void everyMistakeIsNamedWithItsPlace() {
    List<String> said =
        problems(
            """
            time,temp_f,rh_pct,wind_mph,from,rain_in
            2027-06-08T10:30,77,55,10,W,0
            2027-06-08T11:00,200,55,10,W,0
            2027-06-08T12:00,77,155,10,W,0
            2027-06-08T13:00,77,55,-1,W,0
            2027-06-08T14:00,77,55,10,up,0
            2027-06-08T15:00,77,55,10,W,-0.1
            2027-06-08T16:00,77,55,10,W,0
            2027-06-08T16:00,78,55,10,W,0
            2027-06-31T16:00,78,55,10,W,0
            2027-06-08T25:00,78,55,10,W,0
            ,78,55,10,W,0
            """);

    assertThat(said).hasSize(10);
    assertThat(said.get(0))
        .startsWith("weather/hill-hourly.csv:2:1: '2027-06-08T10:30' is no full hour");
    assertThat(said.get(1)).startsWith("weather/hill-hourly.csv:3:18: ");
    assertThat(said.get(2)).startsWith("weather/hill-hourly.csv:4:21: ");
    assertThat(said.get(3)).startsWith("weather/hill-hourly.csv:5:24: ");
    assertThat(said.get(4)).startsWith("weather/hill-hourly.csv:6:27: 'up' is no direction");
    assertThat(said.get(5)).startsWith("weather/hill-hourly.csv:7:29: ");
    assertThat(said.get(6))
        .isEqualTo("weather/hill-hourly.csv:9:1: line 8 has this hour already; keep one of them");
    assertThat(said.get(7)).startsWith("weather/hill-hourly.csv:10:1: ");
    assertThat(said.get(8)).startsWith("weather/hill-hourly.csv:11:1: ");
    assertThat(said.get(9)).startsWith("weather/hill-hourly.csv:12:1: ");
  }

  @Test
  void aColumnThatNobodyKnowsAndOneQuantityInTwoUnits() {
    assertThat(problems("time,temp_f,windd_mph\n2027-06-08T10:00,77,5\n"))
        .singleElement()
        .satisfies(s -> assertThat(s).contains("windd_mph").contains("wind_mph"));
    assertThat(problems("time,temp_f,temp_c\n2027-06-08T10:00,77,25\n"))
        .singleElement()
        .satisfies(s -> assertThat(s).contains("both temp_f and temp_c are there"));
    assertThat(problems("temp_f\n77\n"))
        .singleElement()
        .satisfies(s -> assertThat(s).contains("time"));
  }
}
