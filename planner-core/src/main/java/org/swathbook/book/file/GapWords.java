package org.swathbook.book.file;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.swathbook.weather.Gaps;
import org.swathbook.weather.ObservedDay;
import org.swathbook.weather.StationWeather;
import org.swathbook.weather.WeatherDay;

/** What a reader of results should know of a station's gaps and wind. */
final class GapWords {
  private static final int RUNS_SHOWN = 4;
  private static final int YEARS_EXPLAINED = 5;

  private GapWords() {}

  /**
   * @param rows what stands in the file
   */
  static List<String> notes(String file, List<ObservedDay> rows, StationWeather weather) {
    List<String> out = new ArrayList<>();
    Gaps gaps = weather.gaps();
    List<String> parts = new ArrayList<>(ends(rows, weather));
    List<LocalDate> filled = used(gaps.temperatureFilled(), weather);
    if (!filled.isEmpty()) {
      parts.add("temperature of " + days(filled) + " filled in (" + runs(filled) + ")");
    }
    List<LocalDate> dry = used(gaps.rainUnknown(), weather);
    if (!dry.isEmpty()) {
      parts.add(
          "rain of "
              + days(dry)
              + " unknown and taken for none ("
              + runs(dry)
              + "): layers may be active and seedlings up sooner than shown");
    }
    if (!gaps.leftOut().isEmpty()) {
      parts.add(leftOut(gaps.leftOut(), YEARS_EXPLAINED));
    }
    if (!parts.isEmpty()) {
      out.add(file + ": " + String.join("; ", parts) + ".");
    }
    if (weather.days().stream().map(WeatherDay::windMs).anyMatch(w -> w.isPresent())) {
      out.add(
          file
              + ": wind is the mean of a day, which hides calm hours and gusts; a day counts for"
              + " spraying up to the house's most wind.");
    }
    return out;
  }

  /** Days at either end that have no temperature to draw a line from. */
  private static List<String> ends(List<ObservedDay> rows, StationWeather weather) {
    List<String> out = new ArrayList<>();
    LocalDate first = weather.days().get(0).date();
    LocalDate last = weather.days().get(weather.days().size() - 1).date();
    if (rows.get(0).date().isBefore(first)) {
      out.add("nothing used before " + first + ", the first day with both temperatures");
    }
    if (rows.get(rows.size() - 1).date().isAfter(last)) {
      out.add("nothing used after " + last + ", the last day with both temperatures");
    }
    return out;
  }

  /** Why a record gives no weather year. */
  static String noYear(StationWeather weather) {
    if (weather.days().isEmpty()) {
      return "no day has both temperatures";
    }
    String none =
        "no weather year from 1 September to 31 October of the next year is there in full";
    Map<Integer, String> leftOut = weather.gaps().leftOut();
    return leftOut.isEmpty() ? none : none + ": " + leftOut(leftOut, 1);
  }

  /** Days outside the years that are left out; of those it would be idle talk. */
  private static List<LocalDate> used(List<LocalDate> dates, StationWeather weather) {
    List<Integer> kept = weather.scenarioYears();
    Map<Integer, String> leftOut = weather.gaps().leftOut();
    return dates.stream()
        .filter(
            d -> {
              int early = d.getYear();
              boolean isEarly = d.getMonthValue() <= 10;
              boolean isLate = d.getMonthValue() >= 9;
              return isEarly && kept.contains(early)
                  || isLate && kept.contains(early + 1)
                  || !(isEarly && leftOut.containsKey(early)
                      || isLate && leftOut.containsKey(early + 1));
            })
        .toList();
  }

  private static String leftOut(Map<Integer, String> years, int explain) {
    String explained =
        years.entrySet().stream()
            .limit(explain)
            .map(e -> e.getKey() + " left out: " + e.getValue())
            .collect(Collectors.joining("; "));
    String rest =
        years.keySet().stream()
            .skip(explain)
            .map(String::valueOf)
            .collect(Collectors.joining(", "));
    return rest.isEmpty() ? explained : explained + "; for like gaps also " + rest;
  }

  private static String days(List<LocalDate> dates) {
    return dates.size() == 1 ? "1 day" : dates.size() + " days";
  }

  /** {@code 2026-05-03, 2026-06-01 to 2026-06-03}. */
  private static String runs(List<LocalDate> dates) {
    List<String> runs = new ArrayList<>();
    int i = 0;
    while (i < dates.size() && runs.size() < RUNS_SHOWN) {
      int end = i + 1;
      while (end < dates.size() && dates.get(end).equals(dates.get(end - 1).plusDays(1))) {
        end++;
      }
      LocalDate last = dates.get(end - 1);
      runs.add(end == i + 1 ? last.toString() : dates.get(i) + " to " + last);
      i = end;
    }
    if (i < dates.size()) {
      runs.add("and " + (dates.size() - i) + " more");
    }
    return String.join(", ", runs);
  }
}
