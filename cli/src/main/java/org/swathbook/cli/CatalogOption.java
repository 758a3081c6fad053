package org.swathbook.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import org.swathbook.book.file.CatalogPlace;
import org.swathbook.catalog.file.CatalogLoader;
import org.swathbook.catalog.file.WrittenCatalog;
import picocli.CommandLine.Option;

/** Which catalog a command works on. */
final class CatalogOption {
  @Option(
      names = "--book",
      paramLabel = "DIR",
      description =
          "Folder of the book whose catalog is meant; the current folder when it holds a book.yaml,"
              + " else the starter catalog by itself.")
  @Nullable Path dir;

  /** Where the catalog lies; no more of the book is read than that takes. */
  CatalogPlace place() {
    Path book = dir == null ? Path.of(".") : dir;
    return dir == null && !Files.isRegularFile(book.resolve("book.yaml"))
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
