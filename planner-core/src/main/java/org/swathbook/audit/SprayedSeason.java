package org.swathbook.audit;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.swathbook.audit.JournalJudge.Made;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.book.PastSeason;
import org.swathbook.book.WeedPressure;
import org.swathbook.growth.TraceSet;
import org.swathbook.program.Anchor;
import org.swathbook.program.Pass;
import org.swathbook.season.DayInSeason;
import org.swathbook.season.Kernel;
import org.swathbook.season.SeasonWalk;
import org.swathbook.season.outcome.PassOutcome;
import org.swathbook.season.outcome.SeasonSums;
import org.swathbook.season.outcome.WalkedPasses;

/**
 * A past season of a field, ready to be walked in its own weather with other passes than were made.
 *
 * @param past the book of that season, without what was sprayed on the field in it, so that what is
 *     changed is not counted beside what was made
 * @param passes as made, by date
 * @param drivers driver weeds of the season
 */
record SprayedSeason(
    Book past,
    Field field,
    PastSeason row,
    TraceSet traces,
    Kernel kernel,
    List<Made> passes,
    List<WeedPressure> drivers) {

  /**
   * @param remarks why there is none, or what is left out of it
   */
  record Found(Optional<SprayedSeason> season, List<String> remarks) {
    Found {
      remarks = List.copyOf(remarks);
    }
  }

  /**
   * A season of the journal, passes on less than half of the field left out; or why it cannot be
   * walked.
   */
  static Found of(Book book, Field today, PastSeason row, SharedTraces shared) {
    JournalSeason season = JournalSeason.of(book, today, row);
    Optional<TraceSet> trace = season.trace(shared);
    if (trace.isEmpty()) {
      return new Found(Optional.empty(), season.notWalked());
    }
    Field field = season.field();
    Book past = PastBook.without(season.past(), field.id(), row.season());
    return new Found(
        Optional.of(
            new SprayedSeason(
                past,
                field,
                row,
                trace.get(),
                shared.kernel(past, trace.get()),
                season.madeOnTheField(),
                season.drivers())),
        season.notes());
  }

  SprayedSeason {
    passes = List.copyOf(passes);
    drivers = List.copyOf(drivers);
  }

  /** What passes come to, those after harvest left out. */
  SeasonSums walk(List<Made> made) {
    return SeasonWalk.sumsMade(past, kernel, walked(made));
  }

  /** The same passes as rules ask of them, without what they come to. */
  WalkedPasses stand(List<Made> made) {
    return SeasonWalk.passesMade(past, kernel, walked(made));
  }

  private List<Pass> walked(List<Made> made) {
    List<Pass> walked = new ArrayList<>();
    for (Made m : made) {
      if (isWalked(m.date())) {
        walked.add(new Pass(new Anchor.OnDate(m.date()), m.mix()));
      }
    }
    return walked;
  }

  /** The walked pass at a place among passes by date; empty when it lies after harvest. */
  Optional<PassOutcome> passOf(WalkedPasses walked, List<Made> made, int at) {
    if (!isWalked(made.get(at).date())) {
      return Optional.empty();
    }
    int before = 0;
    for (Made m : made.subList(0, at)) {
      before += isWalked(m.date()) ? 1 : 0;
    }
    return Optional.of(walked.passes().get(before));
  }

  /** The day of a pass at a place among passes by date, after those before it. */
  DayInSeason dayOf(List<Made> made, int at) {
    List<DayInSeason.Made> before = new ArrayList<>();
    for (Made m : made.subList(0, at)) {
      before.add(new DayInSeason.Made(m.date(), m.mix()));
    }
    return DayInSeason.of(past, kernel, before, made.get(at).date());
  }

  /** After harvest nothing is walked. */
  boolean isWalked(LocalDate date) {
    return !date.isAfter(field.harvestDate().orElse(LocalDate.of(row.season(), 10, 31)));
  }
}
