package org.swathbook.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.swathbook.check.BrokenHouseRule;
import org.swathbook.check.HouseRuleCheck;
import org.swathbook.plan.draft.Draft;
import org.swathbook.plan.draft.Walked;
import org.swathbook.plan.draft.WalkedWith;

/** What loosening one house rule buys, told of programs said to break this or that. */
class RelaxationsTest {
  private static final BrokenHouseRule NEVER_A_LAYER =
      broken(HouseRuleCheck.MIN_LAYER_OVERLAP, 7, Double.NaN);
  private static final BrokenHouseRule SHORT = broken(HouseRuleCheck.MIN_LAYER_OVERLAP, 7, -90);
  private static final BrokenHouseRule LATE = broken(HouseRuleCheck.WINDOW_CONFIDENCE, 80, 66.66);

  /** Nothing sprayed, and one pass: two programs of one field. */
  private static Walked nothing;

  private static Walked onePass;

  @BeforeAll
  static void walk() {
    PlanGround ground = new PlanGround(DemoCopy.inMemory(), "ND-4");
    nothing = ground.evaluator.full(Draft.EMPTY);
    onePass =
        ground.starts.all().stream()
            .filter(d -> d.stops().size() == 1)
            .findFirst()
            .map(ground.evaluator::full)
            .orElseThrow();
  }

  private static BrokenHouseRule broken(String rule, double limit, double actual) {
    return new BrokenHouseRule(rule, Optional.empty(), OptionalInt.of(0), limit, actual);
  }

  private static List<Relaxation> of(Walked walked, BrokenHouseRule... broken) {
    return Relaxations.of(List.of(WalkedWith.broken(walked, List.of(broken))));
  }

  /** A layer that never comes is worse than any hole, and has no number of days. */
  @Test
  void whereALayerNeverComesItIsNone() {
    for (List<Relaxation> found :
        List.of(of(onePass, NEVER_A_LAYER, SHORT), of(onePass, SHORT, NEVER_A_LAYER))) {
      assertThat(found)
          .containsExactly(
              new Relaxation(
                  HouseRuleCheck.MIN_LAYER_OVERLAP,
                  "7",
                  "none",
                  onePass.net(),
                  onePass.outcome().controlPct()));
    }
  }

  @Test
  void ofOneRuleTheFarthestFromItsLimitTells() {
    assertThat(of(onePass, broken(HouseRuleCheck.MIN_LAYER_OVERLAP, 7, 3), SHORT))
        .extracting(Relaxation::to)
        .containsExactly("-90");
    assertThat(of(onePass, LATE)).extracting(Relaxation::to).containsExactly("66.7");
  }

  /** To loosen one of two rules would mend neither program. */
  @Test
  void aProgramThatBreaksTwoRulesOrNoneTellsOfNone() {
    assertThat(of(onePass, SHORT, LATE)).isEmpty();
    assertThat(of(onePass)).isEmpty();
  }

  @Test
  void ofEachRuleTheBestProgramAndThoseThatBringMostFirst() {
    assertThat(onePass.net()).isGreaterThan(nothing.net());
    List<Relaxation> found =
        Relaxations.of(
            List.of(
                WalkedWith.broken(nothing, List.of(SHORT)),
                WalkedWith.broken(nothing, List.of(LATE)),
                WalkedWith.broken(onePass, List.of(LATE))));
    assertThat(found)
        .extracting(Relaxation::rule)
        .containsExactly(HouseRuleCheck.WINDOW_CONFIDENCE, HouseRuleCheck.MIN_LAYER_OVERLAP);
    assertThat(found)
        .extracting(Relaxation::netPerAcre)
        .containsExactly(onePass.net(), nothing.net());
  }
}
