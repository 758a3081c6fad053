package org.swathbook.demo;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;

/** Writes the demo book's weather files. Its one argument is the folder they go to. */
final class DemoWeatherFiles {
  private DemoWeatherFiles() {}

  public static void main(String[] args) throws IOException {
    Path folder = Path.of(args[0]);
    for (DemoStation station : DemoStation.values()) {
      Files.write(folder.resolve(station.id() + ".csv"), bytes(station));
    }
  }

  static byte[] bytes(DemoStation station) {
    String lines =
        DemoWeather.generate(station).stream()
            .map(day -> day.line() + "\n")
            .collect(Collectors.joining());
    return (DemoDay.HEADER + "\n" + lines).getBytes(StandardCharsets.UTF_8);
  }
}
