package org.swathbook.plan.compare;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.swathbook.book.Book;
import org.swathbook.program.Anchor;
import org.swathbook.program.Mix;
import org.swathbook.program.Pass;
import org.swathbook.program.Program;
import org.swathbook.season.Kernel;
import org.swathbook.season.SeasonWalk;
import org.swathbook.season.outcome.SeasonOutcome;

/**
 * Walks a program whose passes were sprayed once, whatever labels say: each goes on its day in
 * every year. To the rules it stays a plan, so that they say what stands against it, and its
 * windows are counted as those of a plan.
 */
final class AsSprayed {
  private AsSprayed() {}

  private record Fact(LocalDate date, Mix mix) {}

  /**
   * @throws IllegalArgumentException in words, when a year of the field does not have a day of it
   */
  static SeasonOutcome walk(Book book, Kernel kernel, Program program) {
    LocalDate planted = kernel.traces().field().plantDate();
    List<Pass> passes = new ArrayList<>();
    Set<Fact> facts = new LinkedHashSet<>();
    for (Pass p : program.passes()) {
      if (p.at() instanceof Anchor.Made made) {
        facts.add(new Fact(made.date(), p.mix()));
      }
      passes.add(
          p.at() instanceof Anchor.FromPlanting from
              ? new Pass(new Anchor.Made(planted.plusDays(from.days())), p.mix())
              : p);
    }
    SeasonOutcome walked =
        SeasonWalk.walk(book, kernel, new Program(program.name(), program.field(), passes));
    return new SeasonOutcome(
        program,
        walked.passes().stream()
            .map(p -> p.asMade(facts.contains(new Fact(p.planned(), p.mix()))))
            .toList(),
        walked.years(),
        walked.weeds(),
        walked.cost(),
        walked.loss(),
        walked.untreatedLoss(),
        walked.net(),
        SeasonWalk.walk(book, kernel, program).windowConfidencePct());
  }
}
