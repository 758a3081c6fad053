package org.swathbook.book.file;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.swathbook.measure.MeasureException;
import org.swathbook.source.CsvHeader;
import org.swathbook.source.CsvRow;
import org.swathbook.source.TextParser;

/**
 * A column of a long table, which repeats few values often. Where it stands is looked up once, what
 * was made of a text is {@link Remembered}, and what stands in the row before is not even looked
 * up. Problems are not remembered.
 *
 * @param <T> something immutable
 */
final class Column<T> {
  private final String name;
  private final TextParser<T> parser;
  private final String example;
  private final Remembered<Optional<T>> known;

  private @Nullable CsvHeader header;
  private int place;

  /** Of the last row of which it was asked, with what was made of it; null of one with none. */
  private @Nullable String last;

  private Optional<T> made = Optional.empty();

  private Column(String name, TextParser<T> parser, String example, Remembered<Optional<T>> known) {
    this.name = name;
    this.parser = parser;
    this.example = example;
    this.known = known;
  }

  static <T> Column<T> of(String name, TextParser<T> parser, String example) {
    return new Column<>(name, parser, example, Remembered.some());
  }

  /** A column in which no text comes again but in the rows that follow at once. */
  static <T> Column<T> ofNew(String name, TextParser<T> parser, String example) {
    return new Column<>(name, parser, example, Remembered.none());
  }

  /** A column whose text is taken as it is. */
  static Column<String> ofText(String name) {
    return new Column<>(name, t -> t, name, Remembered.none());
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
    Optional<T> out = known.find(text);
    if (out == null) {
      out = Optional.of(parser.parse(text));
      known.keep(text, out);
    }
    return out;
  }
}
