package org.swathbook.audit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.book.PastSeason;
import org.swathbook.book.WeedPressure;
import org.swathbook.program.FieldId;

/**
 * Books of one field each. Whoever asks a book of thousands of fields for the weeds and seasons of
 * every field in turn looks through all rows for each; here they are sorted out once.
 */
final class FieldBooks {
  private final Book book;
  private final Map<FieldId, List<WeedPressure>> weeds;
  private final Map<FieldId, List<PastSeason>> seasons;

  FieldBooks(Book book) {
    this.book = book;
    this.weeds = byField(book.weeds(), WeedPressure::field);
    this.seasons = byField(book.pastSeasons(), PastSeason::field);
  }

  private static <T> Map<FieldId, List<T>> byField(List<T> rows, Function<T, FieldId> field) {
    Map<FieldId, List<T>> out = new HashMap<>();
    FieldId last = null;
    List<T> its = List.of();
    for (T row : rows) {
      FieldId of = field.apply(row);
      // The rows of a field mostly stand together.
      if (!of.equals(last)) {
        last = of;
        its = out.computeIfAbsent(of, f -> new ArrayList<>());
      }
      its.add(row);
    }
    return out;
  }

  /** The book with nothing in it of other fields. */
  Book of(Field field) {
    return new Book(
        book.name(),
        book.season(),
        book.catalog(),
        book.house(),
        book.crops(),
        book.passCost(),
        book.resprayExtra(),
        List.of(field),
        weeds.getOrDefault(field.id(), List.of()),
        book.journal().only(field.id()),
        seasons.getOrDefault(field.id(), List.of()),
        book.prices(),
        book.stations(),
        book.scoutings(),
        List.of());
  }
}
