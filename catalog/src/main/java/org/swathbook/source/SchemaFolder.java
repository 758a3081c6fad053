package org.swathbook.source;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Descriptions of files that people keep, for editors and validators: JSON CatalogSchemas (draft
 * 2020-12) of YAML files and Table CatalogSchemas of CSV files. They lie beside the classes that
 * read the files.
 *
 * @param beside a class in whose module the folder lies
 * @param path of the folder, {@code /org/swathbook/catalog/schema/}
 * @param documents names of the YAML files that are described, {@code ingredient}
 * @param tables names of the CSV files that are described, {@code responses}
 */
public record SchemaFolder(
    Class<?> beside, String path, List<String> documents, List<String> tables) {

  public SchemaFolder {
    documents = List.copyOf(documents);
    tables = List.copyOf(tables);
  }

  /** Every name, those of documents first. */
  public List<String> names() {
    return Stream.concat(documents.stream(), tables.stream()).toList();
  }

  /** {@code ingredient.schema.json} or {@code responses.table.json}; empty for an unknown name. */
  public Optional<String> fileName(String name) {
    if (documents.contains(name)) {
      return Optional.of(name + ".schema.json");
    }
    return tables.contains(name) ? Optional.of(name + ".table.json") : Optional.empty();
  }

  /** The JSON text of a name; empty for an unknown one. */
  public Optional<String> text(String name) {
    return fileName(name).map(this::read);
  }

  private String read(String file) {
    try (InputStream in = beside.getResourceAsStream(path + file)) {
      if (in == null) {
        throw new IllegalStateException(path + file + " was left out of the build");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
