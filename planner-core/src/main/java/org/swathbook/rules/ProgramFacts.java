package org.swathbook.rules;

import java.time.LocalDate;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.growth.TraceSet;
import org.swathbook.season.SeasonOutcome;

/** A program with the season that it makes. */
public record ProgramFacts(Book book, TraceSet traces, SeasonOutcome season, LocalDate today) {

  public Field field() {
    return traces.field();
  }
}
