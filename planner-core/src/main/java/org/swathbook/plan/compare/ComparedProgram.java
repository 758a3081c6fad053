package org.swathbook.plan.compare;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.swathbook.book.Book;
import org.swathbook.check.AddedSite;
import org.swathbook.check.Judgement;
import org.swathbook.check.ProgramJudge;
import org.swathbook.growth.TraceSet;
import org.swathbook.measure.Money;
import org.swathbook.program.Program;
import org.swathbook.season.Kernel;
import org.swathbook.season.SeasonWalk;
import org.swathbook.season.outcome.SeasonOutcome;
import org.swathbook.season.outcome.YearNet;

/**
 * A program beside others of the same field, walked through the same years and judged by the same
 * rules.
 *
 * @param asked the word by which it was asked for
 * @param recommended the planner recommends it
 * @param against what it gives up and gains against the first one
 * @param notes how it came about, one sentence each
 */
public record ComparedProgram(
    String asked, boolean recommended, Judged judged, AgainstFirst against, List<String> notes) {

  public ComparedProgram {
    notes = List.copyOf(notes);
  }

  /**
   * A program to be compared.
   *
   * @param asked the word by which it was asked for
   * @param recommended the planner recommends it
   * @param sprayed it was sprayed like that once: every pass goes on its day in every year, and
   *     what rules say of that stands beside it
   * @param notes how it came about
   */
  public record Named(
      String asked, boolean recommended, boolean sprayed, Program program, List<String> notes) {

    public Named {
      notes = List.copyOf(notes);
    }
  }

  /**
   * What a program comes to.
   *
   * @param worstYearNet net return on an acre in the worst year; empty when a price is missing
   */
  public record Judged(SeasonOutcome outcome, Judgement judgement, Optional<Money> worstYearNet) {}

  /**
   * Walks and judges them all; the first is the one that the others are held against.
   *
   * @param programs of which every anchor comes in the field's years
   */
  public static List<ComparedProgram> of(
      Book book, TraceSet traces, List<Named> programs, LocalDate today) {
    Kernel kernel = Kernel.of(book, traces);
    List<ComparedProgram> out = new ArrayList<>();
    for (Named n : programs) {
      SeasonOutcome outcome =
          n.sprayed()
              ? AsSprayed.walk(book, kernel, n.program())
              : SeasonWalk.walk(book, kernel, n.program());
      Judged judged =
          new Judged(
              outcome, judged(book, kernel, n, outcome, today), YearNet.worst(book, outcome));
      AgainstFirst against =
          out.isEmpty() ? AgainstFirst.NOTHING : AgainstFirst.of(out.get(0).judged(), judged);
      out.add(new ComparedProgram(n.asked(), n.recommended(), judged, against, n.notes()));
    }
    return List.copyOf(out);
  }

  /** As a program is judged by itself; of what was sprayed nothing can be added any more. */
  private static Judgement judged(
      Book book, Kernel kernel, Named named, SeasonOutcome outcome, LocalDate today) {
    Judgement judged = ProgramJudge.judge(book, kernel.traces(), outcome, today);
    return named.sprayed()
        ? judged
        : AddedSite.named(book, kernel, named.program(), outcome, judged, today);
  }
}
