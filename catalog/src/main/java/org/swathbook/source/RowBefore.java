package org.swathbook.source;

import java.util.Arrays;

/** The plain row before the one that is read, which may begin like it. */
final class RowBefore {
  private char[] signs = new char[256];
  private int length;
  private int count;

  /** Where its cells stand in it, from its first sign on, and where each of them ends. */
  private int[] from = new int[32];

  private int[] to = new int[32];

  /** There is none. */
  void forget() {
    count = 0;
  }

  /**
   * Takes over a row.
   *
   * @param start of the row in the buffer; its cells stand in the buffer too
   */
  void keep(char[] buffer, int start, int end, int[] cellsFrom, int[] cellsTo, int cells) {
    length = end - start;
    if (signs.length < length) {
      signs = new char[2 * length];
    }
    System.arraycopy(buffer, start, signs, 0, length);
    if (from.length < cells) {
      from = new int[cellsFrom.length];
      to = new int[cellsFrom.length];
    }
    for (int i = 0; i < cells; i++) {
      from[i] = cellsFrom[i] - start;
      to[i] = cellsTo[i] - start;
    }
    count = cells;
  }

  /** Past the last of its cells that the text goes on with, from a cell on; that cell for none. */
  int alikeTo(int cell, char[] buffer, int at, int end) {
    if (cell >= count) {
      return cell;
    }
    int there = from[cell];
    int most = Math.min(length - there, end - at);
    if (most == 0 || buffer[at] != signs[there]) {
      return cell;
    }
    int alike = Arrays.mismatch(buffer, at, at + most, signs, there, there + most);
    int last = there + (alike < 0 ? most : alike);
    int next = cell;
    while (next < count && to[next] < last) {
      next++;
    }
    return next;
  }

  int from(int cell) {
    return from[cell];
  }

  int to(int cell) {
    return to[cell];
  }
}
