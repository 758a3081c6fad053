package org.swathbook.source;

import java.util.Arrays;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A row of a table. Places are kept as numbers and become marks when asked for: a long journal has
 * millions of cells.
 */
public final class CsvRow {
  private final CsvHeader header;
  private final String[] texts;
  private final int line;

  /** Of each cell its line, then of each its column; null where these follow from the texts. */
  private final int @Nullable [] places;

  private CsvRow(CsvHeader header, String[] texts, int line, int @Nullable [] places) {
    this.header = header;
    this.texts = texts;
    this.line = line;
    this.places = places;
  }

  /** A row on one line, each cell of it one comma behind the one before. */
  static CsvRow plain(CsvHeader header, String[] texts, int line) {
    return new CsvRow(header, texts, line, null);
  }

  static CsvRow of(CsvHeader header, String[] texts, int[] lines, int[] columns) {
    int[] places = Arrays.copyOf(lines, lines.length + columns.length);
    System.arraycopy(columns, 0, places, lines.length, columns.length);
    return new CsvRow(header, texts, lines[0], places);
  }

  /** Start of the row. */
  public Mark mark() {
    return markAt(0);
  }

  private Mark markAt(int cell) {
    if (places != null) {
      return new Mark(header.file(), places[cell], places[places.length / 2 + cell]);
    }
    int column = 1;
    for (int i = 0; i < cell; i++) {
      column += texts[i].length() + 1;
    }
    return new Mark(header.file(), line, column);
  }

  /** Place of the cell, or of the row when the table has no such column. */
  public Mark mark(String column) {
    int i = header.indexOf(column);
    return i < 0 ? mark() : markAt(i);
  }

  public int line() {
    return line;
  }

  /**
   * Text of the cell without blanks around it; empty when blank or when there is no such column.
   */
  public String text(String column) {
    return text(header.indexOf(column));
  }

  /**
   * The same by {@link CsvHeader#indexOf}.
   *
   * @param column its place in the header; below zero for none
   */
  public String text(int column) {
    return column < 0 ? "" : texts[column];
  }

  /** The cell when the table has the column and something stands in it. */
  public Optional<Cell> find(String column) {
    String text = text(column);
    return text.isEmpty() ? Optional.empty() : Optional.of(new Cell(mark(column), text));
  }

  public CsvHeader header() {
    return header;
  }
}
