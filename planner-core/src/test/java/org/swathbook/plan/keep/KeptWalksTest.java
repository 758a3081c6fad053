package org.swathbook.plan.keep;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.swathbook.book.Book;
import org.swathbook.check.HouseRuleCheck;
import org.swathbook.growth.TraceBuilder;
import org.swathbook.growth.TraceSet;
import org.swathbook.plan.DemoCopy;
import org.swathbook.plan.choice.OptionMaker;
import org.swathbook.plan.compare.AgainstFirst;
import org.swathbook.plan.draft.HouseDeficit;
import org.swathbook.program.Anchor;
import org.swathbook.program.Mix;
import org.swathbook.program.Pass;
import org.swathbook.program.Program;
import org.swathbook.rules.TankOffers;
import org.swathbook.season.Kernel;
import org.swathbook.season.SeasonWalk;
import org.swathbook.season.outcome.SeasonOutcome;

/** Soybean with Palmer amaranth: one pass of glufosinate, held against none and against two. */
class KeptWalksTest {
  private static final LocalDate WINTER = LocalDate.of(2027, 3, 1);
  private static final Book BOOK = DemoCopy.inMemory();
  private static final TraceSet TRACES =
      TraceBuilder.build(BOOK, BOOK.findField("ND-1").orElseThrow(), WINTER);
  private static final Kernel KERNEL = Kernel.of(BOOK, TRACES);
  private static final Mix GLUFOSINATE =
      Mix.of(
          List.of(
              OptionMaker.make(BOOK, TRACES.field()).options().stream()
                  .filter(o -> o.ingredient().value().equals("glufosinate-ammonium"))
                  .findFirst()
                  .orElseThrow()
                  .dose()));

  private static Program sprayedOn(String... dates) {
    return new Program(
        "kept",
        TRACES.field().id(),
        List.of(dates).stream()
            .map(d -> new Pass(new Anchor.OnDate(LocalDate.parse(d)), GLUFOSINATE))
            .toList());
  }

  @Test
  void aWalkIsThatOfTheSeasonWithItsHouseRules() {
    KeptWalks.Walk walk = new KeptWalks(BOOK, KERNEL, WINTER).of(sprayedOn("2027-06-03"));
    SeasonOutcome season = SeasonWalk.walk(BOOK, KERNEL, sprayedOn("2027-06-03"));
    var broken = HouseRuleCheck.broken(BOOK, new TankOffers(BOOK, TRACES), season);
    assertThat(walk.outcome()).isEqualTo(season);
    assertThat(walk.deficit()).isEqualTo(HouseDeficit.of(broken)).isPositive();
    assertThat(walk.broken()).hasSize(broken.size());
    assertThat(walk.meetsHouseRules()).isFalse();
    assertThat(walk.net()).isEqualTo(season.net().orElseThrow());
    assertThat(walk.isLegal()).isTrue();
  }

  /** The rule on sites of the pass is broken by the pass alone; all else by both. */
  @Test
  void newlyBrokenIsWhatTheWrittenOneDidNotBreak() {
    KeptWalks walks = new KeptWalks(BOOK, KERNEL, WINTER);
    KeptWalks.Walk none = walks.first(sprayedOn());
    assertThat(none.newlyBroken()).isZero();
    KeptWalks.Walk one = walks.of(sprayedOn("2027-06-03"));
    assertThat(one.newlyBroken()).isEqualTo(1);
    assertThat(one.told("one", List.of(), none).newlyBroken())
        .containsExactly(HouseRuleCheck.MIN_FOLIAR_SITES);
    assertThat(one.told("one", List.of(), none).against()).isEqualTo(AgainstFirst.NOTHING);
    KeptWalks other = new KeptWalks(BOOK, KERNEL, WINTER);
    other.first(sprayedOn("2027-06-03"));
    assertThat(other.of(sprayedOn()).newlyBroken()).isZero();
  }

  /** Glufosinate again after three days, where its label asks for fourteen. */
  @Test
  void whatARuleBlocksIsNotLegal() {
    assertThat(
            new KeptWalks(BOOK, KERNEL, WINTER).of(sprayedOn("2027-06-03", "2027-06-06")).isLegal())
        .isFalse();
  }
}
