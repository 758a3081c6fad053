package org.swathbook.source;

import java.io.IOException;
import java.io.Reader;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * Takes a text apart into rows of cells, as spreadsheets write them (RFC 4180): commas, either line
 * end, quotes around a cell, a quote in it written twice. Blanks around a cell are passed over
 * before it is asked whether it begins with a quote. Where a cell stands is kept as numbers; texts
 * that a column repeats become one string mostly, so that a long journal makes few.
 */
final class CsvCells {
  private static final int MOST_COLUMNS = 500;
  private static final int MOST_CELL = 100_000;

  /** A quote that is open for so long is never closed. */
  private static final int LONGEST_QUOTE = 20_000_000;

  private static final char END = '\uFFFF';
  private static final char DELETE = '\u007F';

  private final String file;
  private final int lineShift;
  private final Reader in;
  private char[] buffer = new char[1 << 14];
  private int at;
  private int end;
  private boolean ended;
  private boolean afterReturn;
  private boolean faulty;

  /** Of the line that is read: its number, where it begins, halves of characters on it so far. */
  private int line = 1;

  private int lineStart;
  private int halves;

  /** Of the row: where it begins, and its cells. */
  private int rowStart;

  private int count;

  /** The line of a row that {@link #plainRow} has read whole; 0 of another. */
  private int plainLine;

  private int[] from = new int[32];
  private int[] to = new int[32];

  private final RowBefore before = new RowBefore();

  /** Texts of the cells; null of one that nobody has asked for since it became another. */
  private @Nullable String[] texts = new String[32];

  private int[] lines = new int[32];
  private int[] columns = new int[32];
  private int rawColumn;

  /** By column; null of one of which no text was asked for. */
  private @Nullable RepeatedTexts[] known = new RepeatedTexts[32];

  CsvCells(String file, int lineShift, Reader in) {
    this.file = file;
    this.lineShift = lineShift;
    this.in = in;
  }

  /**
   * Goes to the next row, blank ones too.
   *
   * @return false at the end of the text, and when {@link #isFaulty}
   * @throws ProblemsException when a row or a cell is too long to be one
   */
  boolean next() throws IOException {
    keep();
    count = 0;
    plainLine = 0;
    rowStart = at;
    char c = peek();
    if (afterReturn && c == '\n') {
      at++;
      rowStart = at;
      lineStart = at;
      c = peek();
    }
    afterReturn = false;
    if (c == END && ended && at == end) {
      return false;
    }
    if (plainRow()) {
      return true;
    }
    Arrays.fill(texts, null);
    boolean more = true;
    while (more) {
      more = cell();
    }
    return !faulty;
  }

  /** Remembers a plain row, for the next one may be much like it. */
  private void keep() {
    if (plainLine > 0) {
      int[] otherFrom = before.from();
      int[] otherTo = before.to();
      before.keep(at, from, to, count);
      boolean narrow = otherFrom.length < from.length;
      from = narrow ? new int[from.length] : otherFrom;
      to = narrow ? new int[to.length] : otherTo;
    } else {
      before.forget();
    }
  }

  /**
   * Reads a row as most are: of letters, digits and signs of ASCII, without a quote and without
   * blanks around a cell. Where its cells stand follows from what they hold.
   *
   * @return false of any other row, of which nothing is read then
   */
  private boolean plainRow() throws IOException {
    while (true) {
      takeAlike();
      boolean ended = at > rowStart && buffer[at - 1] != ',';
      if (!ended && !plainCell()) {
        at = rowStart;
        count = 0;
        return false;
      }
      char c = buffer[at - 1];
      if (c != ',') {
        plainLine = line + lineShift;
        afterReturn = c == '\r';
        newLine();
        return true;
      }
    }
  }

  /** Goes over cells that stand here as in the row before: their texts stay. */
  private void takeAlike() {
    int alikeTo = before.takeAlike(count, buffer, at, end, from, to);
    if (alikeTo > count) {
      count = alikeTo;
      at = to[count - 1] + 1;
    }
  }

  /** Reads one cell and the comma or line end behind it; false when it is not plain. */
  private boolean plainCell() throws IOException {
    int p = at;
    int start = p;
    char[] chars = buffer;
    int stop = end;
    while (true) {
      if (p == stop) {
        int length = p - start;
        at = p;
        if (!fill()) {
          return false;
        }
        p = at;
        start = p - length;
        chars = buffer;
        stop = end;
      }
      char c = chars[p];
      if (c > ',' ? c < DELETE : c != ',' && c >= ' ' && c != '"') {
        p++;
        continue;
      }
      if (c != ',' && c != '\n' && c != '\r'
          || count == from.length
          || p - start > MOST_CELL
          || p > start && (chars[start] == ' ' || chars[p - 1] == ' ')) {
        return false;
      }
      from[count] = start;
      to[count] = p;
      texts[count] = null;
      count++;
      at = p + 1;
      return true;
    }
  }

  /** Whether the quotes of the last cell do not close before the next comma. */
  boolean isFaulty() {
    return faulty;
  }

  /** Where the cell begins whose quotes do not close. */
  Mark fault() {
    return new Mark(file, lines[count], rawColumn);
  }

  int count() {
    return count;
  }

  /** The line of the row when its cells stand one behind the other, with a comma each; else 0. */
  int plainLine() {
    return plainLine;
  }

  /** Where the cells of a row stand that is not plain. */
  int[] lines() {
    return Arrays.copyOf(lines, count);
  }

  int[] columns() {
    return Arrays.copyOf(columns, count);
  }

  Mark mark(int cell) {
    return plainLine > 0
        ? new Mark(file, plainLine, from[cell] - rowStart + 1)
        : new Mark(file, lines[cell], columns[cell]);
  }

  boolean isEmpty(int cell) {
    return from[cell] == to[cell];
  }

  /** First sign of a cell that is not empty. */
  char first(int cell) {
    return buffer[from[cell]];
  }

  /** Texts of the first cells, without the blanks around them. */
  String[] texts(int number) {
    // Arrays.copyOf would ask by reflection of what the array is made, for every row.
    String[] out = new String[number];
    for (int cell = 0; cell < number; cell++) {
      String text = texts[cell];
      out[cell] = text != null ? text : text(cell);
    }
    return out;
  }

  /** Text of a cell without the blanks around it. */
  String text(int cell) {
    String text = texts[cell];
    if (text == null) {
      text = from[cell] == to[cell] ? "" : remembered(cell);
      texts[cell] = text;
    }
    return text;
  }

  private String remembered(int cell) {
    RepeatedTexts texts = known[cell];
    if (texts == null) {
      texts = new RepeatedTexts();
      known[cell] = texts;
    }
    return texts.of(buffer, from[cell], to[cell] - from[cell]);
  }

  /** Reads a cell; returns whether another one follows in the row. */
  private boolean cell() throws IOException {
    char c = peek();
    while (c <= ' ' && c != '\n' && c != '\r') {
      at++;
      c = peek();
    }
    boolean none = c == END && at == end;
    if (count == lines.length) {
      grow();
    }
    lines[count] = line + lineShift;
    rawColumn = Math.max(1, at - lineStart + (none ? 0 : 1));
    columns[count] = rawColumn - halves;
    if (count == MOST_COLUMNS) {
      throw tooLong("the row has more than " + MOST_COLUMNS + " cells", "cut the row");
    }
    from[count] = at;
    if (c == '"') {
      if (!quoted()) {
        faulty = true;
        return false;
      }
    } else {
      plain();
    }
    if (to[count] - from[count] > MOST_CELL) {
      throw tooLong(
          "the cell holds more than " + MOST_CELL + " characters",
          "shorten the text, or close a quote that was left open here");
    }
    trim();
    count++;
    return endOfCell();
  }

  private ProblemsException tooLong(String what, String right) {
    return ProblemsException.of(new Mark(file, lines[count], rawColumn), what, right);
  }

  /** Passes over the comma or the line end behind a cell; returns whether it was a comma. */
  private boolean endOfCell() throws IOException {
    char c = peek();
    if (c == END && at == end) {
      return false;
    }
    at++;
    if (c == ',') {
      return true;
    }
    afterReturn = c == '\r';
    newLine();
    return false;
  }

  private void newLine() {
    line++;
    lineStart = at;
    halves = 0;
  }

  private void plain() throws IOException {
    while (true) {
      int p = at;
      int stop = end;
      char[] chars = buffer;
      while (p < stop) {
        char c = chars[p];
        if (c == ',' || c == '\n' || c == '\r') {
          at = p;
          endPlain();
          return;
        }
        if (Character.isLowSurrogate(c)) {
          halves++;
        }
        p++;
      }
      at = p;
      if (!fill()) {
        endPlain();
        return;
      }
    }
  }

  /** Signs that show nothing count as blanks where no quotes keep them. */
  private void endPlain() {
    int last = at;
    while (last > from[count] && buffer[last - 1] <= ' ') {
      last--;
    }
    to[count] = last;
  }

  /** Reads up to the comma or line end behind the closing quote; false when there is none. */
  private boolean quoted() throws IOException {
    at++;
    from[count] = at;
    // Quotes in it are written twice: what follows them moves to the left.
    int skipped = 0;
    while (true) {
      char c = peek();
      if (c == END && at == end || at - from[count] > LONGEST_QUOTE) {
        return false;
      }
      at++;
      if (c == '"') {
        if (peek() != '"') {
          break;
        }
        at++;
        skipped++;
      } else if (c == '\r') {
        buffer[at - 1 - skipped] = c;
        if (peek() == '\n') {
          at++;
          c = '\n';
        }
        newLine();
      } else if (c == '\n') {
        newLine();
      } else if (Character.isLowSurrogate(c)) {
        halves++;
      }
      buffer[at - 1 - skipped] = c;
    }
    to[count] = at - 1 - skipped;
    char c = peek();
    while (c <= ' ' && c != '\n' && c != '\r') {
      at++;
      c = peek();
    }
    return c == ',' || c == '\n' || c == '\r' || c == END && at == end;
  }

  /** Takes off blanks around a cell, the no-break space of spreadsheets among them. */
  private void trim() {
    int a = from[count];
    int b = to[count];
    while (a < b && isBlank(buffer[a])) {
      a++;
    }
    while (b > a && isBlank(buffer[b - 1])) {
      b--;
    }
    from[count] = a;
    to[count] = b;
  }

  private static boolean isBlank(char c) {
    return c == '\u00A0' || Character.isWhitespace(c);
  }

  private void grow() {
    int length = 2 * lines.length;
    from = Arrays.copyOf(from, length);
    to = Arrays.copyOf(to, length);
    lines = Arrays.copyOf(lines, length);
    columns = Arrays.copyOf(columns, length);
    texts = Arrays.copyOf(texts, length);
    known = Arrays.copyOf(known, length);
  }

  /** The character that comes next; END, at {@link #end}, when none does. */
  private char peek() throws IOException {
    return at < end || fill() ? buffer[at] : END;
  }

  /** Brings more of the text behind what there is of the row; false at its end. */
  private boolean fill() throws IOException {
    if (ended) {
      return false;
    }
    int needed = before.start(rowStart);
    if (needed > 0) {
      System.arraycopy(buffer, needed, buffer, 0, end - needed);
      for (int i = 0; i <= count && i < from.length; i++) {
        from[i] -= needed;
        to[i] -= needed;
      }
      at -= needed;
      end -= needed;
      lineStart -= needed;
      rowStart -= needed;
      before.move(needed);
    } else if (end == buffer.length) {
      buffer = Arrays.copyOf(buffer, 2 * buffer.length);
    }
    int n = in.read(buffer, end, buffer.length - end);
    if (n < 0) {
      ended = true;
      return false;
    }
    end += n;
    return true;
  }
}
