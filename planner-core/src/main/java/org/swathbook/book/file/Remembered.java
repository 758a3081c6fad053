package org.swathbook.book.file;

import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What was made of texts that a long table repeats, so that it is not made again; of no more than
 * some thousands.
 *
 * @param <T> something immutable
 */
final class Remembered<T> {
  private static final int MOST = 20_000;

  private final int most;
  private final Map<String, T> known = new HashMap<>();

  private Remembered(int most) {
    this.most = most;
  }

  static <T> Remembered<T> some() {
    return new Remembered<>(MOST);
  }

  /** For texts that do not come again. */
  static <T> Remembered<T> none() {
    return new Remembered<>(0);
  }

  @Nullable T find(String text) {
    return known.get(text);
  }

  void keep(String text, T made) {
    if (known.size() < most) {
      known.put(text, made);
    }
  }
}
