package org.swathbook.rules.weather;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;
import org.swathbook.measure.Unit;
import org.swathbook.rules.DayFacts;
import org.swathbook.weather.StationWeather;
import org.swathbook.weather.WeatherDay;

/**
 * Mean temperatures of three days around a spraying, °F. What the job says stands; else the record
 * of the field's station, where it has all three days.
 */
record ColdSpell(OptionalDouble pastF, OptionalDouble nextF) {
  private static final int DAYS = 3;

  static ColdSpell around(DayFacts facts) {
    OptionalDouble past = facts.job().weather().meanPast3dF();
    LocalDate day = facts.job().date();
    return new ColdSpell(
        past.isPresent() ? past : recordedF(facts, day.minusDays(DAYS)),
        facts.job().weather().meanNext3dF());
  }

  private static OptionalDouble recordedF(DayFacts facts, LocalDate from) {
    StationWeather station = facts.pass().book().station(facts.pass().field());
    double sum = 0;
    for (int i = 0; i < DAYS; i++) {
      Optional<WeatherDay> day = station.observed(from.plusDays(i));
      if (day.isEmpty()) {
        return OptionalDouble.empty();
      }
      sum += day.get().tmeanC();
    }
    return OptionalDouble.of(Unit.FAHRENHEIT.fromSi(sum / DAYS));
  }
}
