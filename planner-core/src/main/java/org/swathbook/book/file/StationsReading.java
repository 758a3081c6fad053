package org.swathbook.book.file;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import org.swathbook.book.Field;
import org.swathbook.source.Problems;
import org.swathbook.weather.StationWeather;

/**
 * The weather of the stations of some fields, read beside whoever began it. What comes up is kept
 * until it is finished, so that problems and notes stand in the same order every time.
 */
final class StationsReading {
  private final Problems problems = new Problems();
  private final List<String> notes = new ArrayList<>();
  private final CompletableFuture<Map<String, StationWeather>> reading;

  private StationsReading(Path book, List<String> stations) {
    this.reading = CompletableFuture.supplyAsync(() -> read(book, stations));
  }

  static StationsReading begin(Path book, List<Field> fields) {
    return new StationsReading(
        book, fields.stream().map(Field::station).distinct().sorted().toList());
  }

  private Map<String, StationWeather> read(Path book, List<String> stations) {
    Map<String, StationWeather> out = new TreeMap<>();
    for (String station : stations) {
      WeatherReader.read(book, station, problems, notes).ifPresent(w -> out.put(station, w));
    }
    return out;
  }

  /**
   * Waits for the end, adds what came up, and gives weather by station.
   *
   * @throws RuntimeException the very one that the reading ended with
   */
  Map<String, StationWeather> finished(Problems problems, List<String> notes) {
    Map<String, StationWeather> stations;
    try {
      stations = reading.join();
    } catch (CompletionException e) {
      if (e.getCause() instanceof RuntimeException cause) {
        throw cause;
      }
      throw e;
    }
    problems.addAll(this.problems.sorted());
    notes.addAll(this.notes);
    return stations;
  }
}
