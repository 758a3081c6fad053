package org.swathbook.cli.report;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.book.Resistance;
import org.swathbook.book.WeedPressure;
import org.swathbook.program.FieldId;

/** Sites that do not count on a field since resistance to them is suspected. */
public final class WatchNotes {
  private WatchNotes() {}

  /** Of some fields of a book. */
  public static List<String> of(Book book, List<Field> fields) {
    // Few weeds are watched, and a long book has many fields to look through all weeds for.
    Set<FieldId> watched = new HashSet<>();
    for (WeedPressure w : book.weeds()) {
      for (Resistance r : w.listed()) {
        if (r.isWatched()) {
          watched.add(w.field());
        }
      }
    }
    return fields.stream()
        .filter(f -> watched.contains(f.id()))
        .flatMap(f -> of(book, f).stream())
        .toList();
  }

  static List<String> of(Book book, Field field) {
    List<String> out = new ArrayList<>();
    for (WeedPressure w : book.weedsOf(field.id())) {
      for (Resistance r : w.listed()) {
        if (r.isWatched()) {
          out.add(
              "watch.csv: "
                  + w.weed().name()
                  + " of "
                  + field.id()
                  + " may resist site "
                  + r.site().orElseThrow()
                  + " ("
                  + r.status()
                  + "), so that site does not count as effective on it; a test tells.");
        }
      }
    }
    return out;
  }
}
