package org.swathbook.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.swathbook.book.Field;
import org.swathbook.growth.TraceSet;
import org.swathbook.program.FieldId;
import org.swathbook.rules.Finding;
import org.swathbook.rules.Findings;
import org.swathbook.rules.Severity;
import org.swathbook.rules.TankOffers;
import org.swathbook.rules.Verdict;
import org.swathbook.season.SeasonWalk;
import org.swathbook.season.outcome.SeasonOutcome;

/** What the judges say of the demo book's own program and of its fields' past. */
class DemoJudgementTest {
  private static final LocalDate TODAY = LocalDate.of(2027, 3, 1);

  private static SeasonOutcome season(Field field) {
    return SeasonWalk.walk(
        DemoFields.BOOK, DemoFields.traces(field), DemoFields.program("nd-1-two-layers.yaml"));
  }

  @Test
  void nothingBlocksTheDemoProgramAndNothingIsClearForWantOfData() {
    Field field = DemoFields.field("ND-1");
    TraceSet traces = DemoFields.traces(field);

    Judgement j = ProgramJudge.judge(DemoFields.BOOK, traces, season(field), TODAY);

    assertThat(j.findings()).noneMatch(f -> f.severity() == Severity.BLOCK);
    assertThat(j.verdict()).isIn(Verdict.CAUTION, Verdict.UNVERIFIED);
    assertThat(j.asks()).isNotEmpty();
    assertThat(j.findings()).filteredOn(f -> f.severity() == Severity.ASK).hasSize(1);
    assertThat(j.findings()).isSortedAccordingTo(Findings.ORDER);
  }

  /** A broken house rule and the warning of the rule that speaks for it are the same test. */
  @Test
  void brokenHouseRulesAreThoseThatWarn() {
    Field field = DemoFields.field("ND-1");
    SeasonOutcome season = season(field);
    TraceSet traces = DemoFields.traces(field);
    Judgement j = ProgramJudge.judge(DemoFields.BOOK, traces, season, TODAY);

    assertThat(j.brokenHouseRules())
        .isEqualTo(
            HouseRuleCheck.broken(
                DemoFields.BOOK, new TankOffers(DemoFields.BOOK, traces), season));
    assertSame(j, "maxExposedEmergence", "layer-gap");
    assertSame(j, "minLayerOverlap", "layer-overlap");
    assertSame(j, "seasonControl", "weed-not-covered");
    assertSame(j, "oneSiteGone", "depends-on-one-site");
    assertSame(j, "windowConfidence", "window-confidence");
    assertThat(j.brokenNames()).isSubsetOf(HouseRuleCheck.NAMES);
  }

  private static void assertSame(Judgement j, String house, String rule) {
    boolean warned =
        j.findings().stream()
            .filter(f -> f.rule().value().equals(rule) && f.severity() == Severity.WARN)
            .anyMatch(DemoJudgementTest::concernsADriver);
    assertThat(j.brokenNames().contains(house)).as(house + " and " + rule).isEqualTo(warned);
  }

  private static boolean concernsADriver(Finding f) {
    return f.about().weed().isEmpty()
        || DemoFields.BOOK.weedsOf(new FieldId("ND-1")).stream()
            .filter(w -> w.driver().isDriver())
            .anyMatch(w -> w.weed().id().equals(f.about().weed().get()));
  }

  /** Nicosulfuron of June 2026 at pH 8.0, 18 months before sorghum, is the demo's planted trap. */
  @Test
  void onlyTheTerracesMayNotGrowTheirCrop() {
    List<String> refused =
        DemoFields.BOOK.fields().stream()
            .filter(f -> FieldRefusal.of(DemoFields.BOOK, f).isRefused())
            .map(f -> f.id().value())
            .toList();

    assertThat(refused).containsExactly("QH-4");
    assertThat(FieldRefusal.of(DemoFields.BOOK, DemoFields.field("QH-4")).findings())
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.rule().value()).isEqualTo("next-crop-interval");
              assertThat(f.message()).startsWith("Nicosulfuron of 11 Jun 2026 needs 18 months");
            });
  }
}
