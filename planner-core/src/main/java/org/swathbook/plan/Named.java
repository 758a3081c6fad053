package org.swathbook.plan;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.swathbook.catalog.IngredientId;
import org.swathbook.measure.Quantity;
import org.swathbook.plan.draft.Delay;
import org.swathbook.plan.draft.Goal;
import org.swathbook.plan.draft.PlanSpace;
import org.swathbook.plan.draft.Stop;
import org.swathbook.plan.draft.Walked;

/**
 * Chooses, among all programs that were walked, the few that an adviser compares, each for what it
 * is best at.
 */
final class Named {
  private static final String WITHIN = " within the house rules";

  /** What the best program is called. */
  static final String BEST = "Highest net return" + WITHIN;

  /** What the cheapest program is called, where any meets the house rules. */
  static final String CHEAPEST = "Lowest cost" + WITHIN;

  /** What the program with the highest net return of all is called. */
  static final String ASIDE = "Highest net return, house rules aside";

  /** What the program with the fewest passes is called, where any meets the house rules. */
  static final String FEWEST = "Fewest passes" + WITHIN;

  /**
   * What the best program is called that holds with any one site gone, where the first does not.
   * One that meets the house rules does.
   */
  static final String SECURE = "Holds with any one site of action gone";

  private static final String LATE_START = "Highest net return when every pass comes a week late,";

  /** What a program is called that loses least by delay, where any meets the house rules. */
  static final String LATE = LATE_START + WITHIN;

  /** Whether a program is called after what it nets when it is late. */
  static boolean isOfDelay(String name) {
    return name.startsWith(LATE_START);
  }

  private Named() {}

  /**
   * Names with their programs, the best first; no program twice. At least two alternatives where
   * there are any.
   */
  static Map<String, Walked> choose(
      List<Walked> walked, PlanSpace space, double oneSiteGonePct, Delay delay) {
    Map<String, Walked> out = new LinkedHashMap<>();
    List<Walked> sorted = walked.stream().sorted(Goal.BEST).toList();
    if (sorted.isEmpty()) {
      return out;
    }
    Walked first = sorted.get(0);
    List<Walked> fit = sorted.stream().filter(w -> w.brokenRules() == first.brokenRules()).toList();
    boolean meets = first.meetsHouseRules();
    out.put(meets ? BEST : "Fewest house rules broken, then highest net", first);
    put(out, meets ? CHEAPEST : "Lowest cost with as few rules broken", cheapest(fit));
    put(out, ASIDE, best(sorted, Comparator.comparing(Walked::net).reversed()));
    put(
        out,
        SECURE,
        sorted.stream().filter(w -> holdsWithoutOneSite(w, oneSiteGonePct)).findFirst());
    put(
        out,
        meets ? FEWEST : "Fewest passes with as few rules broken",
        best(
            fit,
            Comparator.<Walked>comparingInt(w -> w.draft().stops().size())
                .thenComparing(Goal.BEST)));
    put(out, meets ? LATE : LATE_START + " with as few rules broken", delay.leastHurt(fit));
    if (out.size() < 4) {
      put(
          out,
          "Other actives after emergence",
          differing(sorted, first, space, s -> s.date() > space.grid().placeOf(3)));
    }
    if (out.size() < 4) {
      put(
          out,
          "Other actives in the soil at planting",
          differing(sorted, first, space, s -> s.date() <= space.grid().placeOf(3)));
    }
    return out;
  }

  private static void put(Map<String, Walked> out, String name, Optional<Walked> w) {
    if (w.isPresent() && out.values().stream().noneMatch(x -> x.draft().equals(w.get().draft()))) {
      out.put(name, w.get());
    }
  }

  private static Optional<Walked> cheapest(List<Walked> walked) {
    return best(walked, Comparator.comparing(Walked::cost).thenComparing(Goal.BEST));
  }

  private static Optional<Walked> best(List<Walked> walked, Comparator<Walked> order) {
    return walked.stream().min(order.thenComparing(Walked::key));
  }

  private static boolean holdsWithoutOneSite(Walked w, double pct) {
    return w.outcome().weeds().stream()
        .filter(x -> x.pressure().driver().isDriver())
        .allMatch(x -> !Quantity.exceeds(pct, x.controlPctWithoutWeakest()));
  }

  /**
   * The best program whose chosen passes share no site with those of the first, if there is one.
   */
  private static Optional<Walked> differing(
      List<Walked> sorted, Walked first, PlanSpace space, Predicate<Stop> which) {
    Set<IngredientId> used = actives(first, space, which);
    return sorted.stream()
        .filter(w -> w.brokenRules() <= first.brokenRules() + 1)
        .filter(
            w -> {
              Set<IngredientId> mine = actives(w, space, which);
              return !mine.isEmpty() && mine.stream().noneMatch(used::contains);
            })
        .findFirst();
  }

  private static Set<IngredientId> actives(Walked w, PlanSpace space, Predicate<Stop> which) {
    Set<IngredientId> out = new TreeSet<>();
    for (Stop s : w.draft().stops()) {
      if (which.test(s)) {
        s.options().forEach(o -> out.add(space.option(o).ingredient()));
      }
    }
    return out;
  }
}
