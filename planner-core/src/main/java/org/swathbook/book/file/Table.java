package org.swathbook.book.file;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import org.swathbook.source.CsvColumns;
import org.swathbook.source.CsvHeader;
import org.swathbook.source.CsvReader;
import org.swathbook.source.CsvRow;
import org.swathbook.source.CsvStart;
import org.swathbook.source.Problems;
import org.swathbook.source.ProblemsException;

/**
 * A table of a book and its columns.
 *
 * @param file name relative to the book, with slashes
 */
record Table(String file, CsvColumns columns) {
  /** Of so many bytes a table is long. */
  private static final long LONG_BYTES = 4_000_000;

  /** Rows one by one; a file that is missing or cannot be read is a problem. */
  Optional<CsvHeader> read(Path book, Problems problems, Consumer<CsvRow> sink) {
    return read(book, CsvStart.FIRST_LINE, problems, sink);
  }

  /** The same for a table that does not begin with a header in the first line. */
  Optional<CsvHeader> read(Path book, CsvStart start, Problems problems, Consumer<CsvRow> sink) {
    String ifMissing = "write one that starts with '" + String.join(",", columns.required()) + "'";
    try (InputStream in = BookFiles.open(book, file, ifMissing)) {
      if (!isLong(book)) {
        return new CsvReader().stream(file, in, start, columns, problems, sink);
      }
      Problems ofForm = new Problems();
      try {
        return RowsAhead.read(
            rows -> new CsvReader().stream(file, in, start, columns, ofForm, rows), sink);
      } finally {
        problems.addAll(ofForm.sorted());
      }
    } catch (ProblemsException e) {
      problems.addAll(e.problems());
    } catch (IOException e) {
      problems.addAll(BookFiles.unreadable(file, e, ifMissing).problems());
    }
    return Optional.empty();
  }

  boolean isThere(Path book) {
    return Files.exists(book.resolve(file));
  }

  /** Whether it takes longer to read than a thread to start; one that cannot be read does not. */
  boolean isLong(Path book) {
    try {
      return Files.size(book.resolve(file)) >= LONG_BYTES;
    } catch (IOException e) {
      return false;
    }
  }
}
