package org.swathbook.plan;

import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.swathbook.book.Book;

/**
 * Makes the best program of the passes that a heuristic search met: it takes those of the best
 * programs apart and compares all programs that can be put together of them.
 */
final class Combining {
  /** Passes that are combined: default, ours; with 100 the proof took up to 30 s a field. */
  private static final int MOST_PASSES = 60;

  /** Programs scored before it gives up the proof: default, ours. */
  private static final int MOST_SCORED = 20_000;

  private Combining() {}

  /**
   * @param best the best program made of the passes or known before, when it meets the house rules
   * @param passes how many were combined
   */
  record Result(Optional<Walked> best, int passes, int scored, boolean exact) {
    static final Result NOTHING = new Result(Optional.empty(), 0, 0, false);
  }

  static Result of(Book book, PlanSpace space, FieldEvaluator evaluator, Search search) {
    Optional<Walked> known = search.best().filter(Walked::meetsHouseRules);
    Candidates candidates =
        new Candidates(book, evaluator.kernel(), space, passesOfTheBest(search.walked()));
    if (candidates.size() == 0) {
      return Result.NOTHING;
    }
    ExactSearch.Result found =
        new ExactSearch(
                candidates,
                book.house(),
                space.maxPasses(),
                evaluator,
                EnumSet.allOf(Pruning.class),
                MOST_SCORED)
            .run(known);
    return new Result(
        found.best(),
        candidates.size(),
        (int) found.scored(),
        found.exact() && found.best().isPresent());
  }

  private static Set<Stop> passesOfTheBest(List<Walked> walked) {
    Comparator<Walked> order = Goal.BEST;
    Set<Stop> out = new LinkedHashSet<>();
    for (Walked w : walked.stream().sorted(order).toList()) {
      for (Stop s : w.draft().stops()) {
        if (out.size() < MOST_PASSES) {
          out.add(s);
        }
      }
    }
    return out;
  }
}
