package org.swathbook.book.file;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.swathbook.measure.MeasureException;
import org.swathbook.source.CsvHeader;
import org.swathbook.source.CsvRow;
import org.swathbook.source.TextParser;

/**
 * A column of a long table, which repeats few values often. Where it stands is looked up once, what
 * was made of a text is not made again, and what stands in the row before is not even looked up.
 * Remembers no problems, and no more than some thousands of texts.
 *
 * @param <T> something immutable
 */
final class Column<T> {
  private static final int MOST = 20_000;

  private final String name;
  private final TextParser<T> parser;
  private final String example;
  private final int most;
  private final Map<String, Optional<T>> known = new HashMap<>();

  private @Nullable CsvHeader header;
  private int place;

  /** Of the last row of which it was asked, with what was made of it; null of one with none. */
  private @Nullable String last;

  private Optional<T> made = Optional.empty();

  private Column(String name, TextParser<T> parser, String example, int most) {
    this.name = name;
    this.parser = parser;
    this.example = example;
    this.most = most;
  }

  static <T> Column<T> of(String name, TextParser<T> parser, String example) {
    return new Column<>(name, parser, example, MOST);
  }

  /** A column in which no text comes again but in the rows that follow at once. */
  static <T> Column<T> ofNew(String name, TextParser<T> parser, String example) {
    return new Column<>(name, parser, example, 0);
  }

  /** A column whose text is taken as it is. */
  static Column<String> ofText(String name) {
    return new Column<>(name, t -> t, name, 0);
  }

  String name() {
    return name;
  }

  String example() {
    return example;
  }

  /** Empty when the cell is blank or the table has no such column. */
  String text(CsvRow row) {
    if (row.header() != header) {
      header = row.header();
      place = row.header().indexOf(name);
    }
    return row.text(place);
  }

  /**
   * Empty when the cell is blank.
   *
   * @throws MeasureException when it cannot be read
   */
  Optional<T> find(CsvRow row) {
    String text = text(row);
    if (!text.equals(last)) {
      last = null;
      made = text.isEmpty() ? Optional.empty() : make(text);
      last = text;
    }
    return made;
  }

  private Optional<T> make(String text) {
    Optional<T> out = known.getOrDefault(text, Optional.empty());
    if (out.isEmpty()) {
      out = Optional.of(parser.parse(text));
      if (known.size() < most) {
        known.put(text, out);
      }
    }
    return out;
  }
}
