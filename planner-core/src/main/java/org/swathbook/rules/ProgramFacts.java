package org.swathbook.rules;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.growth.TraceSet;
import org.swathbook.season.outcome.PassOutcome;
import org.swathbook.season.outcome.SeasonOutcome;

/** A program with the season that it makes. */
public record ProgramFacts(Book book, TraceSet traces, SeasonOutcome season, LocalDate today) {

  public Field field() {
    return traces.field();
  }

  /** One pass of it as it is planned, of whose actives no use is chosen. */
  public PassFacts of(PassOutcome pass) {
    return new PassFacts(
        book,
        traces,
        season.walkedPasses(),
        pass,
        PassPositions.of(traces, pass.timing()),
        List.of(),
        Optional.empty(),
        new TankOffers(book, traces));
  }
}
