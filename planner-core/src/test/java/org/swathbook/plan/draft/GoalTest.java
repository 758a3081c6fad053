package org.swathbook.plan.draft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.swathbook.check.BrokenHouseRule;
import org.swathbook.check.HouseRuleCheck;
import org.swathbook.plan.DemoCopy;
import org.swathbook.plan.PlanGround;

/**
 * What goes before what, and in what a search is fined: 5000 dollars a wish, 400 a rule and 60 a
 * site, a week or ten points that are missed (ours, no source).
 */
class GoalTest {
  private static final BrokenHouseRule ONE_SITE = broken(HouseRuleCheck.MIN_SOIL_SITES, 2, 1);
  private static final BrokenHouseRule TWO_SITES = broken(HouseRuleCheck.MIN_SOIL_SITES, 2, 0);
  private static final BrokenHouseRule CONTROL = broken(HouseRuleCheck.SEASON_CONTROL, 95, 94);

  /** Nothing sprayed, and one pass that brings more. */
  private static Walked nothing;

  private static Walked onePass;

  @BeforeAll
  static void walk() {
    PlanGround ground = new PlanGround(DemoCopy.inMemory(), "ND-4");
    nothing = WalkedWith.broken(ground.evaluator.full(Draft.EMPTY), List.of());
    onePass =
        ground.starts.all().stream()
            .filter(d -> d.stops().size() == 1)
            .findFirst()
            .map(ground.evaluator::full)
            .map(w -> WalkedWith.broken(w, List.of()))
            .orElseThrow();
  }

  private static BrokenHouseRule broken(String rule, double limit, double actual) {
    return new BrokenHouseRule(rule, Optional.empty(), OptionalInt.of(0), limit, actual);
  }

  private static Walked with(Walked walked, BrokenHouseRule... broken) {
    return WalkedWith.broken(walked, List.of(broken));
  }

  /** Wishes, rules, whole steps that are missed, return: each goes before all that follow. */
  @Test
  void theBestComesFirst() {
    assertThat(onePass.net()).isGreaterThan(nothing.net());
    List<Walked> inOrder =
        List.of(
            onePass,
            nothing,
            // Less than a step is missed: the return decides.
            with(onePass, CONTROL),
            with(nothing, CONTROL),
            with(onePass, ONE_SITE),
            with(nothing, ONE_SITE),
            with(onePass, TWO_SITES),
            with(onePass, CONTROL, ONE_SITE),
            with(nothing, CONTROL, ONE_SITE),
            WalkedWith.lacking(onePass, 1),
            WalkedWith.lacking(nothing, 1),
            WalkedWith.lacking(onePass, 2));
    List<Walked> sorted = new ArrayList<>(inOrder);
    Collections.reverse(sorted);
    sorted.sort(Goal.BEST);
    for (int i = 0; i < inOrder.size(); i++) {
      assertThat(sorted.get(i)).as("place %s", i).isSameAs(inOrder.get(i));
    }
  }

  @Test
  void aProgramIsWorthItsReturnLessItsFines() {
    double net = onePass.net().dollars();
    assertThat(Goal.of(onePass)).isEqualTo(net);
    assertThat(Goal.of(with(onePass, ONE_SITE))).isCloseTo(net - 400 - 60, within(1e-6));
    assertThat(Goal.of(with(onePass, ONE_SITE, TWO_SITES)))
        .as("one rule on two passes")
        .isCloseTo(net - 400 - 3 * 60, within(1e-6));
    assertThat(Goal.of(WalkedWith.lacking(onePass, 2))).isCloseTo(net - 10_000, within(1e-6));
  }

  @Test
  void whatIsMissedForSureIsFinedAlike() {
    assertThat(Goal.fine(List.of())).isZero();
    assertThat(
            Goal.fine(
                List.of(
                    new Missed(HouseRuleCheck.MIN_SOIL_SITES, 1),
                    new Missed(HouseRuleCheck.MIN_SOIL_SITES, 2),
                    new Missed(HouseRuleCheck.SEASON_CONTROL, 0.5))))
        .isEqualTo(2 * 400 + 3.5 * 60);
  }

  @Test
  void aWalkedDraftSaysWhatItIs() {
    assertThat(onePass.meetsHouseRules()).isTrue();
    assertThat(WalkedWith.lacking(onePass, 1).meetsHouseRules()).isFalse();
    assertThat(with(onePass, CONTROL).meetsHouseRules()).isFalse();
    assertThat(onePass.hasPasses()).isTrue();
    assertThat(nothing.hasPasses()).isFalse();
    assertThat(onePass.made()).isZero();
    assertThat(onePass.toCome()).isEqualTo(onePass.outcome().passes());
    Walked twice = with(onePass, ONE_SITE, TWO_SITES, CONTROL);
    assertThat(twice.brokenNames())
        .containsExactly(HouseRuleCheck.MIN_SOIL_SITES, HouseRuleCheck.SEASON_CONTROL);
    assertThat(twice.brokenRules()).isEqualTo(2);
    assertThat(twice.deficit()).isCloseTo(3.1, within(1e-9));
    assertThat(twice).isEqualTo(onePass).hasSameHashCodeAs(onePass).isNotEqualTo(nothing);
    assertThat(twice.key()).isEqualTo(onePass.draft().key());
  }
}
