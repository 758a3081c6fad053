package org.swathbook.plan.exact;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import net.jqwik.api.statistics.Statistics;
import org.jgrapht.GraphPath;
import org.jgrapht.alg.shortestpath.MartinShortestPath;
import org.jgrapht.graph.DirectedWeightedMultigraph;

/**
 * Trade-offs of cost, kill and number of passes, where nothing but masks ties doses together: a
 * program is then a path from date to date whose costs add up, and its best trade-offs are those of
 * a shortest path of several objectives (Martins 1984, European Journal of Operational Research 16:
 * 236-245, from memory; as JGraphT has it). The search, asked for the cheapest program at every
 * level of kill and number of passes, must give the same vectors, no more and no fewer.
 */
class CostVectorsProperties {
  private static final int DATES = 4;
  private static final int OPTIONS = 6;
  private static final int WEEDS = 2;
  private static final int MOST_KILL = 3;

  /** Cents, passes, and by weed the kill. */
  private record Vector(int cents, int passes, List<Integer> kill) {

    boolean isNoWorseThan(Vector other) {
      boolean out = cents <= other.cents && passes <= other.passes;
      for (int w = 0; w < kill.size(); w++) {
        out &= kill.get(w) >= other.kill.get(w);
      }
      return out;
    }
  }

  /** A tank on the date of an edge, or none. */
  private static final class Step {
    final double[] cost;

    Step(double[] cost) {
      this.cost = cost;
    }
  }

  @Property(tries = 20)
  void theSearchGivesTheTradeOffsOfTheShortestPaths(@ForAll long seed) {
    compare(seed);
  }

  @Property(tries = 1000)
  @Tag("slow")
  void inAThousandPlansToo(@ForAll long seed) {
    compare(seed);
  }

  private static void compare(long seed) {
    LinearPlan plan = additive(seed);
    Set<Vector> front = front(plan);
    assertThat(front).isEqualTo(martin(plan));
    Statistics.label("trade-offs").collect(front.size() / 10 * 10 + " and more");
  }

  /** Masks are all that is left, and kills are small numbers, so that vectors come twice. */
  private static LinearPlan additive(long seed) {
    LinearPlan drawn = LinearInstance.draw(seed, DATES, OPTIONS, WEEDS, DATES);
    Random random = new Random(seed);
    int[][][] kill = new int[DATES][OPTIONS][WEEDS];
    for (int[][] date : kill) {
      for (int[] option : date) {
        Arrays.setAll(option, w -> random.nextInt(MOST_KILL + 1));
      }
    }
    int[] cents = new int[OPTIONS];
    Arrays.setAll(cents, o -> 1 + random.nextInt(9));
    int[] unlimited = new int[drawn.actives()];
    Arrays.fill(unlimited, 1_000_000);
    return new LinearPlan(
        drawn.day(),
        cents,
        random.nextInt(4),
        drawn.legal(),
        drawn.partners(),
        kill,
        new int[WEEDS],
        drawn.active(),
        drawn.milliLb(),
        unlimited,
        unlimited,
        new int[drawn.actives()],
        DATES,
        2);
  }

  private static Set<Vector> martin(LinearPlan plan) {
    LinearTanks tanks = new LinearTanks(plan);
    DirectedWeightedMultigraph<Integer, Step> graph = new DirectedWeightedMultigraph<>(Step.class);
    for (int d = 0; d <= DATES; d++) {
      graph.addVertex(d);
    }
    // Costs may not be negative: a kill counts as what is lacking to the most of a date.
    double most = 2 * MOST_KILL;
    for (int d = 0; d < DATES; d++) {
      double[] skip = new double[2 + WEEDS];
      Arrays.fill(skip, 2, skip.length, most);
      graph.addEdge(d, d + 1, new Step(skip));
    }
    for (int t = 0; t < tanks.size(); t++) {
      double[] cost = new double[2 + WEEDS];
      cost[0] = tanks.cents[t];
      cost[1] = 1;
      for (int w = 0; w < WEEDS; w++) {
        cost[2 + w] = most - tanks.kill(t, w);
      }
      graph.addEdge(tanks.date[t], tanks.date[t] + 1, new Step(cost));
    }
    Set<Vector> out = new HashSet<>();
    for (GraphPath<Integer, Step> path :
        new MartinShortestPath<>(graph, (Step s) -> s.cost).getPaths(0, DATES)) {
      double[] sum = new double[2 + WEEDS];
      path.getEdgeList()
          .forEach(
              s -> {
                for (int i = 0; i < sum.length; i++) {
                  sum[i] += s.cost[i];
                }
              });
      List<Integer> kill = new ArrayList<>();
      for (int w = 0; w < WEEDS; w++) {
        kill.add((int) (DATES * most - sum[2 + w]));
      }
      out.add(new Vector((int) sum[0], (int) sum[1], kill));
    }
    return out;
  }

  /** The cheapest at every level, less what another level betters. */
  private static Set<Vector> front(LinearPlan plan) {
    List<Vector> all = new ArrayList<>();
    int levels = 2 * MOST_KILL * DATES;
    for (int passes = 0; passes <= DATES; passes++) {
      for (int a = 0; a <= levels; a++) {
        for (int b = 0; b <= levels; b++) {
          OptionalInt cents =
              LinearSearch.cheapest(
                      plan.asking(new int[] {a, b}, passes), EnumSet.allOf(Pruning.class))
                  .cents();
          if (cents.isEmpty()) {
            break;
          }
          all.add(new Vector(cents.getAsInt(), passes, List.of(a, b)));
        }
      }
    }
    Set<Vector> out = new HashSet<>();
    for (Vector v : all) {
      if (all.stream().noneMatch(other -> !other.equals(v) && other.isNoWorseThan(v))) {
        out.add(v);
      }
    }
    return out;
  }
}
