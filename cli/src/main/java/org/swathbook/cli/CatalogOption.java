package org.swathbook.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import org.swathbook.book.file.CatalogPlace;
import org.swathbook.catalog.file.CatalogLoader;
import org.swathbook.catalog.file.WrittenCatalog;
import picocli.CommandLine.Model.CommandSpec;

/** Which catalog a command works on. */
final class CatalogOption {
  private final Value<Path> dir;

  CatalogOption(CommandSpec command) {
    dir =
        Value.option(
            command,
            "--book",
            "DIR",
            Path.class,
            "Folder of the book whose catalog is meant; the current folder when it holds a"
                + " book.yaml, else the starter catalog by itself.");
  }

  /** Where the catalog lies; no more of the book is read than that takes. */
  CatalogPlace place() {
    Path book = dir.value() == null ? Path.of(".") : dir.value();
    return dir.value() == null && !Files.isRegularFile(book.resolve("book.yaml"))
        ? CatalogPlace.STARTER
        : CatalogPlace.of(book);
  }

  WrittenCatalog load() {
    return load(place());
  }

  static WrittenCatalog load(CatalogPlace place) {
    return new CatalogLoader().written(place.starter(), place.folder(), place.shown());
  }
}
