package org.swathbook.plan.exact;

import java.util.Comparator;
import java.util.Set;
import java.util.stream.Collectors;
import org.swathbook.check.HouseRuleCheck;
import org.swathbook.plan.draft.Delay;
import org.swathbook.plan.draft.Goal;
import org.swathbook.plan.draft.Walked;

/**
 * Which program the exact search looks for.
 *
 * @param mayBreak house rules that it may break; it breaks no other
 * @param worth what programs are compared by
 * @param lightestFirst whether fewer rules broken, then broken by fewer whole steps, go before that
 */
public record Aim(Set<String> mayBreak, Worth worth, boolean lightestFirst) {

  /** What a program is worth, in money. */
  public enum Worth {
    NET,
    /** The less it costs the better. */
    COST,
    /** Its net return when every pass still to come is late. */
    NET_WHEN_LATE
  }

  /** Highest net return within the house rules. */
  public static final Aim BEST = new Aim(Set.of(), Worth.NET, true);

  /** Lowest cost within the house rules. */
  public static final Aim CHEAPEST = new Aim(Set.of(), Worth.COST, true);

  /** Highest net return within the house rules when every pass comes late. */
  public static final Aim LEAST_HURT_BY_DELAY = new Aim(Set.of(), Worth.NET_WHEN_LATE, true);

  /** Highest net return, whatever house rule it breaks. */
  public static final Aim HOUSE_RULES_ASIDE =
      new Aim(Set.copyOf(HouseRuleCheck.NAMES), Worth.NET, false);

  /** Fewest house rules broken, by the fewest steps, then the highest net return. */
  public static final Aim LEAST_BAD = new Aim(Set.copyOf(HouseRuleCheck.NAMES), Worth.NET, true);

  /** The same of those that hold with any one site gone. */
  public static final Aim SECURE =
      new Aim(
          HouseRuleCheck.NAMES.stream()
              .filter(r -> !r.equals(HouseRuleCheck.ONE_SITE_GONE))
              .collect(Collectors.toSet()),
          Worth.NET,
          true);

  public Aim {
    mayBreak = Set.copyOf(mayBreak);
  }

  /** Broken by the fewest steps, then the highest net return, when this one rule is loosened. */
  public static Aim loosening(String rule) {
    return new Aim(Set.of(rule), Worth.NET, true);
  }

  /** The best first, with a fixed order among equals. */
  public Comparator<Walked> order(Delay delay) {
    return switch (worth) {
      case NET ->
          lightestFirst
              ? Goal.BEST
              : Comparator.comparing(Walked::net).reversed().thenComparing(Walked::key);
      case COST -> Comparator.comparing(Walked::cost).thenComparing(Goal.BEST);
      case NET_WHEN_LATE -> Comparator.comparing(delay::net).reversed().thenComparing(Walked::key);
    };
  }

  /** Whether a program may be looked for at all. */
  public boolean allows(Walked w) {
    return w.lacking() == 0 && mayBreak.containsAll(w.brokenNames());
  }
}
