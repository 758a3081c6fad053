package org.swathbook.book.file;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.swathbook.source.CsvRow;

/**
 * Whether columns of a long table say the same as in the row of which it was asked before. Texts
 * that a reader repeats are mostly the very same, so this costs next to nothing.
 */
final class AlikeCells {
  private final List<String> columns;
  private int[] places = new int[0];
  private @Nullable CsvRow before;

  /**
   * @param columns of which the table need not have all
   */
  AlikeCells(List<String> columns) {
    this.columns = List.copyOf(columns);
  }

  /** False of the first row of a table. */
  boolean asBefore(CsvRow row) {
    CsvRow last = before;
    before = row;
    if (last == null || last.header() != row.header()) {
      places = columns.stream().mapToInt(row.header()::indexOf).toArray();
      return false;
    }
    for (int place : places) {
      if (!row.text(place).equals(last.text(place))) {
        return false;
      }
    }
    return true;
  }
}
