package org.swathbook.ledger;

import java.time.LocalDate;
import java.util.List;

/**
 * What counts as one application of an active: everything that went on the field within {@link
 * #DAYS_OF_ONE} calendar days of its first day, as when wind stops a job half way.
 */
public record OneApplication(LocalDate first, LocalDate last, List<LedgerEntry> entries) {

  /** Calendar days from the first to the last day of one application, at most. */
  public static final int DAYS_OF_ONE = 2;

  public OneApplication {
    entries = List.copyOf(entries);
  }
}
