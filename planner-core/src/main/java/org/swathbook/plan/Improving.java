package org.swathbook.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import org.swathbook.plan.climb.Search;
import org.swathbook.plan.climb.Surroundings;
import org.swathbook.plan.draft.Goal;
import org.swathbook.plan.draft.Stop;
import org.swathbook.plan.draft.Walked;

/**
 * Leaves the top of a hill by several steps at once: combines the passes that stand around the best
 * program, and from a better one goes on. When nothing better is found there, it looks between the
 * best program and one that is the best in another way.
 */
final class Improving {
  private final Search search;
  private final Surroundings surroundings;
  private final Function<Set<Stop>, Optional<Walked>> combine;
  private final Effort.Combined most;

  /**
   * @param combine the best program found of some passes
   */
  Improving(
      Search search,
      Surroundings surroundings,
      Function<Set<Stop>, Optional<Walked>> combine,
      Effort.Combined most) {
    this.most = most;
    this.search = search;
    this.surroundings = surroundings;
    this.combine = combine;
  }

  /** Walks the better programs that it finds. */
  void run() {
    Set<List<Walked>> tried = new HashSet<>();
    boolean better = true;
    while (better) {
      better = false;
      Optional<Walked> best = search.best();
      for (List<Walked> between : best.map(this::between).orElse(List.of())) {
        if (tried.size() < most.times() && tried.add(between) && isBetterOf(between, best.get())) {
          better = true;
          break;
        }
      }
    }
  }

  private boolean isBetterOf(List<Walked> between, Walked best) {
    combine.apply(surroundings.of(between, most.passes())).ifPresent(search::keep);
    return !search.best().get().equals(best);
  }

  /**
   * First the best program, with the near misses while it breaks a house rule; then it with the
   * best of each number of passes, the cheapest that breaks no more, and the one of highest net
   * return.
   */
  private List<List<Walked>> between(Walked best) {
    List<Walked> first = new ArrayList<>(List.of(best));
    if (!best.meetsHouseRules()) {
      search.nearMisses().stream().filter(w -> !w.equals(best)).forEach(first::add);
    }
    List<List<Walked>> out = new ArrayList<>(List.of(List.copyOf(first)));
    for (Walked other : bestInOtherWays()) {
      out.add(List.of(best, other));
    }
    return out;
  }

  private Set<Walked> bestInOtherWays() {
    List<Walked> walked = search.walked().stream().filter(Walked::hasPasses).toList();
    Map<Integer, Walked> bySize = new TreeMap<>();
    for (Walked w : walked) {
      bySize.merge(w.draft().stops().size(), w, (a, b) -> Goal.BEST.compare(a, b) <= 0 ? a : b);
    }
    Set<Walked> out = new LinkedHashSet<>(bySize.values());
    walked.stream()
        .filter(Walked::meetsHouseRules)
        .min(Comparator.comparing(Walked::cost).thenComparing(Goal.BEST))
        .ifPresent(out::add);
    walked.stream()
        .min(Comparator.comparing(Walked::net).reversed().thenComparing(Goal.BEST))
        .ifPresent(out::add);
    return out;
  }
}
