package org.swathbook.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.swathbook.testing.MixCase;
import org.swathbook.testing.Restated;

/**
 * Which partner is named where weeds have outgrown several: each for a driver weed, the one that
 * goes furthest for another. The starter catalog has 6 in of grass for clethodim, 12 in for
 * glyphosate.
 */
class WeedTooTallTest {
  private static final String BOTH = "glyphosate 1.0 ae + clethodim 0.125 ai";

  private static MixCase soy(String tank) {
    return MixCase.in("soybean", "glyphosate").day(24, "V2", 5).tank(tank);
  }

  private static List<String> named(MixCase job) {
    return job.findings().stream()
        .filter(f -> f.rule().value().equals("weed-too-tall"))
        .map(f -> f.about().ingredient().orElseThrow().value())
        .toList();
  }

  @Test
  void ofAWeedThatIsNoDriverThePartnerThatGoesFurthest() {
    assertThat(named(soy(BOTH).seen("SETFA", 30))).containsExactly("glyphosate");
    assertThat(named(soy("clethodim 0.125 ai").seen("SETFA", 30))).containsExactly("clethodim");
  }

  @Test
  void noneWhereOneOfThemStillServes() {
    assertThat(named(soy(BOTH).seen("SETFA", 10))).isEmpty();
    assertThat(named(soy("clethodim 0.125 ai").seen("SETFA", 10))).containsExactly("clethodim");
    MixCase unlimited =
        MixCase.in("soybean", "glyphosate")
            .catalog(Restated.none(MixCase.CATALOG, "clethodim", "use.weedHeights"))
            .day(24, "V2", 5)
            .tank(BOTH)
            .seen("SETFA", 30);
    assertThat(named(unlimited)).isEmpty();
  }

  @Test
  void ofADriverWeedEachOfThem() {
    assertThat(named(soy(BOTH).weed("SETFA", 30)))
        .containsExactlyInAnyOrder("clethodim", "glyphosate");
  }
}
