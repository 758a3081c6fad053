package org.swathbook.book.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.swathbook.book.Book;
import org.swathbook.weather.WeatherDay;

class WeatherReaderTest {
  @TempDir Path dir;

  private Book book(String weather) {
    return new BookOnDisk(dir).with("weather/hill.csv", weather).load();
  }

  private List<WeatherDay> days(String weather) {
    Book book = book(weather);
    return book.station(book.fields().get(0)).days();
  }

  @Test
  void inchesAndFahrenheit() {
    WeatherDay day = days("date,rain_in,tmin_f,tmax_f\n2026-05-01,0.5,50,86\n").get(0);
    assertThat(day.tmaxC()).isEqualTo(30, within(1e-12));
    assertThat(day.tminC()).isEqualTo(10, within(1e-12));
    assertThat(day.rainMm()).isEqualTo(12.7, within(1e-12));
  }

  @Test
  void aTraceIsNoRainAndIrrigationIs() {
    List<WeatherDay> days =
        days(
            """
            date,tmax_c,tmin_c,rain_mm,irrigation_in
            2026-05-01,20,8,T,0.5
            2026-05-02,20,8,3,
            """);
    assertThat(days.get(0).rainMm()).isEqualTo(12.7, within(1e-12));
    assertThat(days.get(1).rainMm()).isEqualTo(3);
  }

  @Test
  void windAndHumidityAreReadAndNotedAsNotUsed() {
    assertThat(book("date,tmax_c,tmin_c,rain_mm,wind_ms,rh_pct\n2026-05-01,20,8,T,3,55\n").notes())
        .containsExactly("weather/hill.csv: wind and humidity are not used yet.");
  }
}
