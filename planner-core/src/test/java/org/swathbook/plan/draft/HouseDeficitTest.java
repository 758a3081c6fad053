package org.swathbook.plan.draft;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.swathbook.catalog.WeedId;
import org.swathbook.check.BrokenHouseRule;
import org.swathbook.check.HouseRuleCheck;

/** One site, a week of overlap and ten points of anything else count the same: ours, no source. */
class HouseDeficitTest {

  private static BrokenHouseRule broken(String rule, String weed, double limit, double actual) {
    return new BrokenHouseRule(
        rule, Optional.of(WeedId.of(weed)), OptionalInt.empty(), limit, actual);
  }

  @ParameterizedTest
  @CsvSource({
    "minFoliarSites, 2, 0, 2",
    "minSoilSites, 2, 1, 1",
    "minLayerOverlap, 7, 0, 1",
    "minLayerOverlap, 7, -7, 2",
    // A layer that never comes misses all that is asked.
    "minLayerOverlap, 14, NaN, 2",
    // Too much is as far away as too little.
    "maxExposedEmergence, 5, 20, 1.5",
    "seasonControl, 95, 75, 2",
    "oneSiteGone, 90, 85, 0.5",
    "windowConfidence, 80, 50, 3"
  })
  void byHowFar(String rule, double limit, double actual, double deficit) {
    assertThat(HouseDeficit.of(List.of(broken(rule, "AMAPA", limit, actual)))).isEqualTo(deficit);
  }

  @Test
  void whatIsMissedAddsUp() {
    assertThat(HouseDeficit.of(List.of())).isZero();
    assertThat(
            HouseDeficit.of(
                List.of(
                    broken(HouseRuleCheck.MIN_SOIL_SITES, "AMAPA", 2, 1),
                    broken(HouseRuleCheck.SEASON_CONTROL, "AMAPA", 95, 90))))
        .isEqualTo(1.5);
  }

  /** Broken for another weed is broken anew; on another pass it is the same. */
  @Test
  void whatIsBrokenAnewIsNamedOnce() {
    Set<Broken> before = Broken.of(List.of(broken(HouseRuleCheck.SEASON_CONTROL, "AMAPA", 95, 80)));
    List<BrokenHouseRule> now = new ArrayList<>();
    now.add(broken(HouseRuleCheck.SEASON_CONTROL, "AMAPA", 95, 70));
    assertThat(Broken.without(Broken.of(now), before)).isEmpty();
    now.add(broken(HouseRuleCheck.SEASON_CONTROL, "AMBTR", 95, 70));
    now.add(broken(HouseRuleCheck.SEASON_CONTROL, "SETFA", 95, 70));
    now.add(broken(HouseRuleCheck.ONE_SITE_GONE, "AMAPA", 90, 70));
    assertThat(Broken.without(Broken.of(now), before))
        .containsExactly(HouseRuleCheck.SEASON_CONTROL, HouseRuleCheck.ONE_SITE_GONE);
  }
}
