package org.swathbook.weather;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import org.swathbook.model.ModelCard;
import org.swathbook.model.ModelSection;

/**
 * Makes a record without gaps of what a station wrote down. A temperature that is missing on up to
 * {@value #LINE_DAYS} days in a row stands on the straight line between its neighbors; in a longer
 * gap it is the mean of that day of the calendar in the record's other years. Rain that is missing
 * counts as none. A weather year that owes too much to this is no scenario: see {@link YearGaps}.
 *
 * <p>What the station did write down is never changed. Where a filled temperature would cross the
 * one that was measured on the day, it takes its value.
 */
public final class GapRule {
  /** Weather systems pass in about so many days: a line across more would cut one off. */
  static final int LINE_DAYS = 3;

  private GapRule() {}

  /**
   * The record from the first to the last day with both temperatures.
   *
   * @param rows in order of date, each date once; dates may be missing
   * @return without any day when no row has both temperatures
   */
  public static StationWeather fill(String id, List<ObservedDay> rows) {
    List<ObservedDay> known = trim(rows);
    if (known.isEmpty()) {
      return new StationWeather(id, List.of());
    }
    LocalDate first = known.get(0).date();
    List<ObservedDay> all = everyDay(known);
    FilledSeries tmax = new FilledSeries(values(all, ObservedDay::tmaxC), first, LINE_DAYS);
    FilledSeries tmin = new FilledSeries(values(all, ObservedDay::tminC), first, LINE_DAYS);
    List<WeatherDay> days = new ArrayList<>(all.size());
    for (int d = 0; d < all.size(); d++) {
      days.add(day(all.get(d), tmax, tmin, d));
    }
    return new StationWeather(id, days, isWhole(all) ? Gaps.NONE : gaps(all, tmax, tmin));
  }

  private static List<ObservedDay> trim(List<ObservedDay> rows) {
    int from = 0;
    while (from < rows.size() && !hasBoth(rows.get(from))) {
      from++;
    }
    int to = rows.size();
    while (to > from && !hasBoth(rows.get(to - 1))) {
      to--;
    }
    return rows.subList(from, to);
  }

  private static boolean hasBoth(ObservedDay day) {
    return day.tmaxC().isPresent() && day.tminC().isPresent();
  }

  /** Whether nothing is missing, as in most records: the years need no counting then. */
  private static boolean isWhole(List<ObservedDay> all) {
    for (ObservedDay day : all) {
      if (!hasBoth(day) || day.rainMm().isEmpty()) {
        return false;
      }
    }
    return true;
  }

  private static List<ObservedDay> everyDay(List<ObservedDay> rows) {
    List<ObservedDay> all = new ArrayList<>();
    LocalDate next = rows.get(0).date();
    for (ObservedDay row : rows) {
      if (row.date().isBefore(next)) {
        throw new IllegalArgumentException(row.date() + " stands twice or after a later day");
      }
      for (; next.isBefore(row.date()); next = next.plusDays(1)) {
        OptionalDouble none = OptionalDouble.empty();
        all.add(new ObservedDay(next, none, none, none, 0, none));
      }
      all.add(row);
      next = next.plusDays(1);
    }
    return all;
  }

  private static double[] values(
      List<ObservedDay> days, Function<ObservedDay, OptionalDouble> value) {
    double[] out = new double[days.size()];
    for (int d = 0; d < out.length; d++) {
      out[d] = value.apply(days.get(d)).orElse(Double.NaN);
    }
    return out;
  }

  private static WeatherDay day(ObservedDay seen, FilledSeries tmax, FilledSeries tmin, int d) {
    double high = tmax.value(d);
    double low = tmin.value(d);
    if (high < low && !(tmax.isKnown(d) && tmin.isKnown(d))) {
      double mean = (high + low) / 2;
      double met = tmax.isKnown(d) ? high : tmin.isKnown(d) ? low : mean;
      high = met;
      low = met;
    }
    double water = seen.rainMm().orElse(0) + seen.irrigationMm();
    return new WeatherDay(seen.date(), high, low, water, seen.windMs());
  }

  private static Gaps gaps(List<ObservedDay> all, FilledSeries tmax, FilledSeries tmin) {
    List<LocalDate> filled = new ArrayList<>();
    List<LocalDate> dry = new ArrayList<>();
    TreeSet<LocalDate> guessed = new TreeSet<>();
    YearGaps.Day[] days = new YearGaps.Day[all.size()];
    for (int d = 0; d < days.length; d++) {
      LocalDate date = all.get(d).date();
      boolean temperature = !tmax.isKnown(d) || !tmin.isKnown(d);
      boolean rain = all.get(d).rainMm().isEmpty();
      if (temperature) {
        filled.add(date);
      }
      if (rain) {
        dry.add(date);
      }
      days[d] =
          new YearGaps.Day(
              date,
              temperature,
              tmax.isInLongGap(d) || tmin.isInLongGap(d),
              tmax.isGroundless(d) || tmin.isGroundless(d),
              rain);
    }
    YearGaps years = new YearGaps(List.of(days));
    for (int d = 0; d < days.length; d++) {
      if (days[d].longGap() || years.isInLongRainGap(d)) {
        guessed.add(days[d].date());
      }
    }
    return new Gaps(filled, dry, guessed, new TreeMap<>(years.leftOut()));
  }

  /** What the reference prints. */
  static List<ModelCard> cards() {
    return List.of(
        ModelCard.of(
                ModelSection.WEATHER,
                GapRule.class,
                "missing days",
                "temperature on a straight line across short gaps, else the mean of that day of the calendar in other years; rain none",
                "default")
            .with("longest gap for a line", LINE_DAYS, "days"),
        ModelCard.of(
                ModelSection.WEATHER,
                YearGaps.class,
                "weather year left out",
                "a gap too long for a line from 1 March to 31 October; more days with anything missing, or more in a row without rain record, than so many",
                "default")
            .with("anything missing", YearGaps.MOST_FILLED_DAYS, "days")
            .with("no rain record", YearGaps.MOST_RAIN_DAYS, "days in a row"));
  }
}
