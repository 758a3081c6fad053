package org.swathbook.source;

import java.util.Optional;

/**
 * A row of a table. Places are kept as numbers and become marks when asked for: a long journal has
 * millions of cells.
 */
public final class CsvRow {
  private final CsvHeader header;
  private final String[] texts;
  private final int[] lines;
  private final int[] columns;

  CsvRow(CsvHeader header, String[] texts, int[] lines, int[] columns) {
    this.header = header;
    this.texts = texts;
    this.lines = lines;
    this.columns = columns;
  }

  /** Start of the row. */
  public Mark mark() {
    return new Mark(header.file(), lines[0], columns[0]);
  }

  /** Place of the cell, or of the row when the table has no such column. */
  public Mark mark(String column) {
    int i = header.indexOf(column);
    return i < 0 ? mark() : new Mark(header.file(), lines[i], columns[i]);
  }

  public int line() {
    return lines[0];
  }

  /**
   * Text of the cell without blanks around it; empty when blank or when there is no such column.
   */
  public String text(String column) {
    int i = header.indexOf(column);
    return i < 0 ? "" : texts[i];
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
