package org.swathbook.plan.climb;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import org.swathbook.plan.draft.Draft;
import org.swathbook.plan.draft.Evaluator;
import org.swathbook.plan.draft.Stop;
import org.swathbook.plan.draft.Walked;

/**
 * The passes of some programs and those that may stand in the place of one of them, or beside them.
 * All programs made of these passes differ from the first ones in several passes at once, where a
 * step of the climb changes one.
 */
public final class Surroundings {
  private final Search search;
  private final Moves moves;
  private final Mending mending;
  private final Starts starts;
  private final Evaluator evaluator;
  private final int mostPasses;
  private final int mostWalked;

  /**
   * @param mostWalked neighbours that are walked to tell what mends a program that breaks a house
   *     rule: of each way of looking at them so many
   */
  public Surroundings(
      Search search,
      Moves moves,
      Mending mending,
      Starts starts,
      Evaluator evaluator,
      int mostPasses,
      int mostWalked) {
    this.search = search;
    this.moves = moves;
    this.mending = mending;
    this.starts = starts;
    this.evaluator = evaluator;
    this.mostPasses = mostPasses;
    this.mostWalked = mostWalked;
  }

  /**
   * The passes of the programs, then those of their neighbours: of each place of each program and
   * each way of looking at the neighbours the most promising in turn.
   *
   * @param most at most so many passes
   */
  public Set<Stop> of(List<Walked> programs, int most) {
    Set<Stop> out = new LinkedHashSet<>();
    List<Deque<Stop>> inTurn = new ArrayList<>();
    for (Walked program : programs) {
      out.addAll(program.draft().stops());
      inTurn.addAll(around(program));
    }
    while (out.size() < most && !inTurn.isEmpty()) {
      for (Deque<Stop> next : inTurn) {
        if (out.size() < most) {
          out.add(next.remove());
        }
      }
      inTurn.removeIf(Deque::isEmpty);
    }
    return out;
  }

  private List<Deque<Stop>> around(Walked program) {
    List<Draft> near = new ArrayList<>(moves.of(program.draft()));
    near.addAll(starts.withOneMorePass(program.draft(), Search.EARLY_POST));
    near.removeIf(d -> d.stops().size() > mostPasses);
    List<Draft> mended = new ArrayList<>(mending.of(program));
    mended.removeIf(d -> d.stops().size() > mostPasses);
    evaluator.expect(near);
    evaluator.expect(mended);
    ToDoubleFunction<Draft> net = evaluator::quick;
    ToDoubleFunction<Draft> goal = evaluator::quickGoal;
    List<Deque<Stop>> out = new ArrayList<>(byPlace(program, Search.inOrder(near, net)));
    out.addAll(byPlace(program, Search.inOrder(near, goal)));
    out.addAll(byPlace(program, Search.inOrder(mended, goal)));
    if (!program.meetsHouseRules()) {
      // A score does not know sites and overlaps: what mends them is told by walks alone.
      Set<Draft> some = new LinkedHashSet<>(search.topByGoal(near, mostWalked));
      some.addAll(search.topByGoal(mended, mostWalked));
      out.addAll(byPlace(program, asWalked(some)));
    }
    return out;
  }

  private List<Draft> asWalked(Set<Draft> drafts) {
    List<Walked> walked = new ArrayList<>(search.walkAll(drafts));
    walked.sort((a, b) -> Search.isBetter(a, b) ? -1 : Search.isBetter(b, a) ? 1 : 0);
    return walked.stream().map(Walked::draft).toList();
  }

  /** The one pass that each neighbour has instead, by what it stands for. */
  private static Collection<Deque<Stop>> byPlace(Walked program, List<Draft> neighbours) {
    List<Stop> own = program.draft().stops();
    Map<List<Stop>, Deque<Stop>> out = new LinkedHashMap<>();
    for (Draft d : neighbours) {
      List<Stop> other = d.stops().stream().filter(s -> !own.contains(s)).toList();
      if (other.size() == 1) {
        List<Stop> instead = own.stream().filter(s -> !d.stops().contains(s)).toList();
        out.computeIfAbsent(instead, k -> new ArrayDeque<>()).add(other.get(0));
      }
    }
    return out.values();
  }
}
