package org.swathbook.book.file;

import java.util.List;
import java.util.Optional;
import org.swathbook.source.SchemaFolder;

/** Descriptions of the files of a book, for editors and validators. */
public final class BookSchemas {
  private static final SchemaFolder FOLDER =
      new SchemaFolder(
          BookSchemas.class,
          "/org/swathbook/book/schema/",
          List.of("book", "program", "mix", "observation"),
          List.of(
              "fields",
              "weeds",
              "applications",
              "prices",
              "seasons",
              "scouting",
              "watch",
              "stock"));

  private BookSchemas() {}

  /** Names of all: of YAML files with a JSON Schema, then of CSV files with a Table Schema. */
  public static List<String> names() {
    return FOLDER.names();
  }

  /** The file in which the text of a name is kept; empty for an unknown name. */
  public static Optional<String> fileName(String name) {
    return FOLDER.fileName(name);
  }

  /** The JSON text of a name; empty for an unknown name. */
  public static Optional<String> text(String name) {
    return FOLDER.text(name);
  }
}
