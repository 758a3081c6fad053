package org.swathbook.plan;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.swathbook.book.Book;
import org.swathbook.book.file.BookLoader;

/**
 * A copy of the demo book to change, with the weather of three years: enough for a plan, quick to
 * walk.
 */
public final class DemoCopy {
  private static final String FIRST_DAY = "2021-09-01";

  private final Path dir;

  public DemoCopy(Path dir) {
    this.dir = dir;
    try {
      Files.createDirectories(dir);
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
    try (Stream<Path> files = Files.walk(demo())) {
      for (Path from : files.sorted().toList()) {
        Path to = dir.resolve(demo().relativize(from).toString());
        if (Files.isDirectory(from)) {
          Files.createDirectories(to);
        } else {
          Files.copy(from, to);
        }
      }
      shortenWeather(dir.resolve("weather"));
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  private static Path demo() {
    return Path.of("..", "demo-data");
  }

  private static void shortenWeather(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.sorted().toList()) {
        List<String> lines = Files.readAllLines(file, StandardCharsets.UTF_8);
        List<String> kept =
            Stream.concat(
                    lines.stream().limit(1),
                    lines.stream()
                        .skip(1)
                        .filter(l -> l.compareTo(FIRST_DAY) >= 0 && l.compareTo("2024-11-01") < 0))
                .toList();
        Files.write(file, kept, StandardCharsets.UTF_8);
      }
    }
  }

  /**
   * Replaces text in a file of the copy; an error when it is not there, so that no test runs on an
   * unchanged book.
   */
  public DemoCopy change(String file, String from, String to) {
    try {
      Path path = dir.resolve(file);
      String text = Files.readString(path, StandardCharsets.UTF_8);
      if (!text.contains(from)) {
        throw new IllegalArgumentException("no '" + from + "' in " + file);
      }
      Files.writeString(path, text.replace(from, to), StandardCharsets.UTF_8);
      return this;
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  /** Replaces all matches of a pattern; an error when there is none. */
  public DemoCopy replaceAll(String file, String pattern, String to) {
    try {
      Path path = dir.resolve(file);
      String text = Files.readString(path, StandardCharsets.UTF_8);
      String changed = text.replaceAll(pattern, to);
      if (changed.equals(text)) {
        throw new IllegalArgumentException("nothing like '" + pattern + "' in " + file);
      }
      Files.writeString(path, changed, StandardCharsets.UTF_8);
      return this;
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  /** Puts a changed copy of a starter entry into the book's own catalog folder. */
  public DemoCopy changeCatalog(String entry, String from, String to) {
    try (java.io.InputStream in =
        Book.class.getResourceAsStream("/org/swathbook/catalog/starter/" + entry)) {
      if (in == null) {
        throw new IllegalArgumentException("no starter entry " + entry);
      }
      String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      if (!text.contains(from)) {
        throw new IllegalArgumentException("no '" + from + "' in " + entry);
      }
      Path path = dir.resolve("catalog").resolve(entry);
      Files.createDirectories(path.getParent());
      Files.writeString(path, text.replace(from, to), StandardCharsets.UTF_8);
      return this;
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  public Book load() {
    return new BookLoader().load(dir);
  }

  /** The unchanged copy in memory, its folder gone again: made once for all tests of a process. */
  public static Book inMemory() {
    return InMemory.BOOK;
  }

  private static final class InMemory {
    static final Book BOOK = read();
  }

  private static Book read() {
    try {
      Path folder = Files.createTempDirectory("demo-copy");
      Book book = new DemoCopy(folder).load();
      try (Stream<Path> files = Files.walk(folder)) {
        for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
          Files.delete(file);
        }
      }
      return book;
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }
}
