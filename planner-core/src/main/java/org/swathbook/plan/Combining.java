package org.swathbook.plan;

import java.util.ArrayDeque;
import java.util.Comparator;
import java.util.Deque;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.swathbook.book.Book;

/**
 * Makes the best program of the passes that a heuristic search met: it takes those of the best
 * programs apart and compares all programs that can be put together of them.
 */
final class Combining {
  /** Passes that are combined: default, ours. */
  private static final int MOST_PASSES = 100;

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

  /**
   * Passes of the best programs of each number of passes in turn: the best programs are mostly
   * alike, and a pass that only a longer one holds is what they may lack.
   */
  private static Set<Stop> passesOfTheBest(List<Walked> walked) {
    Comparator<Walked> order = Goal.BEST;
    TreeMap<Integer, Deque<Walked>> bySize = new TreeMap<>();
    walked.stream()
        .sorted(order)
        .forEach(
            w -> bySize.computeIfAbsent(w.draft().stops().size(), n -> new ArrayDeque<>()).add(w));
    bySize.remove(0);
    Set<Stop> out = new LinkedHashSet<>();
    while (out.size() < MOST_PASSES && !bySize.isEmpty()) {
      for (Deque<Walked> same : bySize.values()) {
        same.remove().draft().stops().stream()
            .filter(s -> out.size() < MOST_PASSES)
            .forEach(out::add);
      }
      bySize.values().removeIf(Deque::isEmpty);
    }
    return out;
  }
}
