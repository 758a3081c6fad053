package org.swathbook.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.swathbook.catalog.WeedId;
import org.swathbook.rules.Finding;
import org.swathbook.rules.Severity;
import org.swathbook.testing.MixCase;
import org.swathbook.testing.Sky;

/**
 * A tank that is offered for another is no lesser one: common practice, no source; the wind limits
 * of dicamba (10 mph here) and of glufosinate are those of the starter catalog.
 */
class MixMendingTest {
  private static final double GALE_MPH = 18;

  private static MixCase palmer(double inches) {
    return MixCase.in("soybean", "dicamba", "glyphosate", "glufosinate")
        .day(24, "V3", 6)
        .weed("AMAPA", inches, 9);
  }

  private static Optional<MendedMix> mended(MixCase c) {
    MixJudge judge = c.judge();
    return MixMending.of(judge, judge.judge(c.job()));
  }

  private static MixCase windy(double inches) {
    return palmer(inches)
        .tank("dicamba 0.5 ae + glufosinate-ammonium 0.585 ai")
        .sky(Sky.fair().wind(GALE_MPH));
  }

  @Test
  void windIsWaitedForAndNothingIsLeftOutOnItsAccount() {
    MixCase c = windy(3);
    Judgement judged = c.judge().judge(c.job()).judgement();
    assertThat(judged.findings()).filteredOn(f -> f.severity() == Severity.BLOCK).isNotEmpty();
    assertThat(DayBlocks.of(judged)).extracting(f -> f.rule().value()).contains("wind");
    mended(c)
        .ifPresent(
            m ->
                assertThat(m.mix().job().mix().doses())
                    .extracting(d -> d.product().id())
                    .containsAll(
                        c.job().mix().doses().stream().map(d -> d.product().id()).toList()));
  }

  @Test
  void onACalmDayNothingIsWaitedFor() {
    MixCase c = palmer(3).tank("dicamba 0.5 ae + glufosinate-ammonium 0.585 ai");
    assertThat(DayBlocks.of(c.judge().judge(c.job()).judgement())).isEmpty();
  }

  /** Water of any hardness is the same tomorrow. */
  @Test
  void waterIsNoThingOfTheDay() {
    MixCase c = palmer(3).tank("glyphosate 1.13 ae").hardness(900);
    assertThat(c.judge().judge(c.job()).judgement().findings())
        .filteredOn(f -> f.rule().value().equals("water-quality"))
        .isNotEmpty()
        .noneMatch(DayBlocks::isOfTheDay);
  }

  /** Dicamba blocks without its trait, and glyphosate does nothing to these plants in its place. */
  @Test
  void whatIsOfferedHasAsManyEffectiveSitesOnTheDriver() {
    MixCase c =
        MixCase.in("soybean", "glyphosate", "glufosinate")
            .day(24, "V3", 6)
            .weed("AMAPA", 3, 9)
            .tank("dicamba 0.5 ae + glyphosate 1.13 ae");
    JudgedMix broken = c.judge().judge(c.job());
    assertThat(sites(broken)).containsEntry(new WeedId("AMAPA"), 1);
    Optional<MendedMix> m = mended(c);
    assertThat(m).isPresent();
    assertThat(m.get().changes()).anyMatch(w -> w.startsWith("leave dicamba"));
    assertThat(sites(m.get().mix()).get(new WeedId("AMAPA"))).isNotNull().isPositive();
  }

  private static Map<WeedId, Integer> sites(JudgedMix judged) {
    return DriverSites.of(judged.facts()).counts();
  }

  /** Palmer amaranth of 18 in that resists glyphosate: nothing on the shelf works on it. */
  @Test
  void whereNothingWorksNothingIsOffered() {
    MixCase c = palmer(18).tank("glyphosate 1.13 ae");
    Judgement judged = c.judge().judge(c.job()).judgement();
    assertThat(judged.findings()).extracting(Finding::severity).contains(Severity.WARN);
    assertThat(mended(c)).isEmpty();
  }

  @Test
  void sitesAreCountedWeedForWeed() {
    WeedId a = new WeedId("AMAPA");
    WeedId k = new WeedId("KCHSC");
    DriverSites had = new DriverSites(Map.of(a, 2, k, 0), true);
    assertThat(had.lackedBy(new DriverSites(Map.of(a, 2, k, 0), true))).isZero();
    assertThat(had.lackedBy(new DriverSites(Map.of(a, 1, k, 2), true))).isEqualTo(1);
    DriverSites none = new DriverSites(Map.of(a, 0, k, 0), true);
    assertThat(none.lackedBy(none)).isEqualTo(1);
    assertThat(none.lackedBy(had)).isZero();
    assertThat(new DriverSites(Map.of(a, 0), false).lackedBy(none)).as("for the soil").isZero();
  }
}
