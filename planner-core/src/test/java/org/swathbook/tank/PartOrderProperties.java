package org.swathbook.tank;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.statistics.Statistics;
import org.jgrapht.graph.DefaultEdge;
import org.jgrapht.graph.DirectedAcyclicGraph;
import org.jgrapht.graph.GraphCycleProhibitedException;
import org.jgrapht.traverse.TopologicalOrderIterator;

/**
 * The order out of guides that disagree is the one that ranked pairs (Tideman 1987) give on a graph
 * of JGraphT, which keeps circles out and sorts by itself.
 */
class PartOrderProperties {
  private record Pair(TankPart one, TankPart other, long majority) {}

  @Property(tries = 200)
  void itIsThatOfALibrarysGraph(@ForAll long seed) {
    List<MixingGuide> guides = guides(new Random(seed));
    boolean[] circle = new boolean[1];
    assertThat(PartOrder.inOrder(guides)).isEqualTo(byGraph(guides, circle));
    Statistics.label("guides that go round in a circle").collect(circle[0]);
  }

  private static List<MixingGuide> guides(Random random) {
    List<MixingGuide> out = new ArrayList<>();
    for (int g = 0; g <= random.nextInt(6); g++) {
      List<TankPart> parts = new ArrayList<>(List.of(TankPart.values()));
      Collections.shuffle(parts, random);
      List<Set<TankPart>> steps = new ArrayList<>();
      for (TankPart part : parts.subList(0, random.nextInt(parts.size() + 1))) {
        if (steps.isEmpty() || random.nextInt(3) > 0) {
          steps.add(EnumSet.of(part));
        } else {
          steps.get(steps.size() - 1).add(part);
        }
      }
      out.add(new MixingGuide("guide " + g, steps));
    }
    return out;
  }

  private static List<TankPart> byGraph(List<MixingGuide> guides, boolean[] circle) {
    DirectedAcyclicGraph<TankPart, DefaultEdge> before =
        new DirectedAcyclicGraph<>(DefaultEdge.class);
    List<Pair> pairs = new ArrayList<>();
    for (TankPart one : TankPart.values()) {
      before.addVertex(one);
      for (TankPart other : TankPart.values()) {
        long majority = votes(guides, one, other) - votes(guides, other, one);
        if (majority > 0) {
          pairs.add(new Pair(one, other, majority));
        }
      }
    }
    pairs.sort(
        Comparator.comparingLong((Pair p) -> -p.majority())
            .thenComparing(Pair::one)
            .thenComparing(Pair::other));
    for (Pair p : pairs) {
      try {
        before.addEdge(p.one(), p.other());
      } catch (GraphCycleProhibitedException e) {
        circle[0] = true;
      }
    }
    List<TankPart> out = new ArrayList<>();
    new TopologicalOrderIterator<>(before, Comparator.<TankPart>naturalOrder())
        .forEachRemaining(out::add);
    return out;
  }

  private static long votes(List<MixingGuide> guides, TankPart one, TankPart other) {
    return guides.stream().filter(g -> g.puts(one, other)).count();
  }
}
