package org.swathbook.book.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.swathbook.book.Book;
import org.swathbook.source.ProblemsException;

/** A book of which one field is asked about reads no other station, and is else the same. */
class WeatherOfOneFieldTest {
  private static final Path DEMO = Path.of("..", "demo-data");

  @TempDir private Path dir;

  @BeforeEach
  void copyTheDemo() throws IOException {
    try (Stream<Path> files = Files.walk(DEMO)) {
      for (Path from : files.sorted().toList()) {
        Path to = dir.resolve(DEMO.relativize(from).toString());
        if (Files.isDirectory(from)) {
          Files.createDirectories(to);
        } else {
          Files.copy(from, to);
        }
      }
    }
  }

  @Test
  void onlyItsStationIsThere() {
    Book all = new BookLoader().load(dir);
    Book one = new BookLoader().loadFor(dir, "nd-1");
    String station = all.findField("ND-1").orElseThrow().station();
    assertThat(one.stations()).containsOnlyKeys(station);
    assertThat(one.station(one.findField("ND-1").orElseThrow()).days())
        .isEqualTo(all.station(all.findField("ND-1").orElseThrow()).days());
    assertThat(one.fields()).isEqualTo(all.fields());
    assertThat(one.pastSeasons()).isEqualTo(all.pastSeasons());
  }

  @Test
  void whatIsWrongWithAnotherStationStandsInNobodysWay() throws IOException {
    Files.writeString(dir.resolve("weather/dry-butte.csv"), "no weather at all\n");
    assertThatThrownBy(() -> new BookLoader().load(dir)).isInstanceOf(ProblemsException.class);
    assertThat(new BookLoader().loadFor(dir, "ND-1").stations()).hasSize(1);
    assertThatThrownBy(() -> new BookLoader().loadFor(dir, "QH-1"))
        .isInstanceOf(ProblemsException.class);
  }

  @Test
  void aFieldThatIsNotThereReadsAll() {
    assertThat(new BookLoader().loadFor(dir, "ND-99").stations()).hasSizeGreaterThan(1);
  }
}
