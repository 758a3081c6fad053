package org.swathbook.weather;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The daily record of one station, without gaps, in order of date. */
public final class StationWeather {
  private final String id;
  private final List<WeatherDay> days;
  private final Gaps gaps;
  private final List<Integer> scenarioYears;

  /** A record in which every day was observed. */
  public StationWeather(String id, List<WeatherDay> days) {
    this(id, days, Gaps.NONE);
  }

  /**
   * An error when a day is missing between the first and the last.
   *
   * @param gaps what of the days was filled in
   */
  public StationWeather(String id, List<WeatherDay> days, Gaps gaps) {
    this.id = id;
    this.days = List.copyOf(days);
    this.gaps = gaps;
    for (int i = 1; i < days.size(); i++) {
      if (!days.get(i).date().equals(days.get(i - 1).date().plusDays(1))) {
        throw new IllegalArgumentException(
            "station " + id + " has a gap before " + days.get(i).date());
      }
    }
    this.scenarioYears = List.copyOf(findScenarioYears());
  }

  public String id() {
    return id;
  }

  public List<WeatherDay> days() {
    return days;
  }

  /** What the record did not say. */
  public Gaps gaps() {
    return gaps;
  }

  public Optional<WeatherDay> find(LocalDate date) {
    if (days.isEmpty()) {
      return Optional.empty();
    }
    long i = date.toEpochDay() - days.get(0).date().toEpochDay();
    return i >= 0 && i < days.size() ? Optional.of(days.get((int) i)) : Optional.empty();
  }

  /** A day that was seen, or that stands in a gap short enough to be taken for seen. */
  public Optional<WeatherDay> observed(LocalDate date) {
    return find(date).filter(d -> !gaps.guessed().contains(date));
  }

  /**
   * Years whose days from 1 September before to 31 October are all there, in order, but for those
   * left out for their gaps.
   */
  public List<Integer> scenarioYears() {
    return scenarioYears;
  }

  private List<Integer> findScenarioYears() {
    List<Integer> years = new ArrayList<>();
    if (days.isEmpty()) {
      return years;
    }
    int last = days.get(days.size() - 1).date().getYear();
    for (int y = days.get(0).date().getYear(); y <= last; y++) {
      if (find(LocalDate.of(y - 1, 9, 1)).isPresent()
          && find(LocalDate.of(y, 10, 31)).isPresent()
          && !gaps.leftOut().containsKey(y)) {
        years.add(y);
      }
    }
    return years;
  }
}
