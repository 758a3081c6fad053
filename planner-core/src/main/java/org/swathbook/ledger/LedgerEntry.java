package org.swathbook.ledger;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
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
    c = c != 0 ? c : Boolean.compare(a.isPlanned(), b.isPlanned());
    c = c != 0 ? c : a.written(Application::pass).compareTo(b.written(Application::pass));
    c = c != 0 ? c : a.written(Application::line).compareTo(b.written(Application::line));
    c = c != 0 ? c : a.active.ingredient().id().compareTo(b.active.ingredient().id());
    c = c != 0 ? c : a.product.id().compareTo(b.product.id());
    return c != 0 ? c : Double.compare(a.active.lbPerAcre(), b.active.lbPerAcre());
  }

  private String written(Function<Application, String> column) {
    return row.map(column).orElse("");
  }

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
