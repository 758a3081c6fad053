package org.swathbook.cli.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.swathbook.audit.ActiveLedger;
import org.swathbook.audit.FieldLedger;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.ledger.PlannedApplication;
import org.swathbook.ledger.Positions;
import org.swathbook.season.outcome.PassOutcome;
import org.swathbook.season.outcome.SeasonOutcome;

/** What counts against caps, and which intervals are open, after a whole program. */
public final class ProgramLedger {
  private ProgramLedger() {}

  /**
   * The journal and the passes still to come, each on its median day, as on the day of the last.
   *
   * @return empty when every pass is made: then the journal's own ledger has it all
   */
  public static List<ActiveLedger> of(Book book, Field field, SeasonOutcome outcome) {
    LocalDate last = LocalDate.MIN;
    List<PlannedApplication> planned = new ArrayList<>();
    for (PassOutcome p : outcome.passes()) {
      LocalDate day = p.timing().medianDate();
      last = day.isAfter(last) ? day : last;
      if (!p.made()) {
        planned.addAll(
            PlannedApplication.ofMix(
                day, p.mix(), Positions.find(book.catalog(), field.crop().value(), p.cropStage())));
      }
    }
    return planned.isEmpty() ? List.of() : FieldLedger.of(book, field, planned, last);
  }
}
