package org.swathbook.plan;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.swathbook.book.Book;
import org.swathbook.check.HouseRuleCheck;
import org.swathbook.plan.draft.Delay;
import org.swathbook.plan.draft.FieldEvaluator;
import org.swathbook.plan.draft.Goal;
import org.swathbook.plan.draft.PlanSpace;
import org.swathbook.plan.draft.Stop;
import org.swathbook.plan.draft.Walked;
import org.swathbook.plan.exact.Aim;
import org.swathbook.plan.exact.Candidates;
import org.swathbook.plan.exact.ExactSearch;
import org.swathbook.plan.exact.FrontProof;
import org.swathbook.plan.exact.Pruning;

/**
 * Makes the best programs of the passes that a heuristic search met: it takes those of the best
 * programs apart and compares all programs that can be put together of them.
 */
final class Combining {
  private final Book book;
  private final Candidates candidates;
  private final int maxPasses;
  private final FieldEvaluator evaluator;
  private final Delay delay;
  private final List<Walked> known;
  private final Effort effort;
  private long scored;

  private Combining(
      Book book,
      PlanSpace space,
      FieldEvaluator evaluator,
      Delay delay,
      List<Walked> known,
      Set<Stop> passes,
      Effort effort) {
    this.effort = effort;
    this.book = book;
    this.candidates = new Candidates(book, evaluator, space, passes);
    this.maxPasses = space.maxPasses();
    this.evaluator = evaluator;
    this.delay = delay;
    this.known = known.stream().filter(Walked::hasPasses).toList();
  }

  /**
   * @param passes how many were combined
   * @param scored programs scored in all searches
   * @param first what came of the search for the program to recommend, or of that for the least bad
   *     one where none was found to recommend; empty when there was nothing to combine
   * @param beside the programs to show beside it, by their names, and whether they are proved
   * @param noHelp house rules of which it is proved that loosening one of them alone allows no
   *     program
   * @param front what is proved of the front; empty when there was nothing to combine
   */
  record Result(
      int passes,
      long scored,
      Optional<ExactSearch.Result> first,
      Map<String, ExactSearch.Result> beside,
      List<String> noHelp,
      Optional<FrontProof> front) {

    Result {
      beside = Collections.unmodifiableMap(new LinkedHashMap<>(beside));
      noHelp = List.copyOf(noHelp);
    }

    /** All programs that the searches found. */
    List<Walked> found() {
      return Stream.concat(bests(), front.stream().flatMap(f -> f.front().stream())).toList();
    }

    private Stream<Walked> bests() {
      return Stream.concat(first.stream(), beside.values().stream())
          .flatMap(r -> r.best().stream());
    }

    private Result with(FrontProof proof) {
      return new Result(passes, scored + proof.scored(), first, beside, noHelp, Optional.of(proof));
    }
  }

  /**
   * @param known programs that the heuristic search met
   * @param around passes to combine first of all
   */
  static Result of(
      Book book,
      PlanSpace space,
      FieldEvaluator evaluator,
      Delay delay,
      List<Walked> known,
      Set<Stop> around,
      Effort effort) {
    Set<Stop> passes = new LinkedHashSet<>(around);
    addThoseOfTheBest(known, passes, effort.combined().passes());
    return new Combining(book, space, evaluator, delay, known, passes, effort).run();
  }

  /**
   * @param best the best program, else the least bad
   * @param scored programs scored
   */
  record Soon(Optional<Walked> best, long scored) {}

  /**
   * The best program, else the least bad, that is soon found of some passes.
   *
   * @param known programs met so far
   */
  static Soon soon(
      Book book,
      PlanSpace space,
      FieldEvaluator evaluator,
      Delay delay,
      List<Walked> known,
      Set<Stop> passes,
      Effort effort) {
    Combining all = new Combining(book, space, evaluator, delay, known, passes, effort);
    int most = effort.combined().scored();
    Optional<Walked> best =
        all.search(Aim.BEST, all.maxPasses, most)
            .best()
            .or(() -> all.search(Aim.LEAST_BAD, all.maxPasses, most).best());
    return new Soon(best, all.scored);
  }

  private Result run() {
    if (candidates.size() == 0) {
      return new Result(0, 0, Optional.empty(), Map.of(), List.of(), Optional.empty());
    }
    ExactSearch.Result best = search(Aim.BEST, maxPasses, effort.proofs().first());
    Result found = best.best().isPresent() ? within(best, best.best().get()) : leastBad(best);
    List<Walked> seen = Stream.concat(known.stream(), found.bests()).toList();
    return found.with(
        FrontProof.of(candidates, maxPasses, evaluator, seen, effort.proofs().front()));
  }

  private Result within(ExactSearch.Result search, Walked best) {
    Map<String, ExactSearch.Result> beside = new LinkedHashMap<>();
    beside.put(Named.CHEAPEST, search(Aim.CHEAPEST, maxPasses, effort.proofs().smaller()));
    beside.put(Named.ASIDE, search(Aim.HOUSE_RULES_ASIDE, maxPasses, effort.proofs().beside()));
    fewest(best.draft().stops().size()).ifPresent(r -> beside.put(Named.FEWEST, r));
    beside.put(Named.LATE, search(Aim.LEAST_HURT_BY_DELAY, maxPasses, effort.proofs().beside()));
    return new Result(
        candidates.size(), scored, Optional.of(search), beside, List.of(), Optional.empty());
  }

  /** The best program with fewer passes, as few as there are; empty when there is none. */
  private Optional<ExactSearch.Result> fewest(int than) {
    boolean exact = true;
    for (int most = 1; most < than; most++) {
      ExactSearch.Result found = search(Aim.BEST, most, effort.proofs().smaller());
      exact &= found.exact();
      if (found.best().isPresent()) {
        return Optional.of(
            new ExactSearch.Result(found.best(), exact, found.mostLeft(), found.scored()));
      }
    }
    return Optional.empty();
  }

  private Result leastBad(ExactSearch.Result strict) {
    ExactSearch.Result first = search(Aim.LEAST_BAD, maxPasses, effort.proofs().leastBad());
    Map<String, ExactSearch.Result> beside = new LinkedHashMap<>();
    beside.put(Named.ASIDE, search(Aim.HOUSE_RULES_ASIDE, maxPasses, effort.proofs().beside()));
    beside.put(Named.SECURE, search(Aim.SECURE, maxPasses, effort.proofs().beside()));
    List<String> noHelp = new ArrayList<>();
    // A looser rule makes a proof harder: where there was none there will be none.
    for (String rule : strict.exact() ? HouseRuleCheck.NAMES : List.<String>of()) {
      ExactSearch.Result loosened =
          search(Aim.loosening(rule), maxPasses, effort.proofs().loosened());
      beside.put(rule, loosened);
      if (loosened.exact() && loosened.best().isEmpty()) {
        noHelp.add(rule);
      }
    }
    return new Result(
        candidates.size(), scored, Optional.of(first), beside, noHelp, Optional.empty());
  }

  private ExactSearch.Result search(Aim aim, int mostPasses, int mostScored) {
    List<Walked> fit =
        known.stream()
            .filter(w -> aim.allows(w) && w.draft().stops().size() <= mostPasses)
            .sorted(Goal.BEST)
            .toList();
    Optional<Walked> toBeat =
        aim.worth() == Aim.Worth.NET_WHEN_LATE
            ? delay.leastHurt(fit)
            : fit.stream().min(aim.order(delay));
    ExactSearch.Result found =
        new ExactSearch(
                aim,
                candidates,
                book.house(),
                mostPasses,
                evaluator,
                delay,
                EnumSet.allOf(Pruning.class),
                mostScored)
            .run(toBeat);
    scored += found.scored();
    return found;
  }

  /**
   * Passes of the best programs of each number of passes in turn: the best programs are mostly
   * alike, and a pass that only a longer one holds is what they may lack.
   */
  private static void addThoseOfTheBest(List<Walked> walked, Set<Stop> passes, int most) {
    TreeMap<Integer, Deque<Walked>> bySize = new TreeMap<>();
    walked.stream()
        .sorted(Goal.BEST)
        .forEach(
            w -> bySize.computeIfAbsent(w.draft().stops().size(), n -> new ArrayDeque<>()).add(w));
    bySize.remove(0);
    while (passes.size() < most && !bySize.isEmpty()) {
      for (Deque<Walked> same : bySize.values()) {
        same.remove().draft().stops().stream()
            .filter(s -> passes.size() < most)
            .forEach(passes::add);
      }
      bySize.values().removeIf(Deque::isEmpty);
    }
  }
}
