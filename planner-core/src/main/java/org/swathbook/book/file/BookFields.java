package org.swathbook.book.file;

import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.measure.MeasureException;
import org.swathbook.source.TextParser;

/** A field of a book by its id. */
final class BookFields {
  private BookFields() {}

  static TextParser<Field> of(Book book) {
    return text ->
        book.findField(text)
            .orElseThrow(
                () ->
                    book.fields().isEmpty()
                        ? new MeasureException("the book has no field; write one in fields.csv")
                        : Names.unknown(
                            text,
                            "field of the book",
                            book.fields().stream().map(f -> f.id().value()).toList()));
  }
}
