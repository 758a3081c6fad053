package org.swathbook.plan;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.swathbook.book.Book;
import org.swathbook.plan.climb.Mending;
import org.swathbook.plan.climb.Moves;
import org.swathbook.plan.climb.Search;
import org.swathbook.plan.climb.Starts;
import org.swathbook.plan.climb.Surroundings;
import org.swathbook.plan.draft.Delay;
import org.swathbook.plan.draft.Draft;
import org.swathbook.plan.draft.FieldEvaluator;
import org.swathbook.plan.draft.Goal;
import org.swathbook.plan.draft.PlanSpace;
import org.swathbook.plan.draft.Stop;
import org.swathbook.plan.draft.Walked;

/**
 * Looks for the best program: climbs from several starts, then leaves the hill by several steps at
 * once. That nothing meets the house rules is not said before all effort was spent on it, but for a
 * quick look. One hunt is of one field and one thread.
 */
final class ProgramHunt {
  private final Book book;
  private final PlanSpace space;
  private final FieldEvaluator evaluator;
  private final Delay delay;
  private final Starts starts;
  private final Moves moves;
  private final Mending mending;
  private final Search search;
  private final Effort spent;
  private final List<Walked> known;
  private long scored;

  private ProgramHunt(
      Book book,
      PlanSpace space,
      FieldEvaluator evaluator,
      Delay delay,
      Starts starts,
      Moves moves,
      Mending mending,
      List<Walked> known,
      Effort effort) {
    this.book = book;
    this.space = space;
    this.evaluator = evaluator;
    this.delay = delay;
    this.starts = starts;
    this.moves = moves;
    this.mending = mending;
    this.search = new Search(moves, mending, starts, evaluator, effort.climbs().steps());
    this.spent = effort;
    this.known = List.copyOf(known);
  }

  /**
   * Looks as usual, or quickly. With all effort, or where a usual look finds nothing that meets the
   * house rules, it then looks once more from the beginning with all of it: what is met on a short
   * way may lead away from what a long one finds, and the other way about. The best of both counts.
   *
   * @param known legal programs met elsewhere, from the best of which it climbs too
   */
  static ProgramHunt of(
      Book book,
      PlanSpace space,
      FieldEvaluator evaluator,
      Delay delay,
      Starts starts,
      Moves moves,
      Mending mending,
      List<Walked> known,
      Effort effort) {
    boolean all = effort == Effort.THOROUGH;
    Effort first = all ? Effort.USUAL : effort;
    ProgramHunt hunt =
        new ProgramHunt(book, space, evaluator, delay, starts, moves, mending, known, first);
    hunt.look();
    return all || first == Effort.USUAL && !hunt.meetsHouseRules() ? hunt.again() : hunt;
  }

  private ProgramHunt again() {
    ProgramHunt longer =
        new ProgramHunt(
            book, space, evaluator, delay, starts, moves, mending, known, Effort.THOROUGH);
    longer.look();
    longer.add(walked());
    longer.scored += scored;
    return longer;
  }

  private void look() {
    climb();
    improve();
    if (spent != Effort.QUICK) {
      lookFurther();
    }
  }

  private void lookFurther() {
    Optional<Walked> before = search.best();
    search.withAnotherNumberOfPasses(space.maxPasses());
    if (!search.best().equals(before)) {
      improve();
    }
    search.houseRulesAside(space.maxPasses());
  }

  private void improve() {
    new Improving(search, surroundings(), this::combined, spent.combined()).run();
  }

  private Optional<Walked> combined(Set<Stop> passes) {
    Combining.Soon found = Combining.soon(book, space, evaluator, delay, walked(), passes, spent);
    scored += found.scored();
    return found.best();
  }

  private void climb() {
    for (Draft start : starts.best(spent.climbs().starts())) {
      search.climb(start, space.maxPasses());
    }
    known.forEach(search::keep);
    known.stream()
        .filter(Walked::hasPasses)
        .sorted(Goal.BEST)
        .limit(spent.climbs().starts())
        .forEach(w -> search.climb(w.draft(), space.maxPasses()));
    if (spent != Effort.QUICK) {
      search.alternating(space.maxPasses());
    }
    if (!meetsHouseRules()) {
      search.fromNearMisses(space.maxPasses());
    }
    if (!meetsHouseRules() && spent != Effort.QUICK) {
      search.best().ifPresent(w -> search.withoutEachActiveOf(w, space));
    }
  }

  private Surroundings surroundings() {
    int walked = spent.combined().walked();
    return new Surroundings(search, moves, mending, starts, evaluator, space.maxPasses(), walked);
  }

  private boolean meetsHouseRules() {
    return search.best().filter(Walked::meetsHouseRules).isPresent();
  }

  /** All programs walked so far, in the order in which they were first met. */
  List<Walked> walked() {
    return search.walked();
  }

  /** The effort spent in the end, and to spend on proofs. */
  Effort spent() {
    return spent;
  }

  /** Programs scored when passes were combined. */
  long scored() {
    return scored;
  }

  /** Keeps programs that were found elsewhere. */
  void add(List<Walked> found) {
    found.forEach(search::keep);
  }

  /** Passes that stand around the best program. */
  Set<Stop> around(int most) {
    Optional<Walked> best = search.best();
    return best.map(w -> surroundings().of(List.of(w), most)).orElse(Set.of());
  }
}
