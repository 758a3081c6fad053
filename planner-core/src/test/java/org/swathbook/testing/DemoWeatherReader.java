package org.swathbook.testing;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.swathbook.weather.StationWeather;
import org.swathbook.weather.WeatherDay;

/** Reads the demo book's weather: date, tmax_c, tmin_c, rain_mm with {@code T} for a trace. */
final class DemoWeatherReader {
  private DemoWeatherReader() {}

  static StationWeather read(String station) {
    Path file = Path.of("..", "demo-data", "weather", station + ".csv");
    List<WeatherDay> days = new ArrayList<>();
    try {
      List<String> lines = Files.readAllLines(file, StandardCharsets.UTF_8);
      for (String line : lines.subList(1, lines.size())) {
        String[] cells = line.split(",", -1);
        days.add(
            new WeatherDay(
                LocalDate.parse(cells[0]),
                Double.parseDouble(cells[1]),
                Double.parseDouble(cells[2]),
                cells[3].equals("T") ? 0 : Double.parseDouble(cells[3])));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return new StationWeather(station, days);
  }
}
