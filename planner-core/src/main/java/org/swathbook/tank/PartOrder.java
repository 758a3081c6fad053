package org.swathbook.tank;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jgrapht.graph.DefaultEdge;
import org.jgrapht.graph.DirectedAcyclicGraph;
import org.jgrapht.graph.GraphCycleProhibitedException;
import org.jgrapht.traverse.TopologicalOrderIterator;

/**
 * One order out of guides that disagree: each pair of kinds goes as more of the guides have it, the
 * clearest majorities first, and a pair that would close a circle with those is left out (ranked
 * pairs: Tideman 1987, Independence of clones as a criterion for voting rules).
 */
final class PartOrder {
  private static final List<TankPart> IN_ORDER = inOrder(MixingGuide.ALL);

  /** A pair of kinds and by how many guides more the one goes before the other. */
  private record Pair(TankPart one, TankPart other, int majority) {}

  private PartOrder() {}

  /** The place of a kind, from 0. */
  static int place(TankPart part) {
    return IN_ORDER.indexOf(part);
  }

  /** All kinds as these guides have them; where they leave it open, in the order of the kinds. */
  static List<TankPart> inOrder(List<MixingGuide> guides) {
    DirectedAcyclicGraph<TankPart, DefaultEdge> before =
        new DirectedAcyclicGraph<>(DefaultEdge.class);
    for (TankPart p : TankPart.values()) {
      before.addVertex(p);
    }
    for (Pair p : pairs(guides)) {
      lock(before, p);
    }
    List<TankPart> out = new ArrayList<>();
    new TopologicalOrderIterator<>(before, Comparator.<TankPart>naturalOrder())
        .forEachRemaining(out::add);
    return List.copyOf(out);
  }

  private static void lock(DirectedAcyclicGraph<TankPart, DefaultEdge> before, Pair pair) {
    try {
      before.addEdge(pair.one(), pair.other());
    } catch (GraphCycleProhibitedException circle) {
      // Clearer majorities already have it the other way round.
    }
  }

  private static List<Pair> pairs(List<MixingGuide> guides) {
    List<Pair> out = new ArrayList<>();
    for (TankPart one : TankPart.values()) {
      for (TankPart other : TankPart.values()) {
        int majority = votes(guides, one, other) - votes(guides, other, one);
        if (majority > 0) {
          out.add(new Pair(one, other, majority));
        }
      }
    }
    out.sort(
        Comparator.comparingInt((Pair p) -> -p.majority())
            .thenComparing(Pair::one)
            .thenComparing(Pair::other));
    return out;
  }

  private static int votes(List<MixingGuide> guides, TankPart one, TankPart other) {
    return (int) guides.stream().filter(g -> g.puts(one, other)).count();
  }
}
