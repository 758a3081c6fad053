package org.swathbook.stress;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.swathbook.book.Book;
import org.swathbook.catalog.ProductId;
import org.swathbook.growth.TraceSet;
import org.swathbook.measure.Money;
import org.swathbook.program.Program;

/**
 * A changed situation, ready to be walked.
 *
 * @param of what tells it from the others of its case, {@code glyphosate-4.5sl}; empty when there
 *     is but one
 * @param origins for each pass of the program its place in the plain one
 * @param knownFrom day of the book's season on which the trouble is known
 * @param unavailable products that cannot be had
 * @param extraForAddedPass what a pass that nobody planned costs beside trip and products, an acre
 * @param watered the same with the residual watered in, where the field can be
 * @param milder the same trouble at half its size
 */
record Stressed(
    String of,
    Book book,
    TraceSet traces,
    Program program,
    List<Integer> origins,
    LocalDate knownFrom,
    List<ProductId> unavailable,
    Money extraForAddedPass,
    Optional<TraceSet> watered,
    Optional<Stressed> milder) {

  Stressed {
    origins = List.copyOf(origins);
    unavailable = List.copyOf(unavailable);
  }

  /** Another weather over the same program; a pass that is then added was not planned. */
  static Stressed ofWeather(
      Situation plain, TraceSet traces, LocalDate knownFrom, Optional<TraceSet> watered) {
    return new Stressed(
        "",
        plain.book(),
        traces,
        plain.program(),
        all(plain.program()),
        plain.notBeforeToday(knownFrom),
        List.of(),
        plain.book().resprayExtra(),
        watered,
        Optional.empty());
  }

  static List<Integer> all(Program program) {
    List<Integer> out = new ArrayList<>();
    for (int i = 0; i < program.passes().size(); i++) {
      out.add(i);
    }
    return out;
  }
}
