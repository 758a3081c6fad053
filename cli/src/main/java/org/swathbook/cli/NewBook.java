package org.swathbook.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.Month;
import java.util.List;
import java.util.Objects;
import org.swathbook.source.NewFolder;

/** Writes the folder of a book. */
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

  /** Whole or not at all, as {@link NewFolder} has it. */
  void write(boolean demo, int season) throws IOException {
    NewFolder.write(target, book -> write(demo, season, book));
  }

  private static void write(boolean demo, int season, Path book) throws IOException {
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
}
