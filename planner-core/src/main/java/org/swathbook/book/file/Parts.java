package org.swathbook.book.file;

import java.util.List;
import org.swathbook.source.TextParser;

/**
 * A column of a long table whose cells hold several values between semicolons. As of a {@link
 * Column}, what was made of a text is {@link Remembered}.
 *
 * @param <T> something immutable
 */
final class Parts<T> {
  private final String name;
  private final TextParser<T> parser;
  private final String example;
  private final Column<String> texts;
  private final Remembered<List<T>> known = Remembered.some();

  Parts(String name, TextParser<T> parser, String example) {
    this.name = name;
    this.parser = parser;
    this.example = example;
    this.texts = Column.ofText(name);
  }

  /** Of a row; a part that cannot be read is a problem of it and is left out. */
  List<T> of(Row row) {
    String text = row.text(texts);
    if (text.isEmpty()) {
      return List.of();
    }
    List<T> there = known.find(text);
    if (there != null) {
      return there;
    }
    int before = row.problems();
    List<T> made = List.copyOf(row.all(name, parser, example));
    if (row.problems() == before) {
      known.keep(text, made);
    }
    return made;
  }
}
