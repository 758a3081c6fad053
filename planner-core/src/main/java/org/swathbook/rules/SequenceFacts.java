package org.swathbook.rules;

import java.time.LocalDate;
import java.util.Set;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.catalog.Ordered;
import org.swathbook.catalog.Position;
import org.swathbook.ledger.Ledger;
import org.swathbook.program.Mix;

/**
 * One pass against everything that the field has had and is to have.
 *
 * @param pass place in the program, from 0
 * @param date the day of the pass; the ledger is asked on it
 * @param positions where in the season the day belongs
 * @param ledger the journal with all planned applications, this pass among them
 * @param plannedDate the date that the plan prints, before weather moves the pass
 * @param plannedLedger the same ledger with every pass on the date that the plan prints
 * @param atLoading whether the pass is a tank about to be loaded, not one of a plan
 */
public record SequenceFacts(
    Book book,
    Field field,
    Ledger ledger,
    int pass,
    LocalDate date,
    Set<Position> positions,
    Mix mix,
    LocalDate plannedDate,
    Ledger plannedLedger,
    boolean atLoading) {

  public SequenceFacts {
    positions = Ordered.set(positions);
  }

  public About about() {
    return About.PROGRAM.withPass(pass);
  }
}
