package org.swathbook.book.file;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import org.swathbook.source.MapNode;
import org.swathbook.source.Mark;
import org.swathbook.source.ProblemsException;
import org.swathbook.source.YamlReader;

/** Opening of files; what goes wrong is said as a problem of the file. */
final class BookFiles {
  private BookFiles() {}

  /**
   * All bytes of a small file wherever it lies, at most one more than a YAML file may have: a huge
   * one costs no memory before it is refused.
   *
   * @throws ProblemsException when it is missing or cannot be read
   */
  static byte[] bytes(Path file, String name) {
    try (InputStream in = Files.newInputStream(file)) {
      return in.readNBytes(YamlReader.MOST_BYTES + 1);
    } catch (IOException e) {
      throw unreadable(name, e, "write it, or check the name of the folder");
    }
  }

  /**
   * Opens a file of the book, which must not be a link to somewhere else.
   *
   * @param right what to do when the file is missing
   * @throws ProblemsException when it is missing or cannot be read
   */
  static InputStream open(Path book, String name, String right) {
    Path file = book.resolve(name);
    try {
      if (Files.exists(file) && !new BookPaths(book).isInside(file)) {
        throw ProblemsException.of(BookPaths.leadsOut(name));
      }
      return Files.newInputStream(file);
    } catch (IOException e) {
      throw unreadable(name, e, right);
    }
  }

  /**
   * A YAML file of the book.
   *
   * @throws ProblemsException when it is missing or no map
   */
  static MapNode yaml(Path book, String name) {
    try (InputStream in = open(book, name, "write it, or name the folder of a book")) {
      return new YamlReader().readMap(name, in.readNBytes(YamlReader.MOST_BYTES + 1));
    } catch (IOException e) {
      throw unreadable(name, e, "write it");
    }
  }

  static ProblemsException unreadable(String name, IOException error, String ifMissing) {
    return error instanceof NoSuchFileException
        ? ProblemsException.of(Mark.startOf(name), "the file is missing", ifMissing)
        : ProblemsException.of(
            Mark.startOf(name), "the file cannot be read", "check that it is a file you may open");
  }
}
