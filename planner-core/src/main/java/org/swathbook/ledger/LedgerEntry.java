package org.swathbook.ledger;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.swathbook.book.Application;
import org.swathbook.catalog.Cap;
import org.swathbook.catalog.Ordered;
import org.swathbook.catalog.Position;
import org.swathbook.catalog.Product;
import org.swathbook.program.ActiveDose;

/**
 * One active that went, or is to go, on the field on one day. A premix makes one entry an active.
 *
 * @param season the season it counts for
 * @param product what brought it, which tells its formulation
 * @param positions where in the season it belongs; empty when the journal's stage does not say
 * @param acres treated acres; empty when the journal does not say, the whole field when planned
 * @param row the journal's row; empty when planned
 */
public record LedgerEntry(
    LocalDate date,
    int season,
    ActiveDose active,
    Product product,
    Set<Position> positions,
    OptionalDouble acres,
    Optional<Application> row) {

  public LedgerEntry {
    positions = Ordered.set(positions);
  }

  /**
   * One order for every order of rows, so that sums of doubles agree to the last bit: date, planned
   * last, pass, line, active, product, rate.
   */
  static int compare(LedgerEntry a, LedgerEntry b) {
    int c = a.date.compareTo(b.date);
    return c != 0 ? c : SAME_DAY.compare(a, b);
  }

  private static final Comparator<LedgerEntry> SAME_DAY =
      Comparator.comparing(LedgerEntry::isPlanned)
          .thenComparing(e -> e.row.map(Application::pass).orElse(""))
          .thenComparing(e -> e.row.map(Application::line).orElse(""))
          .thenComparing(e -> e.active.ingredient().id())
          .thenComparing(e -> e.product.id())
          .thenComparing(e -> e.active.lbPerAcre());

  /** Whether it counts against a cap; one of an unknown position counts against every cap. */
  boolean countsFor(Cap cap) {
    return positions.isEmpty() || cap.counts(positions);
  }

  public boolean isPlanned() {
    return row.isEmpty();
  }

  public String capGroup() {
    return active.ingredient().capGroup();
  }

  /** Whole days from this application, which is day 0, to a date. */
  public long daysTo(LocalDate later) {
    return ChronoUnit.DAYS.between(date, later);
  }
}
