package org.swathbook.book.file;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.swathbook.source.Mark;
import org.swathbook.source.Problems;
import org.swathbook.source.ProblemsException;

/**
 * Where the catalog of a book is: whether the starter lies beneath, and the folder over it.
 *
 * @param folder empty when the book has no entries of its own
 * @param shown name of that folder for people
 */
public record CatalogPlace(boolean starter, Optional<Path> folder, String shown) {
  private static final String DEFAULT_FOLDER = "catalog";

  /** The starter and nothing else. */
  public static final CatalogPlace STARTER =
      new CatalogPlace(true, Optional.empty(), DEFAULT_FOLDER);

  /**
   * As {@code book.yaml} says; nothing else of the book is read.
   *
   * @throws ProblemsException when that file is missing or wrong
   */
  public static CatalogPlace of(Path book) {
    Problems problems = new Problems();
    BookYaml yaml = BookYamlReader.read(BookFiles.yaml(book, "book.yaml"), problems);
    problems.throwIfAny();
    return of(book, yaml);
  }

  /**
   * As already read.
   *
   * @throws ProblemsException when the folder leads out of the book
   */
  static CatalogPlace of(Path book, BookYaml yaml) {
    Path own = book.resolve(yaml.catalogFolder());
    boolean there = Files.isDirectory(own);
    if (there && !new BookPaths(book).isInside(own)) {
      throw ProblemsException.of(
          Mark.startOf(yaml.catalogFolder()),
          "the link leads out of the book",
          "put the folder itself into the book");
    }
    // A book without entries of its own need not have the folder they would lie in.
    boolean looked = there || !yaml.catalogFolder().equals(DEFAULT_FOLDER);
    return new CatalogPlace(
        yaml.starter(), looked ? Optional.of(own) : Optional.empty(), yaml.catalogFolder());
  }
}
