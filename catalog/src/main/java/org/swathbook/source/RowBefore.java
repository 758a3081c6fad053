package org.swathbook.source;

import java.util.Arrays;

/**
 * The plain row before the one that is read, which may begin like it. It stands in the same buffer,
 * in front of the other.
 */
final class RowBefore {
  private int end;

  /** Where its cells stand in the buffer, and where each of them ends. */
  private int[] from = new int[32];

  private int[] to = new int[32];

  private int count;

  /** There is none. */
  void forget() {
    count = 0;
  }

  /**
   * Takes over a row, with the very arrays of its cells: others are to be used from now on.
   *
   * @param rowEnd past its line end
   * @param cells how many it has, at least one
   */
  void keep(int rowEnd, int[] cellsFrom, int[] cellsTo, int cells) {
    end = rowEnd;
    from = cellsFrom;
    to = cellsTo;
    count = cells;
  }

  int[] from() {
    return from;
  }

  int[] to() {
    return to;
  }

  /** First sign of the buffer that is still needed, where a row begins. */
  int start(int rowStart) {
    return count > 0 ? from[0] : rowStart;
  }

  /** All of the buffer has moved so far towards its start. */
  void move(int signs) {
    end -= signs;
    for (int i = 0; i < count; i++) {
      from[i] -= signs;
      to[i] -= signs;
    }
  }

  /**
   * Writes down where cells stand that the text goes on with as this row does, from a cell on.
   *
   * @param at where that cell begins
   * @param stop end of what there is of the text
   * @return past the last of these cells; that cell for none
   */
  int takeAlike(int cell, char[] buffer, int at, int stop, int[] cellsFrom, int[] cellsTo) {
    if (cell >= count) {
      return cell;
    }
    int there = from[cell];
    int most = Math.min(end - there, stop - at);
    if (most == 0 || buffer[at] != buffer[there]) {
      return cell;
    }
    int alike = Arrays.mismatch(buffer, at, at + most, buffer, there, there + most);
    int last = there + (alike < 0 ? most : alike);
    int shift = at - there;
    int[] hereFrom = from;
    int[] hereTo = to;
    int cells = Math.min(count, cellsFrom.length);
    int next = cell;
    while (next < cells && hereTo[next] < last) {
      cellsFrom[next] = hereFrom[next] + shift;
      cellsTo[next] = hereTo[next] + shift;
      next++;
    }
    return next;
  }
}
