package org.swathbook.stress;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.swathbook.book.Book;
import org.swathbook.growth.Anchors;
import org.swathbook.growth.TraceSet;
import org.swathbook.program.Anchor;
import org.swathbook.program.Pass;
import org.swathbook.program.Program;

/** Where the passes of a walk stand in the program that was written. */
final class PassPlaces {
  private PassPlaces() {}

  /** Places in the program in the order of the dates, those of one date as written. */
  static List<Integer> inOrder(Book book, TraceSet traces, Program program) {
    List<LocalDate> dates = new ArrayList<>();
    List<Integer> places = new ArrayList<>();
    for (Pass p : program.passes()) {
      places.add(dates.size());
      dates.add(Anchors.resolve(p.at(), traces, book.house().sizePercentile()));
    }
    places.sort(Comparator.comparing(dates::get));
    return places;
  }

  /** The first anchor that does not come in most years. */
  static Optional<Anchor> missing(Book book, TraceSet traces, Program program) {
    return program.passes().stream()
        .map(Pass::at)
        .filter(a -> Anchors.find(a, traces, book.house().sizePercentile()).isEmpty())
        .findFirst();
  }
}
