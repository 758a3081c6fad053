package org.swathbook.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.swathbook.testing.MixCase;
import org.swathbook.testing.Sky;

/**
 * Limits of the day that the catalog does not state are asked where they matter, and only there.
 */
class CatalogSilenceTest {
  private static final String TOMATOES = "tomatoes E 900 ft";

  private static List<String> asked(MixCase job, String rule) {
    return job.judged().judgement().asks().stream()
        .filter(a -> a.rule().value().equals(rule))
        .map(Ask::what)
        .toList();
  }

  /** A contact active of whose buffer the catalog says nothing; wind from the west. */
  private static MixCase fomesafen(String... neighbors) {
    return MixCase.in("soybean")
        .day(24, "V2", 5)
        .tank("fomesafen 0.25 ai")
        .field(f -> f.neighbors(neighbors));
  }

  @Test
  void aBufferIsAskedForWhereTenderPlantsAreNearAndDownwind() {
    assertThat(asked(fomesafen(TOMATOES), "sensitive-neighbor"))
        .containsExactly("distance downwind that the label keeps of fomesafen");
    assertThat(asked(fomesafen(TOMATOES).sky(Sky.fair().directionUnknown()), "sensitive-neighbor"))
        .hasSize(1);
  }

  @Test
  void aBufferIsNotAskedForElsewhere() {
    String rule = "sensitive-neighbor";

    assertThat(asked(fomesafen(), rule)).isEmpty();
    assertThat(asked(fomesafen(TOMATOES).sky(Sky.fair().from(90)), rule)).isEmpty();
    assertThat(asked(fomesafen("tomatoes E 1321 ft"), rule)).isEmpty();
    assertThat(asked(fomesafen("tomatoes E 1320 ft"), rule)).hasSize(1);
    assertThat(asked(fomesafen("shelterbelt E 300 ft"), rule)).isEmpty();
    assertThat(
            asked(
                MixCase.in("soybean", "glyphosate")
                    .day(24, "V2", 5)
                    .tank("glyphosate 1.0 ae")
                    .field(f -> f.neighbors(TOMATOES)),
                rule))
        .isEmpty();
  }

  /** Clopyralid in corn: site 4, and no temperature, hours or rain in the catalog. */
  private static MixCase clopyralid(Sky sky) {
    return MixCase.in("corn").day(24, "V4", 9).tank("clopyralid 0.19 ae").sky(sky);
  }

  @Test
  void aHighestTemperatureIsAskedForOfSite4InHeat() {
    assertThat(asked(clopyralid(Sky.fair().high(81)), "temperature")).hasSize(1);
    assertThat(asked(clopyralid(Sky.fair().high(80)), "temperature")).isEmpty();
    assertThat(asked(fomesafen().sky(Sky.fair().high(91)), "temperature")).hasSize(1);
    assertThat(asked(fomesafen().sky(Sky.fair().high(90)), "temperature")).isEmpty();
  }

  @Test
  void rainThatRunsOffIsAskedForWithRainAhead() {
    assertThat(asked(clopyralid(Sky.fair().rain(30, 0.5)), "rain-too-soon")).hasSize(1);
    assertThat(asked(clopyralid(Sky.fair().rain(30, 0.49)), "rain-too-soon")).isEmpty();
    // Its label is known to keep no distance from water.
    assertThat(asked(fomesafen().sky(Sky.fair().rain(30, 1.0)), "rain-too-soon")).isEmpty();
  }

  @Test
  void hoursAreNotAskedForOfWhatIsSprayedAtNoon() {
    assertThat(asked(clopyralid(Sky.fair()), "time-of-day")).isEmpty();
  }
}
