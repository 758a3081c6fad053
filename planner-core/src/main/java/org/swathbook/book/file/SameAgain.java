package org.swathbook.book.file;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.swathbook.book.Application;
import org.swathbook.book.Journal;
import org.swathbook.catalog.ProductId;
import org.swathbook.measure.Quantity;
import org.swathbook.program.FieldId;
import org.swathbook.source.Problems;

/**
 * New rows that the journal holds already by what they say: field, date, start, acres, product and
 * rate. Whether it was written twice or sprayed twice only people know, so it is asked.
 */
final class SameAgain {
  private final Journal journal;
  private final Map<String, NewRow> rows = new HashMap<>();

  SameAgain(Journal journal, List<NewRow> rows) {
    this.journal = journal;
    rows.forEach(r -> this.rows.put(r.key(), r));
  }

  /** What must be alike before anything else is compared; few rows of a long journal share it. */
  private record Spot(FieldId field, LocalDate date, ProductId product) {

    static Spot of(Application a) {
      return new Spot(a.field(), a.date(), a.dose().product().id());
    }
  }

  void tell(Problems problems) {
    List<Application> fresh =
        journal.applications().stream()
            .filter(a -> rows.containsKey(JournalWriter.key(a)))
            .toList();
    Map<Spot, List<Application>> there = new HashMap<>();
    fresh.forEach(a -> there.put(Spot.of(a), new ArrayList<>()));
    for (Application b : journal.applications()) {
      List<Application> alike = there.get(Spot.of(b));
      if (alike != null) {
        alike.add(b);
      }
    }
    Set<String> told = new HashSet<>();
    for (Application a : fresh) {
      String key = JournalWriter.key(a);
      there.getOrDefault(Spot.of(a), List.of()).stream()
          .filter(b -> isSame(a, b))
          .filter(
              b -> !rows.containsKey(JournalWriter.key(b)) || told.contains(JournalWriter.key(b)))
          .findFirst()
          .ifPresent(b -> same(Objects.requireNonNull(rows.get(key)), a, b, problems));
      told.add(key);
    }
  }

  private static boolean isSame(Application a, Application b) {
    return !JournalWriter.key(a).equals(JournalWriter.key(b))
        && isNear(a.dose().actives().get(0).kgPerHa(), b.dose().actives().get(0).kgPerHa())
        && a.acres().equals(b.acres())
        && a.record().start().equals(b.record().start());
  }

  private static boolean isNear(double x, double y) {
    return !Quantity.exceeds(x, y) && !Quantity.exceeds(y, x);
  }

  private void same(NewRow row, Application a, Application b, Problems problems) {
    boolean alsoNew = rows.containsKey(JournalWriter.key(b));
    problems.add(
        row.where().apply("product"),
        a.dose().product().id()
            + " on "
            + a.field()
            + " of "
            + a.date()
            + (alsoNew
                ? " is to go in twice, with the same start, acres and rate"
                : " is in the journal already, as " + JournalWriter.key(b)),
        "leave it out; if it was sprayed twice, tell the two apart by start or acres, or say"
            + " --again");
  }
}
