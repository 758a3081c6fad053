package org.swathbook.escapes;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.swathbook.book.Application;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.book.Journal;
import org.swathbook.book.ScoutedCount;
import org.swathbook.book.ScoutedHeight;
import org.swathbook.book.Scouting;
import org.swathbook.book.SprayRecord;
import org.swathbook.check.SeasonSoFar;
import org.swathbook.growth.TraceBuilder;
import org.swathbook.growth.TraceSet;
import org.swathbook.program.Anchor;
import org.swathbook.program.Dose;
import org.swathbook.program.Mix;
import org.swathbook.program.Observation;
import org.swathbook.program.Pass;
import org.swathbook.program.Program;
import org.swathbook.season.Kernel;
import org.swathbook.season.SeasonWalk;
import org.swathbook.season.outcome.SeasonOutcome;

/**
 * The field as it was seen: the survivors that were counted stand from that day on, and what the
 * journal has was sprayed, the judged pass among it.
 */
final class FieldAfterPass {
  private final Book book;
  private final Field field;
  private final Kernel kernel;
  private final List<Pass> made;
  private final SeasonOutcome asItIs;

  private FieldAfterPass(Book book, Field field, LocalDate today) {
    this.book = book;
    this.field = field;
    this.kernel = Kernel.of(book, TraceBuilder.build(book, field, today));
    this.made = SeasonSoFar.of(book, field, today).made();
    this.asItIs = SeasonWalk.walk(book, kernel, new Program("made", field.id(), made));
  }

  /**
   * @param today not before the field was seen
   * @throws IllegalArgumentException in words, when the book lacks what a walk needs
   */
  static FieldAfterPass of(
      Book book, Field field, Observation seen, List<WeedReading> weeds, LocalDate today) {
    return new FieldAfterPass(seenIn(withPass(book, field, seen), seen, weeds, true), field, today);
  }

  /** The same field with every one of the counted plants gone. */
  static FieldAfterPass clean(
      Book book, Field field, Observation seen, List<WeedReading> weeds, LocalDate today) {
    return new FieldAfterPass(
        seenIn(withPass(book, field, seen), seen, weeds, false), field, today);
  }

  /** A pass that nobody recorded yet counts in caps and intervals as one that was. */
  private static Book withPass(Book book, Field field, Observation seen) {
    if (seen.inJournal()) {
      return book;
    }
    List<Application> rows = new ArrayList<>(book.journal().applications());
    int line = 1;
    for (Dose d : seen.mix().doses()) {
      rows.add(
          new Application(
              "observed",
              Integer.toString(line++),
              seen.sprayed(),
              field.id(),
              book.season(),
              OptionalDouble.empty(),
              d,
              "",
              field.crop().value(),
              "",
              SprayRecord.EMPTY,
              "named by an observation"));
    }
    return book.withJournal(new Journal(rows));
  }

  private static Book seenIn(
      Book book, Observation seen, List<WeedReading> weeds, boolean standing) {
    List<Scouting> all = new ArrayList<>();
    for (Scouting s : book.scoutings()) {
      boolean same =
          s.field().equals(seen.field())
              && s.date().equals(seen.seen())
              && s.weed().filter(w -> weeds.stream().anyMatch(r -> r.weed().equals(w))).isPresent();
      if (!same) {
        all.add(s);
      }
    }
    for (WeedReading w : weeds) {
      double perM2 = standing ? w.survivorsPerM2() : 0;
      Optional<ScoutedHeight> height =
          perM2 > 0 ? w.heightCm().map(ScoutedHeight::upTo) : Optional.empty();
      all.add(
          new Scouting(
              seen.seen(),
              seen.field(),
              "",
              Optional.of(w.weed()),
              height,
              Optional.of(new ScoutedCount(perM2, OptionalDouble.empty())),
              seen.cropStage(),
              0));
    }
    return book.withScoutings(all);
  }

  Book book() {
    return book;
  }

  Field field() {
    return field;
  }

  TraceSet traces() {
    return kernel.traces();
  }

  SeasonOutcome asItIs() {
    return asItIs;
  }

  /** The season with one more pass on a day. */
  SeasonOutcome with(List<Dose> tank, LocalDate day) {
    List<Pass> passes = new ArrayList<>(made);
    passes.add(new Pass(new Anchor.Made(day), Mix.of(tank)));
    return SeasonWalk.walk(book, kernel, new Program("again", field.id(), passes));
  }
}
