package org.swathbook.cli.text;

import java.util.ArrayList;
import java.util.List;

/**
 * Rows in columns as wide as their widest cell, two spaces apart. The last column wraps within the
 * page.
 */
final class Table {
  /** Where the cells of a column stand. */
  enum Side {
    LEFT,
    RIGHT
  }

  private static final String GAP = "  ";
  private static final int LEAST_LAST = 10;

  private final int indent;
  private final List<Side> sides;
  private final List<List<String>> rows = new ArrayList<>();

  /**
   * @param indent columns left free on the left
   * @param sides one letter a column, {@code l} or {@code r}
   */
  Table(int indent, String sides) {
    this.indent = indent;
    this.sides = sides.chars().mapToObj(c -> c == 'r' ? Side.RIGHT : Side.LEFT).toList();
  }

  Table row(String... cells) {
    return row(List.of(cells));
  }

  Table row(List<String> cells) {
    if (cells.size() != sides.size()) {
      throw new IllegalArgumentException(
          "a row of " + cells.size() + " cells in a table of " + sides.size());
    }
    rows.add(List.copyOf(cells));
    return this;
  }

  void on(Page page) {
    int[] widths = new int[sides.size()];
    for (List<String> row : rows) {
      for (int c = 0; c < widths.length; c++) {
        widths[c] = Math.max(widths[c], row.get(c).length());
      }
    }
    int last = widths.length - 1;
    int before = indent;
    for (int c = 0; c < last; c++) {
      before += widths[c] + GAP.length();
    }
    int room = Math.max(LEAST_LAST, Page.WIDTH - before);
    widths[last] = Math.min(widths[last], room);
    for (List<String> row : rows) {
      StringBuilder line = new StringBuilder(" ".repeat(indent));
      for (int c = 0; c < last; c++) {
        line.append(padded(row.get(c), widths[c], sides.get(c))).append(GAP);
      }
      for (String part : Wrap.lines(row.get(last), room, room)) {
        page.line(line + padded(part, widths[last], sides.get(last)));
        line.setLength(0);
        line.append(" ".repeat(before));
      }
    }
  }

  private static String padded(String cell, int width, Side side) {
    String pad = " ".repeat(Math.max(0, width - cell.length()));
    return side == Side.RIGHT ? pad + cell : cell + pad;
  }
}
