package org.swathbook.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import org.swathbook.book.Book;
import org.swathbook.book.file.BookLoader;
import org.swathbook.book.file.BookPaths;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;

/** Which book a command works on. */
final class BookOption {
  private static final String BOOK = "book.yaml";

  private final CommandSpec command;
  private final Value<Path> dir;

  BookOption(CommandSpec command) {
    this.command = command;
    dir =
        Value.option(
            command,
            "--book",
            "DIR",
            Path.class,
            "Folder of the book; the current folder when it holds a book.yaml.");
  }

  /** The folder named, else the current one when it is a book. */
  BookPaths paths() {
    if (dir.value() != null) {
      return new BookPaths(dir.value());
    }
    Path here = Path.of("");
    if (!Files.isRegularFile(here.resolve(BOOK))) {
      throw new ParameterException(
          command.commandLine(),
          "no book: the current folder holds no book.yaml; name a folder that does, --book DIR");
    }
    return new BookPaths(here);
  }

  Book load(BookPaths paths) {
    return loader().load(paths.book());
  }

  /** A book of which one field is asked about, as it was typed. */
  Book loadFor(BookPaths paths, String field) {
    return loader().loadFor(paths.book(), field);
  }

  private BookLoader loader() {
    return new BookLoader(Swathbook.of(command).catalogs());
  }
}
