package org.swathbook.book.file;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * Things by place, as {@link IntBlocks} are numbers; null where none was set.
 *
 * @param <T> of one kind
 */
final class Blocks<T> {
  private static final int BITS = 12;
  private static final int LENGTH = 1 << BITS;

  private @Nullable Object[][] blocks = new Object[4][];

  @SuppressWarnings("unchecked")
  @Nullable T get(int at) {
    int block = at >>> BITS;
    if (block >= blocks.length) {
      return null;
    }
    @Nullable Object[] its = blocks[block];
    return its == null ? null : (T) its[at & LENGTH - 1];
  }

  void set(int at, T value) {
    int block = at >>> BITS;
    if (block >= blocks.length) {
      blocks = Arrays.copyOf(blocks, Math.max(block + 1, 2 * blocks.length));
    }
    @Nullable Object[] its = blocks[block];
    if (its == null) {
      its = new Object[LENGTH];
      blocks[block] = its;
    }
    its[at & LENGTH - 1] = value;
  }
}
