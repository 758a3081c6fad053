package org.swathbook.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.LocalDate;
import java.time.Month;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/**
 * Writes the folder of a book. Everything is written beside its place first and moved there when
 * all is written: a new folder in one step, into an empty one entry by entry.
 */
final class NewBook {
  private static final String EMPTY = "book";
  private static final String DEMO = "demo";
  private static final List<String> FOLDERS =
      List.of("weather", "programs", "mixes", "observations");

  private final Path target;

  NewBook(Path target) {
    this.target = target;
  }

  /** The season that is planned on a day: from September on, that of the next year. */
  static int seasonAhead(LocalDate today) {
    return today.getYear() + (today.getMonth().compareTo(Month.SEPTEMBER) >= 0 ? 1 : 0);
  }

  void write(boolean demo, int season) throws IOException {
    Path parent = Objects.requireNonNull(target.getParent());
    Files.createDirectories(parent);
    Path beside = Files.createTempDirectory(parent, ".new-book-");
    // A temporary folder is for its owner alone; a folder within it is for whom others are.
    Path book = Files.createDirectory(beside.resolve("book"));
    try {
      copyResources(demo ? DEMO : EMPTY, book);
      if (!demo) {
        for (String name : List.of("book.yaml", "README.md")) {
          Path file = book.resolve(name);
          String text = Files.readString(file, UTF_8);
          Files.writeString(file, text.replace("SEASON", Integer.toString(season)), UTF_8);
        }
        for (String folder : FOLDERS) {
          Files.createDirectories(book.resolve(folder));
        }
        writeSchemas(book.resolve("schemas"));
      }
      if (Files.exists(target)) {
        fill(book);
      } else {
        Files.move(book, target, StandardCopyOption.ATOMIC_MOVE);
      }
    } finally {
      delete(beside);
    }
  }

  /** An empty folder stays the one it was: it may be a link, or the one that someone works in. */
  private void fill(Path book) throws IOException {
    try (Stream<Path> inside = Files.list(book)) {
      for (Path p : inside.sorted().toList()) {
        Files.move(p, target.resolve(p.getFileName()), StandardCopyOption.ATOMIC_MOVE);
      }
    }
  }

  /** A list names the files, since a program cannot look into its own jar as into a folder. */
  private static void copyResources(String name, Path into) throws IOException {
    String list = new String(resource(name + "-files.txt"), UTF_8);
    for (String file : list.lines().toList()) {
      Path to = into.resolve(file);
      Files.createDirectories(Objects.requireNonNull(to.getParent()));
      Files.write(to, resource(name + "/" + file));
    }
  }

  private static byte[] resource(String name) throws IOException {
    try (InputStream in = NewBook.class.getResourceAsStream(name)) {
      return Objects.requireNonNull(in, name).readAllBytes();
    }
  }

  /** For editors; {@code book.yaml} names its own in a line that they read. */
  private static void writeSchemas(Path folder) throws IOException {
    Files.createDirectories(folder);
    for (String name : CatalogSchemaCommand.names()) {
      Path file = folder.resolve(CatalogSchemaCommand.fileName(name).orElseThrow());
      Files.writeString(file, CatalogSchemaCommand.text(name).orElseThrow(), UTF_8);
    }
  }

  private static void delete(Path folder) throws IOException {
    if (Files.exists(folder)) {
      try (Stream<Path> all = Files.walk(folder)) {
        for (Path p : all.sorted(Comparator.reverseOrder()).toList()) {
          Files.delete(p);
        }
      }
    }
  }
}
