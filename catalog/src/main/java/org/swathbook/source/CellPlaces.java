package org.swathbook.source;

import java.util.Arrays;

/**
 * Where the cells of a row stand, in bytes from where the row begins: the buffer that holds it may
 * move.
 */
final class CellPlaces {
  private static final int FEW = 32;

  private int[] from = new int[FEW];
  private int[] to = new int[FEW];
  private int count;

  int count() {
    return count;
  }

  int from(int cell) {
    return from[cell];
  }

  int to(int cell) {
    return to[cell];
  }

  boolean isEmpty(int cell) {
    return from[cell] == to[cell];
  }

  /** Whether there is no room for another cell. */
  boolean isFull() {
    return count == from.length;
  }

  void clear() {
    count = 0;
  }

  /** Adds a cell; there must be room for it. */
  void add(int cellFrom, int cellTo) {
    from[count] = cellFrom;
    to[count] = cellTo;
    count++;
  }

  void grow() {
    from = Arrays.copyOf(from, 2 * from.length);
    to = Arrays.copyOf(to, 2 * to.length);
  }

  /**
   * Adds the cells that the text goes on with as the row before does, from the next cell on.
   *
   * @param before the row before, plain as this one is so far
   * @param bytes the buffer of both
   * @param there where the row before begins
   * @param here where this one begins
   * @param at where its next cell begins
   * @param stop end of what there is of the text
   */
  void takeAlike(CellPlaces before, byte[] bytes, int there, int here, int at, int stop) {
    int cell = count;
    if (cell >= before.count) {
      return;
    }
    int like = there + before.from[cell];
    // The row ends with the byte behind its last cell.
    int rest = there + before.to[before.count - 1] + 1 - like;
    int most = Math.min(rest, stop - at);
    if (most == 0 || bytes[at] != bytes[like]) {
      return;
    }
    int alike = Arrays.mismatch(bytes, at, at + most, bytes, like, like + most);
    int last = before.from[cell] + (alike < 0 ? most : alike);
    int shift = at - here - before.from[cell];
    int[] beforeFrom = before.from;
    int[] beforeTo = before.to;
    int cells = Math.min(before.count, from.length);
    while (cell < cells && beforeTo[cell] < last) {
      from[cell] = beforeFrom[cell] + shift;
      to[cell] = beforeTo[cell] + shift;
      cell++;
    }
    count = cell;
  }
}
