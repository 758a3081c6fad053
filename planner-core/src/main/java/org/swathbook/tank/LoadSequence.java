package org.swathbook.tank;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.jgrapht.GraphPath;
import org.jgrapht.alg.shortestpath.DijkstraShortestPath;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.DirectedWeightedMultigraph;
import org.swathbook.catalog.TankTerms.Rinse;

/**
 * The order in which one sprayer makes its loads of a day with least clean-out between them, so
 * that no load carries what injures the crop of a later one. Exact: a shortest path through what
 * may be done and what the sprayer may still hold. A clean-out is made no sooner than a load asks
 * for it, since a later one takes out more.
 *
 * @param stops in the order of spraying
 */
public record LoadSequence(List<Stop> stops) {

  /** More loads than this are no day of one sprayer, and too many to be tried in all orders. */
  public static final int MOST_LOADS = 8;

  /**
   * One load.
   *
   * @param load its number as named, from 0
   * @param before clean-out between this load and what was before; empty when none is needed
   * @param because residues that ask for a clean-out here, by name
   */
  public record Stop(int load, Optional<Rinse> before, List<Because> because) {
    public Stop {
      because = List.copyOf(because);
    }
  }

  /** A residue with what its label asks for before the crop of this load. */
  public record Because(String active, Demand demand) {}

  /** What has to be done to a sprayer that held an active before it sprays a crop. */
  public enum Demand {
    NOTHING(0),
    WATER_RINSE(1),
    TRIPLE_RINSE(2),
    CLEANER(3),
    /** Nobody knows; the most thorough clean-out is then the one that is sure to do. */
    UNKNOWN(3);

    private final int level;

    Demand(int level) {
      this.level = level;
    }

    public static Demand of(Rinse rinse) {
      return switch (rinse) {
        case WATER_RINSE -> WATER_RINSE;
        case TRIPLE_RINSE -> TRIPLE_RINSE;
        case CLEANER -> CLEANER;
      };
    }
  }

  /** What residues ask for. */
  @FunctionalInterface
  public interface Demands {
    /**
     * @param load number of a load, from 0
     */
    Demand before(String active, int load);
  }

  /**
   * Fillings with water that a clean-out of each level takes: none, one, three, and one before the
   * cleaner, the cleaner, and two after it (default, ours).
   */
  private static final int[] FILLINGS = {0, 1, 3, 4};

  /** Above all turns that two loads may take against the order in which they were named. */
  private static final int FILLING_WEIGHT = 1000;

  public LoadSequence {
    stops = List.copyOf(stops);
  }

  /**
   * @param loads names of actives of each load
   * @param held what the sprayer holds before, with the most thorough clean-out since; empty where
   *     there was none, or nobody says
   * @throws IllegalArgumentException when there are no loads or more than {@link #MOST_LOADS}
   */
  public static LoadSequence of(
      List<Set<String>> loads, Map<String, Optional<Rinse>> held, Demands demands) {
    if (loads.isEmpty() || loads.size() > MOST_LOADS) {
      throw new IllegalArgumentException(loads.size() + " loads cannot be put in order");
    }
    return new LoadSequence(new Search(loads, demands).stops(start(held)));
  }

  private static Map<String, Integer> start(Map<String, Optional<Rinse>> held) {
    Map<String, Integer> out = new TreeMap<>();
    held.forEach((active, since) -> out.put(active, since.map(LoadSequence::level).orElse(0)));
    return out;
  }

  private static int level(Rinse rinse) {
    return Demand.of(rinse).level;
  }

  /** Fillings with water that all clean-outs take. */
  public int fillings() {
    return stops.stream()
        .mapToInt(s -> FILLINGS[s.before().map(LoadSequence::level).orElse(0)])
        .sum();
  }

  /**
   * @param done a bit a load
   * @param residues what still matters of what the sprayer held, with the level cleaned since
   */
  private record State(int done, Map<String, Integer> residues) {}

  /** One load made after a clean-out. */
  private static final class Step extends DefaultWeightedEdge {
    private static final long serialVersionUID = 1L;

    final transient Stop stop;

    Step(Stop stop) {
      this.stop = stop;
    }
  }

  private static final class Search {
    private final List<Set<String>> loads;
    private final Demands demands;
    private final DirectedWeightedMultigraph<State, Step> graph =
        new DirectedWeightedMultigraph<>(Step.class);
    private final Deque<State> open = new ArrayDeque<>();

    Search(List<Set<String>> loads, Demands demands) {
      this.loads = loads;
      this.demands = demands;
    }

    List<Stop> stops(Map<String, Integer> held) {
      State start = new State(0, mattering(0, held));
      // Once all is done no residue matters, so that there is one end.
      State end = new State((1 << loads.size()) - 1, Map.of());
      graph.addVertex(start);
      open.add(start);
      while (!open.isEmpty()) {
        State from = open.remove();
        for (int load = 0; load < loads.size(); load++) {
          if ((from.done() & 1 << load) == 0) {
            make(from, load);
          }
        }
      }
      GraphPath<State, Step> path = new DijkstraShortestPath<>(graph).getPath(start, end);
      return path.getEdgeList().stream().map(step -> step.stop).toList();
    }

    private void make(State from, int load) {
      List<Because> because = because(from, load);
      int least = because.stream().mapToInt(b -> b.demand().level).max().orElse(0);
      // More than is asked for here may spare a second clean-out later.
      int most = least == 0 ? 0 : Demand.CLEANER.level;
      for (int level = least; level <= most; level++) {
        State to = after(from, load, level);
        if (graph.addVertex(to)) {
          open.add(to);
        }
        Step step = new Step(new Stop(load, rinse(level), because));
        graph.addEdge(from, to, step);
        int turns = Integer.bitCount(~from.done() & ((1 << load) - 1));
        graph.setEdgeWeight(step, FILLING_WEIGHT * FILLINGS[level] + turns);
      }
    }

    private List<Because> because(State from, int load) {
      List<Because> out = new ArrayList<>();
      from.residues()
          .forEach(
              (active, since) -> {
                Demand demand = demand(active, load);
                if (demand.level > since) {
                  out.add(new Because(active, demand));
                }
              });
      return out;
    }

    /** What is in the load itself is meant for its crop. */
    private Demand demand(String active, int load) {
      return loads.get(load).contains(active) ? Demand.NOTHING : demands.before(active, load);
    }

    private State after(State from, int load, int level) {
      Map<String, Integer> residues = new TreeMap<>();
      from.residues().forEach((active, since) -> residues.put(active, Math.max(since, level)));
      loads.get(load).forEach(active -> residues.put(active, 0));
      int done = from.done() | 1 << load;
      return new State(done, mattering(done, residues));
    }

    /** Residues that a load still to be made asks to be cleaned out. */
    private Map<String, Integer> mattering(int done, Map<String, Integer> residues) {
      Map<String, Integer> out = new TreeMap<>();
      residues.forEach(
          (active, since) -> {
            for (int load = 0; load < loads.size(); load++) {
              if ((done & 1 << load) == 0 && demand(active, load).level > since) {
                out.put(active, since);
              }
            }
          });
      return out;
    }

    private static Optional<Rinse> rinse(int level) {
      return Arrays.stream(Rinse.values()).filter(r -> level(r) == level).findFirst();
    }
  }
}
