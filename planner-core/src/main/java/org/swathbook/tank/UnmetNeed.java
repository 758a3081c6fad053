package org.swathbook.tank;

import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.swathbook.catalog.AdjuvantKind;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.TankTerms.AdjuvantNeed;

/**
 * A need that nothing can meet in this tank: a partner refuses each kind that would do.
 *
 * @param of the active whose label asks
 * @param refusedBy names of the partners that refuse, in the order of the alphabet
 */
public record UnmetNeed(Ingredient of, AdjuvantNeed need, List<String> refusedBy) {

  public UnmetNeed {
    refusedBy = List.copyOf(refusedBy);
  }

  // Written out, as in every key that is hashed at a start: see RuleId.
  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof UnmetNeed o
        && of.equals(o.of)
        && need.equals(o.need)
        && refusedBy.equals(o.refusedBy);
  }

  @Override
  public int hashCode() {
    return 31 * of.hashCode() + need.hashCode();
  }

  /**
   * {@code crop-oil or methylated-seed-oil, 1 % v/v}; where each kind has a rate of its own, {@code
   * crop-oil 1 % v/v or nonionic-surfactant 0.25 % v/v}.
   */
  public static String words(AdjuvantNeed need) {
    if (need.isAtOneRate()) {
      String kinds =
          need.anyOf().stream().map(AdjuvantKind::spelling).collect(Collectors.joining(" or "));
      return kinds
          + need.anyOf().stream().findFirst().flatMap(need::rate).map(r -> ", " + r).orElse("");
    }
    return need.anyOf().stream()
        .map(k -> k.spelling() + need.rate(k).map(r -> " " + r).orElse(""))
        .collect(Collectors.joining(" or "));
  }
}
