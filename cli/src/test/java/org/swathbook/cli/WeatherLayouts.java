package org.swathbook.cli;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The same days of a plain table in each layout that weather is downloaded in. */
final class WeatherLayouts {
  private record Day(LocalDate date, String high, String low, String rain) {
    static Day of(String row) {
      String[] cells = row.split(",", -1);
      String rain = cells[3].equals("T") ? "0" : cells[3];
      return new Day(LocalDate.parse(cells[0]), cells[1], cells[2], rain);
    }

    long tenths(String value) {
      return Math.round(10 * Double.parseDouble(value));
    }
  }

  private WeatherLayouts() {}

  /**
   * @param plain date, tmax_c, tmin_c, rain_mm, every cell filled
   */
  static List<String> all(String plain) {
    List<Day> days = plain.lines().skip(1).map(Day::of).toList();
    return List.of(
        plain,
        table(
            "\"STATION\",\"DATE\",\"PRCP\",\"PRCP_ATTRIBUTES\",\"TMAX\",\"TMAX_ATTRIBUTES\","
                + "\"TMIN\",\"TMIN_ATTRIBUTES\"",
            days.stream()
                .map(
                    d ->
                        "\"USX00000001\",\"%s\",\"%d\",\",,W\",\"%d\",\",,W\",\"%d\",\",,W\""
                            .formatted(
                                d.date(),
                                d.tenths(d.rain()),
                                d.tenths(d.high()),
                                d.tenths(d.low())))),
        table(
            "",
            days.stream()
                .flatMap(
                    d ->
                        Stream.of(
                            element(d, "TMAX", d.high()),
                            element(d, "TMIN", d.low()),
                            element(d, "PRCP", d.rain())))),
        table(
            "YEAR,MO,DY,T2M_MAX,T2M_MIN,PRECTOTCORR",
            days.stream()
                .map(
                    d ->
                        "%d,%d,%d,%s,%s,%s"
                            .formatted(
                                d.date().getYear(),
                                d.date().getMonthValue(),
                                d.date().getDayOfMonth(),
                                d.high(),
                                d.low(),
                                d.rain()))),
        table(
            """
            Latitude: 40.7  Longitude: -98.6
            X & Y on Lambert Conformal Conic: 1 2
            Tile: 1
            Elevation: 600 meters
            All years; all variables; Daymet, invented

            year,yday,prcp (mm/day),tmax (deg c),tmin (deg c)""",
            days.stream()
                .filter(d -> d.date().getDayOfYear() <= 365)
                .map(
                    d ->
                        "%d,%d,%s,%s,%s"
                            .formatted(
                                d.date().getYear(),
                                d.date().getDayOfYear(),
                                d.rain(),
                                d.high(),
                                d.low()))));
  }

  private static String element(Day day, String element, String value) {
    return "USX00000001,%s,%s,%d,,,W,"
        .formatted(day.date().toString().replace("-", ""), element, day.tenths(value));
  }

  private static String table(String head, Stream<String> rows) {
    return (head.isEmpty() ? "" : head + "\n") + rows.collect(Collectors.joining("\n")) + "\n";
  }
}
