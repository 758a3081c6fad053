package org.swathbook.source;

import java.io.IOException;
import java.util.Arrays;

/**
 * Takes a text apart into rows of cells, as spreadsheets write them (RFC 4180): commas, either line
 * end, quotes around a cell, a quote in it written twice. Most rows are plain, and much like the
 * one before: only where a row is neither are its cells read one by one with all that may be in
 * them. Where a cell stands is kept as numbers.
 */
final class CsvCells {
  private static final int MOST_COLUMNS = 500;
  private static final int MOST_CELL = 100_000;
  private static final char DELETE = '\u007F';

  private final String file;
  private final Utf8Bytes in;
  private final CellReader cell;
  private final CellTexts texts = new CellTexts();
  private boolean faulty;

  private CellPlaces row = new CellPlaces();

  /** Of a plain row before; without cells where there is none. */
  private CellPlaces before = new CellPlaces();

  /** The line of a row that {@link #plainRow} has read whole; 0 of another. */
  private int plainLine;

  /** Of another where its cells stand. */
  private int[] lines = new int[32];

  private int[] columns = new int[32];

  /**
   * @param in stands where the table begins
   */
  CsvCells(String file, Utf8Bytes in) {
    this.file = file;
    this.in = in;
    this.cell = new CellReader(file, in);
  }

  /**
   * Goes to the next row, blank ones too.
   *
   * @return false at the end of the text, and when {@link #isFaulty}
   * @throws ProblemsException when a row or a cell is too long to be one, or the text is no UTF-8
   */
  boolean next() throws IOException {
    boolean plain = plainLine > 0;
    in.beginRow(plain);
    CellPlaces last = row;
    row = before;
    before = last;
    row.clear();
    if (!plain) {
      before.clear();
    }
    plainLine = 0;
    if (in.peek() == Utf8Bytes.END) {
      return false;
    }
    if (plainRow()) {
      return true;
    }
    in.goTo(in.row());
    row.clear();
    texts.forgetAll();
    boolean more = true;
    while (more) {
      more = cell();
    }
    return !faulty;
  }

  /**
   * Reads a row as most are: of letters, digits and signs of ASCII, without a quote and without
   * blanks around a cell. Where its cells stand follows from what they hold.
   *
   * @return false of any other row
   */
  private boolean plainRow() throws IOException {
    while (true) {
      takeAlike();
      boolean isWhole = in.at() > in.row() && in.buffer()[in.at() - 1] != ',';
      if (!isWhole && !plainCell()) {
        return false;
      }
      int last = in.at() - 1;
      if (in.buffer()[last] != ',') {
        plainLine = in.line();
        in.goTo(last);
        in.endLine();
        return true;
      }
    }
  }

  /** Goes over cells that stand here as in the row before: their texts stay. */
  private void takeAlike() {
    int cells = row.count();
    row.takeAlike(before, in.buffer(), in.rowBefore(), in.row(), in.at(), in.end());
    if (row.count() > cells) {
      in.goTo(in.row() + row.to(row.count() - 1) + 1);
    }
  }

  /** Reads one cell and the comma or line end behind it; false when it is not plain. */
  private boolean plainCell() throws IOException {
    int start = in.at();
    int p = start;
    int stop = in.end();
    byte[] bytes = in.buffer();
    while (true) {
      if (p == stop) {
        if (!in.fill()) {
          return false;
        }
        p += in.at() - start;
        start = in.at();
        stop = in.end();
        bytes = in.buffer();
      }
      // What is no ASCII is below zero.
      byte c = bytes[p];
      if (c > ',' ? c < DELETE : c != ',' && c >= ' ' && c != '"') {
        p++;
        continue;
      }
      if (c != ',' && c != '\n' && c != '\r'
          || row.isFull()
          || p - start > MOST_CELL
          || p > start && (bytes[start] == ' ' || bytes[p - 1] == ' ')) {
        return false;
      }
      texts.forget(row.count());
      row.add(start - in.row(), p - in.row());
      in.goTo(p + 1);
      return true;
    }
  }

  /** Reads a cell; returns whether another one follows in the row. */
  private boolean cell() throws IOException {
    cell.begin();
    if (row.count() == MOST_COLUMNS) {
      throw cell.refuse("the row has more than " + MOST_COLUMNS + " cells", "cut the row");
    }
    if (!cell.read()) {
      faulty = true;
      return false;
    }
    if (row.isFull()) {
      row.grow();
    }
    int place = row.count();
    if (place == lines.length) {
      lines = Arrays.copyOf(lines, 2 * place);
      columns = Arrays.copyOf(columns, 2 * place);
      texts.grow();
    }
    lines[place] = cell.line();
    columns[place] = cell.column();
    row.add(cell.from(), cell.to());
    int c = in.peek();
    if (c == ',') {
      in.pass();
      return true;
    }
    if (c != Utf8Bytes.END) {
      in.endLine();
    }
    return false;
  }

  /** Whether the quotes of the last cell do not close before the next comma. */
  boolean isFaulty() {
    return faulty;
  }

  /** Where the cell begins whose quotes do not close. */
  Mark fault() {
    return cell.fault();
  }

  int count() {
    return row.count();
  }

  /** The line of the row when its cells stand one behind the other, with a comma each; else 0. */
  int plainLine() {
    return plainLine;
  }

  /** Where the cells of a row stand that is not plain. */
  int[] lines() {
    return Arrays.copyOf(lines, count());
  }

  int[] columns() {
    return Arrays.copyOf(columns, count());
  }

  Mark mark(int place) {
    return plainLine > 0
        ? new Mark(file, plainLine, row.from(place) + 1)
        : new Mark(file, lines[place], columns[place]);
  }

  boolean isEmpty(int place) {
    return row.isEmpty(place);
  }

  /** First sign of a cell that is not empty; some other sign where it is not ASCII. */
  char first(int place) {
    return (char) (in.buffer()[in.row() + row.from(place)] & 0xFF);
  }

  /** Texts of the first cells, without the blanks around them. */
  String[] texts(int number) {
    return texts.first(number, row, in.buffer(), in.row());
  }

  /** Text of a cell without the blanks around it. */
  String text(int place) {
    return texts.text(place, row, in.buffer(), in.row());
  }
}
