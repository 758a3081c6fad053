package org.swathbook.catalog.file;

import java.util.List;
import java.util.Optional;
import org.swathbook.source.SchemaFolder;

/** Descriptions of the files of a catalog, for editors and validators. */
public final class CatalogSchemas {
  private static final SchemaFolder FOLDER =
      new SchemaFolder(
          CatalogSchemas.class,
          "/org/swathbook/catalog/schema/",
          List.of("ingredient", "product", "weed", "crop", "interactions"),
          List.of("responses"));

  private CatalogSchemas() {}

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
