package org.swathbook.growth;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.swathbook.catalog.Crop;
import org.swathbook.catalog.WeedId;
import org.swathbook.weather.WeatherDay;

/** What was seen in a field, on the days of one weather year. */
final class ScoutedYear {
  private final ScoutedField seen;
  private final int season;
  private final int year;

  ScoutedYear(ScoutedField seen, int season, int year) {
    this.seen = seen;
    this.season = season;
    this.year = year;
  }

  private int day(LocalDate date) {
    return SeasonTrace.dayOf(date, season, year);
  }

  /** The weather with the irrigation of the field among its rain. */
  List<WeatherDay> watered(List<WeatherDay> weather) {
    if (seen.irrigationMm().isEmpty()) {
      return weather;
    }
    List<WeatherDay> out = new ArrayList<>(weather);
    seen.irrigationMm()
        .forEach(
            (date, mm) -> {
              int d = day(date);
              if (d >= 0 && d < out.size()) {
                out.set(d, out.get(d).withMoreRain(mm));
              }
            });
    return out;
  }

  /** Places of the stages that the crop was seen at, by day. */
  SortedMap<Integer, Integer> stages(Crop crop) {
    SortedMap<Integer, Integer> out = new TreeMap<>();
    seen.stages().forEach((date, stage) -> out.put(day(date), crop.findStage(stage).orElseThrow()));
    return out;
  }

  /** Heights that the crop was seen at, cm by day. */
  SortedMap<Integer, Double> cropHeightsCm() {
    SortedMap<Integer, Double> out = new TreeMap<>();
    seen.cropHeightsCm().forEach((date, cm) -> out.put(day(date), cm));
    return out;
  }

  /**
   * Sights of a weed in order. Where two dates fall on one day of the year, as 28 and 29 February
   * do, the later one counts.
   */
  List<ScoutedCohorts.Sight> sights(WeedId weed, int days) {
    TreeMap<Integer, ScoutedCohorts.Sight> out = new TreeMap<>();
    for (ScoutedField.WeedSeen w : seen.weeds(weed)) {
      int d = day(w.date());
      if (d >= 0 && d < days) {
        out.put(d, new ScoutedCohorts.Sight(d, w.height(), w.perM2()));
      }
    }
    return List.copyOf(out.values());
  }
}
