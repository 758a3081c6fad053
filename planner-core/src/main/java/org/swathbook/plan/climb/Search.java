package org.swathbook.plan.climb;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.swathbook.catalog.IngredientId;
import org.swathbook.plan.draft.Draft;
import org.swathbook.plan.draft.Evaluator;
import org.swathbook.plan.draft.Goal;
import org.swathbook.plan.draft.PlanSpace;
import org.swathbook.plan.draft.Stop;
import org.swathbook.plan.draft.Walked;

/**
 * Hill climbing by exchanges. Each step scores every neighbour quickly by its net return, walks the
 * most promising in full, and goes to the one that serves the goal best; it stops when none does
 * better. Heuristic: a better program may exist, so its result is never called exact.
 */
public final class Search {
  /** Days from planting from which a post is added: default, ours. */
  private static final int FIRST_POST = 15;

  /** The same of one at the first weeds. */
  static final int EARLY_POST = 9;

  private static final int MOST_STEPS = 40;

  /** Of the ways to lay one more pass so many are climbed from: default, ours. */
  private static final int MORE_PASSES_TRIED = 2;

  private final Moves moves;
  private final Mending mending;
  private final Starts starts;
  private final Evaluator evaluator;
  private final Steps steps;
  private final Map<Draft, Walked> walked = new LinkedHashMap<>();

  public Search(Moves moves, Mending mending, Starts starts, Evaluator evaluator, Steps steps) {
    this.moves = moves;
    this.mending = mending;
    this.starts = starts;
    this.evaluator = evaluator;
    this.steps = steps;
  }

  /** All programs walked so far, in the order in which they were first met. */
  public List<Walked> walked() {
    return List.copyOf(walked.values());
  }

  /** The best of them; empty when nothing was legal. */
  public Optional<Walked> best() {
    return walked.values().stream().filter(Walked::hasPasses).min(Goal.BEST);
  }

  /** The top of the hill reached from a start; empty when the start is not legal. */
  public Optional<Walked> climb(Draft start, int mostPasses) {
    return climb(start, FIRST_POST, d -> d.stops().size() <= mostPasses);
  }

  /**
   * The same with posts added to a program from when the first weeds are up. It finds what no step
   * finds with a post at its usual time, though a step too early may lead away from a higher hill.
   */
  public Optional<Walked> climbWithEarlyPosts(Draft start, int mostPasses) {
    return climb(start, EARLY_POST, d -> d.stops().size() <= mostPasses);
  }

  /**
   * Climbs again from near misses. Such programs are often met beside the way and left for a
   * neighbour of better net return.
   */
  public void fromNearMisses(int mostPasses) {
    for (Walked w : nearMisses()) {
      climbWithEarlyPosts(w.draft(), mostPasses);
    }
  }

  /** For each house rule the program that breaks it alone and by the least. */
  public List<Walked> nearMisses() {
    Map<String, Walked> nearest = new TreeMap<>();
    for (Walked w : walked.values()) {
      if (w.brokenRules() == 1 && w.hasPasses()) {
        nearest.merge(w.brokenNames().get(0), w, (a, b) -> NEARER.compare(a, b) <= 0 ? a : b);
      }
    }
    return List.copyOf(nearest.values());
  }

  /**
   * Climbs again from the best program with two posts that are unlike in the place of one: from
   * those of them that promise most.
   */
  public void alternating(int mostPasses) {
    List<Draft> unlike = best().map(w -> starts.alternating(w.draft())).orElse(List.of());
    for (Draft d : topByGoal(unlike, steps.walked())) {
      climbWithEarlyPosts(d, mostPasses);
    }
  }

  /**
   * Climbs again from the best program with a pass more and with a pass less, and keeps to that
   * number on the way up: a free climb would take the step back at once. From the top it goes on
   * freely where that is the best by then.
   */
  public void withAnotherNumberOfPasses(int mostPasses) {
    Optional<Walked> best = best();
    if (best.isEmpty()) {
      return;
    }
    Draft now = best.get().draft();
    int passes = now.stops().size();
    List<Draft> less = new ArrayList<>();
    for (int i = 0; i < passes && passes > 1; i++) {
      less.add(now.without(i));
    }
    List<Draft> more = passes < mostPasses ? starts.withOneMorePass(now, EARLY_POST) : List.of();
    List<Draft> from = new ArrayList<>(topByGoal(more, MORE_PASSES_TRIED));
    from.addAll(topByGoal(less, 1));
    for (Draft start : from) {
      int held = start.stops().size();
      climb(start, EARLY_POST, d -> d.stops().size() == held)
          .filter(top -> best().filter(top::equals).isPresent())
          .ifPresent(top -> climbWithEarlyPosts(top.draft(), mostPasses));
    }
  }

  /**
   * Climbs from the program of highest net return by net return alone, whatever house rules it
   * breaks: what the rules cost is told beside it.
   */
  public void houseRulesAside(int mostPasses) {
    Optional<Walked> here = walked.values().stream().filter(Walked::hasPasses).min(HIGHER);
    for (int step = 0; step < MOST_STEPS && here.isPresent(); step++) {
      Draft now = here.get().draft();
      List<Draft> near = new ArrayList<>(moves.of(now));
      near.addAll(starts.withOneMorePass(now, FIRST_POST));
      near.removeIf(d -> d.stops().size() > mostPasses);
      evaluator.expect(near);
      Optional<Walked> next =
          walkAll(new LinkedHashSet<>(top(near, steps.walked(), evaluator::quick))).stream()
              .min(HIGHER);
      if (next.isEmpty() || HIGHER.compare(next.get(), here.get()) >= 0) {
        return;
      }
      here = next;
    }
  }

  private static final Comparator<Walked> HIGHER =
      Comparator.comparingInt(Walked::lacking)
          .thenComparing(Comparator.comparing(Walked::net).reversed())
          .thenComparing(Walked::key);

  private static final Comparator<Walked> NEARER =
      Comparator.comparingDouble(Walked::deficit).thenComparing(Goal.BEST);

  /**
   * Leaves the best program by taking one active at a time out of it for good and climbing again
   * from what is left: a way out where every single step away is a step down. Stops at the first
   * program that meets the house rules.
   */
  public void withoutEachActiveOf(Walked best, PlanSpace space) {
    Set<IngredientId> actives = new TreeSet<>();
    best.draft()
        .stops()
        .forEach(s -> s.options().forEach(o -> actives.add(space.option(o).ingredient())));
    for (IngredientId gone : actives) {
      Predicate<Draft> free =
          d ->
              d.stops().size() <= space.maxPasses()
                  && d.stops().stream()
                      .allMatch(
                          s ->
                              s.options().stream()
                                  .noneMatch(o -> space.option(o).ingredient().equals(gone)));
      Optional<Walked> top = climb(without(best.draft(), gone, space), EARLY_POST, free);
      if (top.isPresent() && top.get().meetsHouseRules()) {
        return;
      }
    }
  }

  private static Draft without(Draft draft, IngredientId gone, PlanSpace space) {
    return new Draft(
        draft.stops().stream()
            .map(
                s ->
                    new Stop(
                        s.date(),
                        s.options().stream()
                            .filter(o -> !space.option(o).ingredient().equals(gone))
                            .toList()))
            .toList());
  }

  private Optional<Walked> climb(Draft start, int firstPost, Predicate<Draft> allowed) {
    Optional<Walked> here = walk(start);
    for (int step = 0; step < MOST_STEPS && here.isPresent(); step++) {
      Walked now = here.get();
      List<List<Draft>> near = new ArrayList<>(List.of(moves.of(now.draft()), mending.of(now)));
      if (steps.onePassMoreAtOnce()) {
        near.add(starts.withOneMorePass(now.draft(), firstPost));
      }
      Optional<Walked> best = best(near, allowed);
      if (!steps.onePassMoreAtOnce() && (best.isEmpty() || !isWorthIt(now, best.get()))) {
        near = List.of(starts.withOneMorePass(now.draft(), firstPost));
        best = Stream.concat(best.stream(), best(near, allowed).stream()).reduce(Search::better);
      }
      if (best.isEmpty() || !isBetter(best.get(), now)) {
        return here;
      }
      here = best;
      if (!isWorthIt(now, best.get())) {
        return here;
      }
    }
    return here;
  }

  static boolean isBetter(Walked a, Walked b) {
    int c = Double.compare(Goal.of(a), Goal.of(b));
    return c > 0 || (c == 0 && a.key().compareTo(b.key()) < 0);
  }

  private static Walked better(Walked a, Walked b) {
    return isBetter(b, a) ? b : a;
  }

  private boolean isWorthIt(Walked now, Walked next) {
    return isBetter(next, now) && Goal.of(next) - Goal.of(now) >= steps.worth();
  }

  /** The best by the goal of those of each way that promise most; empty when none is legal. */
  private Optional<Walked> best(List<List<Draft>> ways, Predicate<Draft> allowed) {
    Set<Draft> promising = new LinkedHashSet<>();
    for (List<Draft> way : ways) {
      List<Draft> drafts = way.stream().filter(allowed).toList();
      evaluator.expect(drafts);
      promising.addAll(top(drafts, steps.walked(), evaluator::quick));
      promising.addAll(topByGoal(drafts, steps.walked()));
    }
    return walkAll(promising).stream().reduce(Search::better);
  }

  /** The first legal drafts by a score, highest first. */
  List<Draft> top(List<Draft> drafts, int many, ToDoubleFunction<Draft> score) {
    return inOrder(drafts, score).stream()
        .filter(d -> walked.containsKey(d) || evaluator.legal(d))
        .limit(many)
        .toList();
  }

  /**
   * The first legal drafts by the goal, highest first. What sites and overlaps cost a draft is
   * asked only while a draft may be among the first: they never raise what its score says.
   */
  List<Draft> topByGoal(List<Draft> drafts, int many) {
    record Promised(Draft draft, double goal, boolean settled) {}
    PriorityQueue<Promised> left =
        new PriorityQueue<>(
            Comparator.comparingDouble(Promised::goal)
                .reversed()
                .thenComparing(Promised::settled)
                .thenComparing(p -> p.draft().key()));
    for (Draft d : drafts) {
      left.add(new Promised(d, evaluator.quickGoal(d), false));
    }
    List<Draft> out = new ArrayList<>();
    while (out.size() < many && !left.isEmpty()) {
      Promised next = left.remove();
      if (next.settled()) {
        out.add(next.draft());
      } else if (walked.containsKey(next.draft()) || evaluator.legal(next.draft())) {
        left.add(new Promised(next.draft(), evaluator.goal(next.draft()), true));
      }
    }
    return out;
  }

  /** Highest first; equal ones in the order of their keys. */
  static List<Draft> inOrder(List<Draft> drafts, ToDoubleFunction<Draft> score) {
    record Scored(Draft draft, double score) {}
    List<Scored> scored = new ArrayList<>();
    for (Draft d : drafts) {
      scored.add(new Scored(d, score.applyAsDouble(d)));
    }
    scored.sort(
        Comparator.comparingDouble(Scored::score).reversed().thenComparing(s -> s.draft().key()));
    return scored.stream().map(Scored::draft).toList();
  }

  /** Keeps a program that was walked elsewhere, by the same evaluator. */
  public void keep(Walked program) {
    walked.putIfAbsent(program.draft(), program);
  }

  /** Those of the drafts that no rule blocks, walked in full, in their order. */
  List<Walked> walkAll(Set<Draft> drafts) {
    List<Draft> fresh =
        drafts.stream().filter(d -> !walked.containsKey(d) && evaluator.legal(d)).toList();
    evaluator.full(fresh).forEach(this::keep);
    return drafts.stream().flatMap(d -> Optional.ofNullable(walked.get(d)).stream()).toList();
  }

  /** The draft walked in full; empty when a rule blocks it. */
  public Optional<Walked> walk(Draft draft) {
    Walked known = walked.get(draft);
    if (known == null && evaluator.legal(draft)) {
      known = evaluator.full(draft);
      walked.put(draft, known);
    }
    return Optional.ofNullable(known);
  }
}
