package org.swathbook.cli.work;

import java.time.LocalDate;
import java.util.Optional;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.book.FieldZone;
import org.swathbook.book.file.BookPaths;
import org.swathbook.book.file.HourlyReader;
import org.swathbook.check.ForecastWeather;
import org.swathbook.check.MixJudge;
import org.swathbook.program.SprayJob;
import org.swathbook.weather.HourlyForecast;
import org.swathbook.weather.Sun;
import org.swathbook.weather.SunTimes;

/**
 * A tank in its field on its day, with the forecast of the book where there is one.
 *
 * @param job with what the forecast knows of its hour
 */
public record TankOnItsDay(Field field, SprayJob job, Optional<HourlyForecast> forecast) {

  public static TankOnItsDay of(Book book, BookPaths paths, SprayJob written) {
    Field field = book.findField(written.field().value()).orElseThrow();
    Optional<HourlyForecast> forecast = HourlyReader.read(paths.book(), field.station());
    SprayJob job = forecast.map(f -> ForecastWeather.fill(written, f)).orElse(written);
    return new TankOnItsDay(field, job, forecast);
  }

  public MixJudge judge(Book book, LocalDate today) {
    return MixJudge.of(book, field, job, today, sun(job.date()));
  }

  /** Sunrise and sunset at the field; empty when its place or clock is not known. */
  public Optional<SunTimes> sun(LocalDate date) {
    if (field.latitude().isEmpty() || field.longitude().isEmpty()) {
      return Optional.empty();
    }
    return FieldZone.of(field)
        .flatMap(
            zone ->
                Sun.times(
                    field.latitude().getAsDouble(), field.longitude().getAsDouble(), date, zone));
  }
}
