package org.swathbook.plan.exact;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.swathbook.plan.draft.Evaluator;
import org.swathbook.plan.draft.Stop;
import org.swathbook.plan.draft.Walked;

/**
 * The front of the programs that can be made of some passes, proved over as many of them as a
 * budget allows: first over the passes that programs of the front known hold most, then over more
 * and more, each time only what holds a pass that is new.
 *
 * @param front programs of the front, those known with them
 * @param passes over how many of the passes it is proved: every program made of them is on the
 *     front or beaten by one that is
 * @param of how many passes there are
 * @param scored programs scored
 */
public record FrontProof(List<Walked> front, int passes, int of, long scored) {

  /** Passes to begin with, and how many times as many are next: default, ours. */
  private static final int FIRST = 16;

  private static final double GROWS = 1.2;

  public FrontProof {
    front = List.copyOf(front);
  }

  /**
   * @param known programs met, made of the candidates or not
   * @param mostScored programs to score before the proof is given up
   */
  public static FrontProof of(
      Candidates candidates,
      int maxPasses,
      Evaluator evaluator,
      List<Walked> known,
      long mostScored) {
    FrontSoFar front = new FrontSoFar();
    known.stream().filter(w -> w.hasPasses() && w.lacking() == 0).forEach(front::add);
    List<Stop> inTurn = inTurn(candidates, front.programs());
    int proved = 0;
    long scored = 0;
    int next = Math.min(FIRST, inTurn.size());
    while (proved < inTurn.size()) {
      FrontSearch search =
          new FrontSearch(
              candidates.only(Set.copyOf(inTurn.subList(0, next))),
              Set.copyOf(inTurn.subList(0, proved)),
              maxPasses,
              evaluator,
              front,
              EnumSet.allOf(Pruning.class),
              mostScored - scored);
      boolean complete = search.run();
      scored += search.scored();
      if (!complete) {
        break;
      }
      proved = next;
      next = Math.min((int) Math.ceil(GROWS * next), inTurn.size());
    }
    return new FrontProof(front.programs(), proved, inTurn.size(), scored);
  }

  /** Those in most programs of the front first, then the others in their order. */
  private static List<Stop> inTurn(Candidates candidates, List<Walked> front) {
    Map<Stop, Integer> held = new HashMap<>();
    front.forEach(w -> w.draft().stops().forEach(s -> held.merge(s, 1, Integer::sum)));
    List<Stop> out = new ArrayList<>(candidates.all().stream().map(Candidate::stop).toList());
    out.sort(Comparator.comparingInt((Stop s) -> held.getOrDefault(s, 0)).reversed());
    return out;
  }
}
