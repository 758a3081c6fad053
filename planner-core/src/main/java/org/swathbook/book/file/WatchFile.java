package org.swathbook.book.file;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.swathbook.book.Book;
import org.swathbook.catalog.Site;
import org.swathbook.catalog.WeedId;
import org.swathbook.program.FieldId;
import org.swathbook.source.AtomicFiles;
import org.swathbook.source.CsvReader;
import org.swathbook.source.CsvRow;
import org.swathbook.source.CsvTable;
import org.swathbook.source.CsvText;
import org.swathbook.source.Mark;
import org.swathbook.source.NotDurableException;
import org.swathbook.source.Problems;
import org.swathbook.source.ProblemsException;

/**
 * Adds what was suspected to {@code watch.csv}, for next winter. One writer at a time works on it,
 * under the lock of the journal, and the file is replaced whole, so that no half row can stay.
 */
public final class WatchFile {
  private static final Table TABLE = WatchReader.TABLE;
  private static final List<String> COLUMNS = List.of("field", "weed", "site", "since", "reason");

  private WatchFile() {}

  /** One suspicion. */
  public record Entry(FieldId field, WeedId weed, Site site, LocalDate since, String reason) {}

  /**
   * Adds the entries that the file lacks: those of a field, weed and site that it does not name.
   *
   * @return what was added
   * @throws ProblemsException when the file is no good or cannot be written; it is then as it was
   */
  public static List<Entry> add(BookPaths paths, Book book, List<Entry> entries) {
    // An empty path is no folder to the platform.
    Path folder = paths.book().toString().isEmpty() ? Path.of(".") : paths.book();
    try (JournalLock lock = JournalLock.take(folder)) {
      Objects.requireNonNull(lock);
      Path file = folder.resolve(TABLE.file());
      byte[] old =
          Files.exists(file)
              ? read(folder)
              : (String.join(",", COLUMNS) + "\n").getBytes(StandardCharsets.UTF_8);
      Problems problems = new Problems();
      CsvTable table = new CsvReader().read(TABLE.file(), old, TABLE.columns(), problems);
      problems.throwIfAny();
      List<Entry> fresh =
          entries.stream()
              .filter(e -> table.rows().stream().noneMatch(r -> same(book, r, e)))
              .toList();
      if (!fresh.isEmpty()) {
        AtomicFiles.write(Files.exists(file) ? file.toRealPath() : file, whole(old, table, fresh));
      }
      return fresh;
    } catch (NotDurableException e) {
      throw ProblemsException.of(
          Mark.startOf(TABLE.file()), "the file " + e.words(), "see to the disk, then call again");
    } catch (IOException e) {
      throw ProblemsException.of(
          Mark.startOf(TABLE.file()),
          "the file cannot be written, and is as it was",
          "see to the disk and the rights of the folder, then call again");
    }
  }

  private static byte[] read(Path folder) throws IOException {
    try (InputStream in = BookFiles.open(folder, TABLE.file(), "write it")) {
      return in.readAllBytes();
    }
  }

  private static boolean same(Book book, CsvRow row, Entry e) {
    Optional<WeedId> weed = book.catalog().findWeed(row.text("weed")).map(w -> w.id());
    return e.field().matches(row.text("field"))
        && weed.equals(Optional.of(e.weed()))
        && Site.find(row.text("site")).equals(Optional.of(e.site()));
  }

  /** The columns stay in the order of the file; what it has no column for goes into none. */
  private static byte[] whole(byte[] old, CsvTable table, List<Entry> entries) {
    String text = new String(old, StandardCharsets.UTF_8);
    String end = text.contains("\r\n") ? "\r\n" : "\n";
    StringBuilder out = new StringBuilder(text);
    if (!text.endsWith("\n")) {
      out.append(end);
    }
    List<String> lacking = COLUMNS.stream().filter(c -> !table.has(c)).toList();
    if (!lacking.isEmpty()) {
      throw ProblemsException.of(
          Mark.startOf(TABLE.file()),
          "the columns " + String.join(", ", lacking) + " are missing",
          "add them to its first line");
    }
    for (Entry e : entries) {
      Map<String, String> cells =
          Map.of(
              "field", e.field().value(),
              "weed", e.weed().value(),
              "site", e.site().toString(),
              "since", e.since().toString(),
              "reason", e.reason());
      List<String> row = new ArrayList<>();
      table.header().names().forEach(c -> row.add(cells.getOrDefault(c, "")));
      out.append(CsvText.row(row)).append(end);
    }
    return out.toString().getBytes(StandardCharsets.UTF_8);
  }
}
