package org.swathbook.stress;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.catalog.Position;
import org.swathbook.check.Judgement;
import org.swathbook.growth.TraceSet;
import org.swathbook.program.Pass;
import org.swathbook.program.Program;
import org.swathbook.rules.PassPositions;
import org.swathbook.season.outcome.PassOutcome;
import org.swathbook.season.outcome.SeasonOutcome;

/**
 * A program as it stands, walked and judged.
 *
 * @param places place in the program of each pass of the outcome
 * @param today the day of the report; what lies before it cannot be changed any more
 */
public record Situation(
    Book book,
    TraceSet traces,
    SeasonOutcome outcome,
    Judgement judgement,
    List<Integer> places,
    LocalDate today) {
  /**
   * An active holds the soil, rather than a few days after it has taken the leaves, from so many
   * days of stated length: those from which it counts as a layer of its own.
   */
  private static final int RESIDUAL_DAYS = 14;

  public Situation {
    places = List.copyOf(places);
  }

  public static Situation of(
      Book book, TraceSet traces, SeasonOutcome outcome, Judgement judgement, LocalDate today) {
    return new Situation(
        book,
        traces,
        outcome,
        judgement,
        PassPlaces.inOrder(book, traces, outcome.program()),
        today);
  }

  Field field() {
    return traces.field();
  }

  Program program() {
    return outcome.program();
  }

  /** The first pass with an active that holds the soil. */
  Optional<PassOutcome> firstLayer() {
    return outcome.passes().stream()
        .filter(
            p ->
                p.mix().actives().stream()
                    .flatMap(a -> a.ingredient().residual().find().stream())
                    .anyMatch(r -> r.lowDays() >= RESIDUAL_DAYS))
        .findFirst();
  }

  /** The first pass over the crop, on the median day. */
  Optional<PassOutcome> firstPost() {
    return outcome.passes().stream()
        .filter(p -> PassPositions.of(traces, p.timing()).contains(Position.POST))
        .findFirst();
  }

  /** The pass as the program writes it. */
  Pass written(PassOutcome pass) {
    return program().passes().get(places.get(pass.index()));
  }

  /** A day from which something may still be changed. */
  LocalDate notBeforeToday(LocalDate date) {
    return date.isBefore(today) ? today : date;
  }
}
