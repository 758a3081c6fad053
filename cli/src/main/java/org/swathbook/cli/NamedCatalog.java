package org.swathbook.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.swathbook.book.file.CatalogPlace;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;

/** A catalog by the name that somebody types: a book, a catalog folder, or the starter alone. */
final class NamedCatalog {
  static final String STARTER = "starter";

  private NamedCatalog() {}

  static CatalogPlace of(String typed, CommandSpec spec) {
    if (typed.equals(STARTER)) {
      return CatalogPlace.STARTER;
    }
    Path dir = Path.of(typed);
    if (Files.isRegularFile(dir.resolve("book.yaml"))) {
      return CatalogPlace.of(dir);
    }
    if (!Files.isDirectory(dir)) {
      throw new ParameterException(
          spec.commandLine(),
          "there is no folder '" + typed + "'; name a book, a catalog folder, or 'starter'");
    }
    return new CatalogPlace(true, Optional.of(dir), typed);
  }
}
