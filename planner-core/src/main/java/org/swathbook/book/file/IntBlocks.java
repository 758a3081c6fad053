package org.swathbook.book.file;

import java.util.Arrays;

/**
 * Numbers by place, 0 where none was set. They stand in blocks, made when something is set in them:
 * one long array would be copied whole each time it grows, and both copies of a million be touched.
 */
final class IntBlocks {
  private static final int BITS = 12;
  private static final int LENGTH = 1 << BITS;

  private int[][] blocks = new int[4][];

  int get(int at) {
    int block = at >>> BITS;
    if (block >= blocks.length) {
      return 0;
    }
    int[] its = blocks[block];
    return its == null ? 0 : its[at & LENGTH - 1];
  }

  void set(int at, int value) {
    int block = at >>> BITS;
    if (block >= blocks.length) {
      blocks = Arrays.copyOf(blocks, Math.max(block + 1, 2 * blocks.length));
    }
    int[] its = blocks[block];
    if (its == null) {
      its = new int[LENGTH];
      blocks[block] = its;
    }
    its[at & LENGTH - 1] = value;
  }
}
