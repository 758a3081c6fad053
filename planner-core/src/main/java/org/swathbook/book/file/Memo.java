package org.swathbook.book.file;

import java.util.HashMap;
import java.util.Map;
import org.swathbook.source.TextParser;

/**
 * A parser that remembers what it made of a text: the columns of a long journal repeat few values
 * often, and their values are then also shared in memory. Remembers no problems, and no more than
 * some thousands of texts.
 *
 * @param <T> something immutable
 */
final class Memo<T> implements TextParser<T> {
  private static final int MOST = 20_000;

  private final TextParser<T> parser;
  private final Map<String, T> known = new HashMap<>();

  Memo(TextParser<T> parser) {
    this.parser = parser;
  }

  @Override
  public T parse(String text) {
    T made = known.get(text);
    if (made == null) {
      made = parser.parse(text);
      if (known.size() < MOST) {
        known.put(text, made);
      }
    }
    return made;
  }
}
