package org.swathbook.book.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.swathbook.measure.Quantity;
import org.swathbook.measure.Unit;
import org.swathbook.source.Problems;
import org.swathbook.weather.ObservedDay;
import org.swathbook.weather.WindHeight;

/**
 * Files as downloaded, all invented. Those with sound values hold the days of one plain table,
 * which is the oracle.
 */
class DownloadedWeatherTest {
  private static final String PLAIN =
      """
      date,tmax_c,tmin_c,rain_mm,wind_ms
      2024-02-28,12.3,-1.7,0,3.1
      2024-02-29,13.9,0.6,12.7,2.4
      2024-03-01,,,T,
      2024-03-02,8.8,-2.2,,5
      """;

  private static final String GHCN_COLUMNS =
      """
      "STATION","DATE","LATITUDE","NAME","AWND","AWND_ATTRIBUTES","PRCP","PRCP_ATTRIBUTES","SNOW","SNOW_ATTRIBUTES","TAVG","TAVG_ATTRIBUTES","TMAX","TMAX_ATTRIBUTES","TMIN","TMIN_ATTRIBUTES"
      "USX00000001","2024-02-28","42.0","MADE UP, IA US","   31",",,W","    0",",,W,0700","    0",",,W","   50","H,,S","  123",",,W","  -17",",,W"
      "USX00000001","2024-02-29","42.0","MADE UP, IA US","   24",",,W","  127",",,W,0700",,,,,"  139",",,W","    6",",,W"
      "USX00000001","2024-03-01","42.0","MADE UP, IA US",,,"    0","T,,W,0700",,,,,"  900",",X,W",,
      "USX00000001","2024-03-02","42.0","MADE UP, IA US","   50",",,W","  999",",K,W",,,,,"   88",",,W","  -22",",,W"
      """;

  /** Ordered by element, as the files of single stations may be. */
  private static final String GHCN_ELEMENTS =
      """
      USX00000001,20240228,TMAX,123,,,W,
      USX00000001,20240229,TMAX,139,,,W,
      USX00000001,20240301,TMAX,900,,X,W,
      USX00000001,20240302,TMAX,88,,,W,
      USX00000001,20240228,TMIN,-17,,,W,
      USX00000001,20240229,TMIN,6,,,W,
      USX00000001,20240301,TMIN,-9999,,,W,
      USX00000001,20240302,TMIN,-22,,,W,
      USX00000001,20240228,PRCP,0,,,W,0700
      USX00000001,20240229,PRCP,127,,,W,0700
      USX00000001,20240301,PRCP,0,T,,W,0700
      USX00000001,20240302,PRCP,999,,K,W,0700
      USX00000001,20240228,SNWD,0,,,W,0700
      USX00000001,20240228,WT01,1,,,W,
      USX00000001,20240228,AWND,31,,,W,
      USX00000001,20240302,AWND,50,,,W,
      USX00000001,20240229,AWND,24,,,W,
      """;

  private static final String POWER =
      """
      -BEGIN HEADER-
      Daily values, invented
      The value for missing source data is: -999
      T2M_MAX, T2M_MIN, PRECTOTCORR
      -END HEADER-
      YEAR,MO,DY,T2M_MAX,T2M_MIN,RH2M,PRECTOTCORR,WS10M,WS2M
      2024,2,28,12.3,-1.7,61.2,0.00,9.9,3.1
      2024,2,29,13.9,0.6,70.5,12.70,9.9,2.4
      2024,3,1,-999,-999.0,-999,0.00,9.9,-999
      2024,3,2,8.8,-2.2,-999,-999,9.9,5.0
      """;

  private static final String POWER_NUMBERED =
      """
      YEAR,DOY,T2M_MAX,T2M_MIN,PRECTOTCORR,WS2M
      2024,59,12.3,-1.7,0,3.1
      2024,60,13.9,0.6,12.7,2.4
      2024,61,-999,-999,0,-999
      2024,62,8.8,-2.2,-999,5
      """;

  @TempDir Path dir;

  private final Problems problems = new Problems();

  private List<ObservedDay> rows(String text) {
    new BookOnDisk(dir).with("weather/hill.csv", text);
    return WeatherReader.rows(dir, "hill", problems, new ArrayList<>());
  }

  private List<String> problemsOf(String text) {
    new BookOnDisk(dir).with("weather/hill.csv", text);
    WeatherReader.read(dir, "hill", problems, new ArrayList<>());
    return problems.report();
  }

  static Stream<Arguments> sound() {
    return Stream.of(
        Arguments.of("GHCN-Daily, a column an element", GHCN_COLUMNS),
        Arguments.of("the same with a byte-order mark", "\uFEFF" + GHCN_COLUMNS),
        Arguments.of("GHCN-Daily, a row an element", GHCN_ELEMENTS),
        Arguments.of("the same with Windows' line ends", GHCN_ELEMENTS.replace("\n", "\r\n")),
        Arguments.of("POWER by calendar", POWER),
        Arguments.of("the same with Windows' line ends", POWER.replace("\n", "\r\n")),
        Arguments.of("POWER by day of the year", POWER_NUMBERED));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("sound")
  void theDaysAreThoseOfThePlainTable(String name, String text) {
    List<ObservedDay> read = rows(text);
    assertThat(problems.report()).isEmpty();
    assertThat(read).isEqualTo(rows(PLAIN));
    assertThat(read).hasSize(4);
  }

  @Test
  void windAtTenMetresIsBroughtDownToTwo() {
    List<ObservedDay> days =
        rows("YEAR,DOY,T2M_MAX,T2M_MIN,PRECTOTCORR,WS10M\n2024,60,9,1,0,5\n2024,61,9,1,0,-999\n");
    assertThat(days.get(0).windMs()).hasValue(WindHeight.atTwoMetres(5, 10));
    assertThat(days.get(1).windMs()).isEmpty();
  }

  /** Nobody can mend what others measured: both temperatures are unknown then. */
  @Test
  void aHighBelowTheLowCountsForNeither() {
    ObservedDay day = rows("YEAR,DOY,T2M_MAX,T2M_MIN,PRECTOTCORR\n2024,60,1,9,4\n").get(0);
    assertThat(problems.report()).isEmpty();
    assertThat(day.tmaxC()).isEmpty();
    assertThat(day.tminC()).isEmpty();
    assertThat(day.rainMm()).hasValue(4);
  }

  private static String daymet(String rows) {
    return """
    Latitude: 42.0  Longitude: -93.6
    Tile: 0
    How to cite: nobody; invented, no real data
    year,yday,dayl (s),prcp (mm/day),srad (W/m^2),swe (kg/m^2),tmax (deg c),tmin (deg c),vp (Pa)
    """
        + rows;
  }

  /** A leap year keeps 29 February there, and its day 365 is 30 December. */
  @Test
  void daymetLeavesOutTheLastDayOfALeapYear() {
    String text =
        daymet(
            """
            2024,60,39000.00,12.70,250.00,0.00,13.90,0.60,600.00
            2024,365,32400.00,0.00,150.00,0.00,2.10,-6.40,380.00
            2025,1,32410.00,1.50,150.00,0.00,4.10,-2.40,380.00
            2025,365,32410.00,0.00,150.00,0.00,4.50,-2.00,380.00
            """);
    assertThat(rows(text))
        .extracting(ObservedDay::date)
        .containsExactly(
            LocalDate.of(2024, 2, 29),
            LocalDate.of(2024, 12, 30),
            LocalDate.of(2025, 1, 1),
            LocalDate.of(2025, 12, 31));
    assertThat(problems.report()).isEmpty();
    assertThat(rows(text).get(0))
        .isEqualTo(
            new ObservedDay(
                LocalDate.of(2024, 2, 29),
                OptionalDouble.of(13.9),
                OptionalDouble.of(0.6),
                OptionalDouble.of(12.7),
                0,
                OptionalDouble.empty()));
  }

  @Test
  void theMissingLastDayOfALeapYearIsFilledInAndSaid() {
    StringBuilder rows = new StringBuilder();
    for (LocalDate d = LocalDate.of(2024, 9, 1);
        d.isBefore(LocalDate.of(2025, 11, 1));
        d = d.plusDays(1)) {
      if (d.getDayOfYear() < 366) {
        rows.append(d.getYear()).append(',').append(d.getDayOfYear());
        rows.append(",1,0,1,0,").append(d.getYear() == 2024 ? "4,2" : "6,1").append(",1\n");
      }
    }
    new BookOnDisk(dir).with("weather/hill.csv", daymet(rows.toString()));
    List<String> notes = new ArrayList<>();
    var weather = WeatherReader.read(dir, "hill", problems, notes).orElseThrow();
    var last = weather.find(LocalDate.of(2024, 12, 31)).orElseThrow();

    assertThat(last.tmaxC()).isEqualTo(5);
    assertThat(last.tminC()).isEqualTo(1.5);
    assertThat(weather.scenarioYears()).containsExactly(2025);
    assertThat(notes)
        .containsExactly(
            "weather/hill.csv: temperature of 1 day filled in (2024-12-31); rain of 1 day unknown"
                + " and taken for none (2024-12-31): layers may be active and seedlings up sooner"
                + " than shown.");
  }

  @Test
  void tenthsAreCelsiusAndMillimetres() {
    ObservedDay day = rows(GHCN_ELEMENTS).get(1);
    assertThat(new Quantity(day.tmaxC().orElseThrow(), Unit.CELSIUS).in(Unit.FAHRENHEIT))
        .isBetween(57.0, 57.1);
    assertThat(new Quantity(day.rainMm().orElseThrow(), Unit.MILLIMETRE).in(Unit.INCH))
        .isEqualTo(0.5);
  }

  static Stream<Arguments> faulty() {
    String unknown =
        "weather/hill.csv:1:1: the first lines are of no layout of weather that is known here;"
            + " start a table with 'date,tmax_f,tmin_f,rain_in', or put in a daily CSV file as"
            + " downloaded from GHCN-Daily, NASA POWER or Daymet";
    return Stream.of(
        Arguments.of("Day,High,Low,Precip\n2026-05-01,75,50,0.1\n", List.of(unknown)),
        Arguments.of("USX00000001202405TMAX  239  7  261  7  -9999   \n", List.of(unknown)),
        Arguments.of(
            GHCN_ELEMENTS + "USX00000002,20240228,TMAX,123,,,W,\n",
            List.of(
                "weather/hill.csv:18:1: the station 'USX00000002' stands in the file of"
                    + " 'USX00000001'; keep one station a file")),
        Arguments.of(
            GHCN_ELEMENTS + "USX00000001,20240228,TMAX,124,,,W,\nUSX00000001,20240231,TMIN,x,,,,\n",
            List.of(
                "weather/hill.csv:18:27: 2024-02-28 stands here again; download the file again, or"
                    + " take one of the two rows out",
                "weather/hill.csv:19:13: '20240231' is no day; write year, month and day as"
                    + " 20260511")),
        Arguments.of(
            "USX00000001,20240228,TMAX,123,,,W,\n",
            List.of(
                "weather/hill.csv:1:1: the file has no PRCP; take a station that measures TMAX,"
                    + " TMIN and PRCP",
                "weather/hill.csv:1:1: the file has no TMIN; take a station that measures TMAX,"
                    + " TMIN and PRCP")),
        Arguments.of(
            "USX00000001,20240228,TMAX,923,,,W,\nUSX00000001,20240229,TMAX,12.3,,,W,\n",
            List.of(
                "weather/hill.csv:1:27: '923' is beyond what was ever measured (-90 to 60 °C);"
                    + " download the file again, or leave the value out",
                "weather/hill.csv:2:27: '12.3' is no whole number, and this layout has tenths;"
                    + " take the file of the station itself, not an order with converted units")),
        Arguments.of(
            """
            "STATION","NAME","DATE","PRCP","TMAX","TMIN"
            "USX00000001","MADE UP","2024-02-28","0.50","75","50"
            """,
            List.of(
                "weather/hill.csv:1:1: the columns 'TMAX_ATTRIBUTES', 'TMIN_ATTRIBUTES',"
                    + " 'PRCP_ATTRIBUTES' are missing; take a station that measures TMAX, TMIN and"
                    + " PRCP, and its file with the attributes")),
        Arguments.of(
            GHCN_COLUMNS + "\"USX00000001\",\"2024-03-02\",,,,,\"    1\",\",,W\",,,,,,,,\n",
            List.of(
                "weather/hill.csv:6:15: 2024-03-02 stands here again; download the file again, or"
                    + " take one of the two rows out")),
        Arguments.of(
            POWER_NUMBERED + "2024,62,8.8,-2.2,-999,5\n",
            List.of(
                "weather/hill.csv:6:6: 2024-03-02 stands here again; download the file again, or"
                    + " take one of the two rows out")),
        Arguments.of(
            POWER.replace("-END HEADER-\n", ""),
            List.of(
                "weather/hill.csv:1:1: the line '-END HEADER-' is missing; download the file"
                    + " again")),
        Arguments.of(
            POWER.replace("PRECTOTCORR,WS", "T2M,WS"),
            List.of(
                "weather/hill.csv:6:1: the column 'PRECTOTCORR' is missing; download daily values"
                    + " with T2M_MAX, T2M_MIN, PRECTOTCORR and WS2M")),
        Arguments.of(
            "YEAR,MO,DY,HR,T2M\n2024,2,28,0,3\n",
            List.of(
                "weather/hill.csv:1:1: the values are hourly, not daily; download daily values"
                    + " with T2M_MAX, T2M_MIN, PRECTOTCORR and WS2M")),
        Arguments.of(
            POWER + "2024,2,30,1,1,1,1,1,1\n2024,3,3,warm,1,1,1,1,1\n",
            List.of(
                "weather/hill.csv:11:8: the month has no such day; write a day of the calendar",
                "weather/hill.csv:12:10: 'warm' is no number; write a number as 12.5, without"
                    + " unit")),
        Arguments.of(
            daymet("2025,366,1,0,1,0,4,2,1\n"),
            List.of(
                "weather/hill.csv:5:6: '366' is out of range; write a whole number from 1 to"
                    + " 365")),
        Arguments.of(
            daymet("2025,1,1,0,1,0,4,2,1\n").replace("tmin (deg c)", "tmin"),
            List.of(
                "weather/hill.csv:4:1: the column 'tmin (deg c)' is missing; download the file"
                    + " with prcp, tmax and tmin")));
  }

  @ParameterizedTest
  @MethodSource("faulty")
  void saysWhatIsWrongAndWhere(String text, List<String> expected) {
    assertThat(problemsOf(text)).containsExactlyElementsOf(expected);
  }
}
