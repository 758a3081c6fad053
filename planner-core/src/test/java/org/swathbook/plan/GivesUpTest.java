package org.swathbook.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.swathbook.catalog.IngredientId;
import org.swathbook.catalog.WeedId;
import org.swathbook.check.BrokenHouseRule;
import org.swathbook.check.HouseRuleCheck;
import org.swathbook.check.Judgement;
import org.swathbook.check.ProgramJudge;
import org.swathbook.measure.Money;
import org.swathbook.measure.Numbers;
import org.swathbook.plan.choice.DoseOption;
import org.swathbook.plan.draft.Draft;
import org.swathbook.plan.draft.Walked;
import org.swathbook.plan.draft.WalkedWith;
import org.swathbook.program.Anchor;
import org.swathbook.program.Dose;
import org.swathbook.program.Mix;
import org.swathbook.program.Pass;
import org.swathbook.program.Program;
import org.swathbook.season.SeasonWalk;
import org.swathbook.season.outcome.SeasonOutcome;
import org.swathbook.season.outcome.WeedOutcome;

/** One pass and none: what each gives up against the other, in the order in which it is told. */
class GivesUpTest {
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

  private static BrokenHouseRule broken(String rule) {
    return new BrokenHouseRule(rule, Optional.empty(), OptionalInt.of(0), 2, 1);
  }

  private static List<String> weeds(Walked first, Walked other) {
    return other.outcome().weeds().stream()
        .filter(w -> w.pressure().driver().isDriver())
        .map(
            w ->
                w.pressure().weed().name()
                    + " "
                    + Numbers.fixed(w.controlPct(), 1)
                    + " instead of "
                    + Numbers.fixed(first.outcome().weed(w.pressure().weed().id()).controlPct(), 1)
                    + " %")
        .toList();
  }

  @Test
  void moneyGoesFirstAndThenTheDriverWeeds() {
    Money net = onePass.net().minus(nothing.net());
    assertThat(net.cents()).isPositive();
    assertThat(onePass.cost().cents()).isPositive();
    assertThat(weeds(nothing, onePass)).isNotEmpty();
    assertThat(onePass.outcome().weeds())
        .filteredOn(w -> w.pressure().driver().isDriver())
        .extracting(WeedOutcome::controlPct)
        .allMatch(c -> c >= 0.5);
    assertThat(GivesUp.against(nothing, onePass))
        .isEqualTo(
            "costs $"
                + onePass.cost()
                + " more; net $"
                + net
                + " higher; "
                + String.join("; ", weeds(nothing, onePass)));
    assertThat(GivesUp.against(onePass, nothing))
        .isEqualTo(
            "costs $"
                + onePass.cost()
                + " less; net $"
                + net
                + " lower; "
                + String.join("; ", weeds(onePass, nothing)));
  }

  @Test
  void whatIsTheSameIsNotTold() {
    assertThat(GivesUp.against(onePass, onePass)).isEqualTo("same net return");
  }

  @Test
  void houseRulesAreNamedThatTheFirstKeeps() {
    Walked first = WalkedWith.broken(onePass, List.of(broken(HouseRuleCheck.MIN_SOIL_SITES)));
    Walked other =
        WalkedWith.broken(
            onePass,
            List.of(
                broken(HouseRuleCheck.MIN_SOIL_SITES),
                broken(HouseRuleCheck.MIN_FOLIAR_SITES),
                broken(HouseRuleCheck.SEASON_CONTROL)));
    assertThat(GivesUp.against(first, other))
        .isEqualTo("same net return; breaks minFoliarSites and seasonControl");
    assertThat(GivesUp.against(other, first)).isEqualTo("same net return");
  }

  private static PlannedProgram planned(PlanGround ground, List<Pass> passes) {
    LocalDate today = LocalDate.of(2027, 3, 1);
    Program program = new Program("one", ground.traces.field().id(), passes);
    SeasonOutcome outcome = SeasonWalk.walk(ground.book, ground.traces, program);
    Judgement judgement = ProgramJudge.judge(ground.book, ground.traces, outcome, today);
    return new PlannedProgram("one", false, outcome, judgement, "");
  }

  /** Acetochlor takes giant foxtail too, which drives nothing on ND-1. */
  @Test
  void ofTheWeedsTheDriversAloneAreTold() {
    PlanGround ground = new PlanGround(DemoCopy.inMemory(), "ND-1");
    List<Dose> doses =
        ground.space.options().stream()
            .filter(o -> o.ingredient().equals(IngredientId.of("acetochlor")))
            .map(DoseOption::dose)
            .limit(1)
            .toList();
    PlannedProgram none = planned(ground, List.of());
    PlannedProgram one =
        planned(ground, List.of(new Pass(new Anchor.FromPlanting(0), Mix.of(doses))));
    assertThat(one.outcome().weed(WeedId.of("SETFA")).controlPct()).isGreaterThan(5);
    assertThat(GivesUp.against(none, one))
        .startsWith("costs $" + one.outcome().cost().orElseThrow() + " more; net $")
        .contains("Palmer amaranth ", " instead of 0.0 %")
        .doesNotContain("foxtail");
    assertThat(GivesUp.against(one, none))
        .startsWith("costs $" + one.outcome().cost().orElseThrow() + " less; net $");
  }
}
