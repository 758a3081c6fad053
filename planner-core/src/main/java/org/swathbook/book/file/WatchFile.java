package org.swathbook.book.file;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.swathbook.book.Book;
import org.swathbook.catalog.Site;
import org.swathbook.catalog.WeedId;
import org.swathbook.program.FieldId;
import org.swathbook.source.CsvReader;
import org.swathbook.source.CsvRow;
import org.swathbook.source.CsvTable;
import org.swathbook.source.CsvText;
import org.swathbook.source.Mark;
import org.swathbook.source.NewFiles;
import org.swathbook.source.Problems;
import org.swathbook.source.ProblemsException;

/**
 * Adds what was suspected to {@code watch.csv}, for next winter, as {@link LockedFile} has it: no
 * half row can stay.
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
    return add(paths, book, entries, fresh -> new NewFiles());
  }

  /**
   * The same, with other files that are written together with it, all or none.
   *
   * @param others made of what is added; written even when nothing is
   * @return what was added
   * @throws ProblemsException when any of the files is no good or cannot be written
   */
  public static List<Entry> add(
      BookPaths paths, Book book, List<Entry> entries, Function<List<Entry>, NewFiles> others) {
    return LockedFile.change(
        paths.book(),
        TABLE.file(),
        file -> {
          byte[] old =
              file.exists()
                  ? file.read("write it")
                  : (String.join(",", COLUMNS) + "\n").getBytes(StandardCharsets.UTF_8);
          Problems problems = new Problems();
          CsvTable table = new CsvReader().read(TABLE.file(), old, TABLE.columns(), problems);
          problems.throwIfAny();
          List<Entry> fresh =
              entries.stream()
                  .filter(e -> table.rows().stream().noneMatch(r -> same(book, r, e)))
                  .toList();
          if (fresh.isEmpty()) {
            others.apply(fresh).write();
          } else {
            byte[] whole = whole(old, table, fresh);
            file.write(others.apply(fresh), whole);
          }
          return fresh;
        });
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
