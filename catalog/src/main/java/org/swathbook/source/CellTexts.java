package org.swathbook.source;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * Texts of the cells of a row. One that stands in the row before as well stays, and texts that a
 * column repeats become one string mostly, so that a long journal makes few.
 */
final class CellTexts {
  private static final int FEW = 32;

  /** Null of a cell whose text nobody has asked for since it became another. */
  private @Nullable String[] texts = new String[FEW];

  /** By column; null of one of which no text was asked for. */
  private @Nullable RepeatedTexts[] known = new RepeatedTexts[FEW];

  /** The cell has become another. */
  void forget(int cell) {
    texts[cell] = null;
  }

  void forgetAll() {
    Arrays.fill(texts, null);
  }

  void grow() {
    texts = Arrays.copyOf(texts, 2 * texts.length);
    known = Arrays.copyOf(known, 2 * known.length);
  }

  /**
   * @param row place in the buffer where the row begins
   */
  String text(int cell, CellPlaces places, byte[] buffer, int row) {
    String text = texts[cell];
    if (text == null) {
      text = places.isEmpty(cell) ? "" : remembered(cell, places, buffer, row);
      texts[cell] = text;
    }
    return text;
  }

  private String remembered(int cell, CellPlaces places, byte[] buffer, int row) {
    RepeatedTexts its = known[cell];
    if (its == null) {
      its = new RepeatedTexts();
      known[cell] = its;
    }
    int from = places.from(cell);
    return its.of(buffer, row + from, places.to(cell) - from);
  }

  /** Of the first cells. */
  String[] first(int number, CellPlaces places, byte[] buffer, int row) {
    // Arrays.copyOf would ask by reflection of what the array is made, for every row.
    String[] out = new String[number];
    for (int cell = 0; cell < number; cell++) {
      String text = texts[cell];
      out[cell] = text != null ? text : text(cell, places, buffer, row);
    }
    return out;
  }
}
