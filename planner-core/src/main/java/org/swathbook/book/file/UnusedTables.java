package org.swathbook.book.file;

import java.nio.file.Path;
import java.util.List;
import org.swathbook.source.CsvColumns;
import org.swathbook.source.Problems;

/** Tables that a book may hold but that nothing is worked out from yet: their rows get a note. */
final class UnusedTables {
  static final Table WATCH =
      new Table(
          "watch.csv", CsvColumns.required("field", "weed").andOptional("site", "since", "reason"));
  private static final List<Table> TABLES = List.of(WATCH);

  private UnusedTables() {}

  static void read(Path book, Problems problems, List<String> notes) {
    for (Table table : TABLES) {
      if (table.isThere(book)) {
        int[] rows = {0};
        table.read(book, problems, row -> rows[0]++);
        if (rows[0] > 0) {
          notes.add(
              table.file()
                  + ": its "
                  + (rows[0] == 1 ? "row is" : rows[0] + " rows are")
                  + " not used yet.");
        }
      }
    }
  }
}
