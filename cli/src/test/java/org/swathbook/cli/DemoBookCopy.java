package org.swathbook.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** A copy of the demo book that a test may write into. */
final class DemoBookCopy {
  private DemoBookCopy() {}

  static Path into(Path folder) throws IOException {
    Path demo = ProgramProcess.CLI.resolve("../demo-data").normalize();
    Path book = folder.resolve("book");
    try (Stream<Path> all = Files.walk(demo)) {
      for (Path p : (Iterable<Path>) all.sorted()::iterator) {
        Path to = book.resolve(demo.relativize(p).toString());
        if (Files.isDirectory(p)) {
          Files.createDirectories(to);
        } else {
          Files.copy(p, to);
        }
      }
    }
    return book;
  }

  static List<String> journal(Path book) throws IOException {
    return Files.readAllLines(book.resolve("applications.csv"));
  }
}
