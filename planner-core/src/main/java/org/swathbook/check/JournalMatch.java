package org.swathbook.check;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.swathbook.book.Application;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.ledger.OneApplication;
import org.swathbook.ledger.PlannedApplication;
import org.swathbook.program.Dose;
import org.swathbook.program.Mix;

/**
 * Passes of a program that the journal already holds: they must count once. A dose is taken for
 * applied when a row of the season names the same product at the same rate within the days of one
 * application; the pass then goes by the date of that row.
 */
final class JournalMatch {
  /** Rates are read from text, so the same rate may differ by rounding. */
  private static final double SAME_RATE = 1e-6;

  private final List<Application> season;

  JournalMatch(Book book, Field field) {
    this.season =
        book.journal().of(field.id()).stream().filter(a -> a.season() == book.season()).toList();
  }

  /** The pass on the day on which it was made, or as planned. */
  DatedMix dated(DatedMix pass) {
    if (season.isEmpty()) {
      return pass;
    }
    return pass.mix().doses().stream()
        .flatMap(d -> find(pass.date(), d).stream())
        .findFirst()
        .map(a -> new DatedMix(pass.pass(), a.date(), pass.positions(), pass.mix()))
        .orElse(pass);
  }

  /** What the season has had up to and with a day besides a tank of that day. */
  List<Application> othersUpTo(LocalDate date, Mix tank) {
    List<Application> own = tank.doses().stream().flatMap(d -> find(date, d).stream()).toList();
    return season.stream().filter(a -> !a.date().isAfter(date) && !own.contains(a)).toList();
  }

  /** What of the pass the journal does not hold. */
  List<PlannedApplication> toCome(DatedMix pass) {
    List<PlannedApplication> out = new ArrayList<>();
    for (Dose dose : pass.mix().doses()) {
      if (find(pass.date(), dose).isEmpty()) {
        out.add(new PlannedApplication(pass.date(), dose, pass.positions()));
      }
    }
    return out;
  }

  private Optional<Application> find(LocalDate date, Dose dose) {
    return season.stream()
        .filter(
            a -> Math.abs(ChronoUnit.DAYS.between(date, a.date())) <= OneApplication.DAYS_OF_ONE)
        .filter(a -> a.dose().product().id().equals(dose.product().id()) && isSameRate(a, dose))
        .findFirst();
  }

  private static boolean isSameRate(Application a, Dose dose) {
    double applied = a.dose().actives().get(0).kgPerHa();
    double planned = dose.actives().get(0).kgPerHa();
    return Math.abs(applied - planned) <= SAME_RATE * planned;
  }
}
