package org.swathbook.book.file;

import java.util.List;

/** A table with more columns at its right, which are empty in all its rows. */
final class CsvWidening {
  private final String text;
  private final int columns;
  private final List<String> added;
  private final StringBuilder out;
  private boolean headerDone;

  private CsvWidening(String text, int columns, List<String> added) {
    this.text = text;
    this.columns = columns;
    this.added = added;
    this.out = new StringBuilder(text.length() + text.length() / 50);
  }

  /**
   * @param text a table that reads without problems, so that every row has its cells
   * @param columns that its header names
   */
  static String of(String text, int columns, List<String> added) {
    CsvWidening widening = new CsvWidening(text, columns, added);
    int at = 0;
    while (at < text.length()) {
      at = widening.row(at);
    }
    return widening.out.toString();
  }

  /** One row from its first character on; gives the first character of the next one. */
  private int row(int start) {
    int cells = 1;
    int afterHeader = -1;
    boolean blank = true;
    boolean cellStart = true;
    boolean quotedCell = false;
    boolean quoted = false;
    int i = start;
    for (; i < text.length(); i++) {
      char c = text.charAt(i);
      if (quoted) {
        quoted = c != '"';
      } else if (c == '\n' || c == '\r') {
        break;
      } else if (c == ',') {
        if (cells == columns) {
          afterHeader = i;
        }
        cells++;
        cellStart = true;
        quotedCell = false;
        continue;
      } else if (c == '"' && (cellStart || quotedCell && text.charAt(i - 1) == '"')) {
        // The second case is a quote that was written twice.
        quotedCell = true;
        quoted = true;
      }
      if (c != '\uFEFF' && !Character.isWhitespace(c)) {
        blank = false;
        cellStart = false;
      }
    }
    end(start, i, blank, cells, afterHeader < 0 ? i : afterHeader);
    int next = i;
    while (next < text.length() && next < i + 2 && isLineEnd(i, next)) {
      next++;
    }
    out.append(text, i, next);
    return next;
  }

  private boolean isLineEnd(int first, int at) {
    return at == first || text.charAt(first) == '\r' && text.charAt(at) == '\n';
  }

  private void end(int start, int end, boolean blank, int cells, int afterColumns) {
    if (blank) {
      out.append(text, start, end);
    } else if (!headerDone) {
      headerDone = true;
      // Commas behind the last name are no columns.
      out.append(text, start, afterColumns);
      added.forEach(name -> out.append(',').append(name));
    } else {
      out.append(text, start, end);
      out.append(",".repeat(Math.max(0, added.size() - (cells - columns))));
    }
  }
}
