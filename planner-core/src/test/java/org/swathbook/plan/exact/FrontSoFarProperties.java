package org.swathbook.plan.exact;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.statistics.Statistics;
import org.swathbook.plan.draft.Walked;

/**
 * A program of the front is not ruled out by the others, by whatever parts of a cent it differs.
 */
class FrontSoFarProperties {
  private static final double HALF_A_CENT = 0.005;

  @Property(tries = 40)
  void whatBelongsMayBelong(@ForAll long seed) {
    DrawnCandidates.of(seed).ifPresent(FrontSoFarProperties::compare);
  }

  private static void compare(DrawnCandidates drawn) {
    List<Walked> fit = drawn.programs().walked().stream().filter(w -> w.lacking() == 0).toList();
    Statistics.label("some program has what is asked")
        .collect(!fit.isEmpty())
        .coverage(c -> c.check(true).count(n -> n > 0));
    for (Walked member : Front.of(fit)) {
      FrontSoFar others = new FrontSoFar();
      fit.stream().filter(w -> !w.equals(member)).forEach(others::add);
      long cost = member.cost().cents();
      long loss = member.outcome().loss().cents();
      // What they are before they are rounded, as far from it as can be.
      double[] together =
          Arrays.stream(FrontSoFar.PRICES)
              .map(p -> (loss + p * cost) / 100 + (1 + p) * HALF_A_CENT)
              .toArray();
      assertThat(others.leastLevel(cost, loss, together))
          .isLessThanOrEqualTo(Math.max(0, Front.levelOf(Front.weakest(member))));
      Statistics.label("another is alike in cost and loss")
          .collect(
              fit.stream()
                  .anyMatch(
                      w ->
                          !w.equals(member)
                              && w.cost().cents() == cost
                              && w.outcome().loss().cents() == loss));
    }
  }
}
