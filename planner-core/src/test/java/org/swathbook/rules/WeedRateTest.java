package org.swathbook.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.swathbook.testing.MixCase;

/**
 * Least rates of a weed's own, on volunteer corn: the low rate of clethodim on small plants is from
 * memory; 0.094 lb on taller ones, and beside glyphosate and an auxin, is Harre, Young & Young
 * 2020, Weed Technology.
 */
class WeedRateTest {

  private static List<Finding> low(MixCase job) {
    return job.judge().judge(job.job()).judgement().findings().stream()
        .filter(
            f ->
                f.rule().value().equals("rate-below-use")
                    || f.rule().value().equals("below-full-rate"))
        .toList();
  }

  private static MixCase soybean(String weed, double inches, String tank) {
    return MixCase.in("soybean", "glyphosate").day(27, "V3", 7).weed(weed, inches).tank(tank);
  }

  @ParameterizedTest
  @CsvSource({
    "6, 0.0625, false",
    "6, 0.062, true",
    "6.1, 0.0625, true",
    "6.1, 0.25, false",
    "12, 0.031, true",
    "12, 0.09, true",
    "3, 0.0936, false"
  })
  void volunteerCornTakesLessWhileItIsSmall(double inches, double rate, boolean isShort) {
    assertThat(!low(soybean("ZEAMX", inches, "clethodim " + rate + " ai")).isEmpty())
        .isEqualTo(isShort);
  }

  @Test
  void theWeedThatAsksForMostDecides() {
    MixCase both = soybean("ZEAMX", 5, "clethodim 0.0625 ai").weed("SETFA", 4);

    assertThat(low(soybean("SETFA", 4, "clethodim 0.0625 ai"))).isNotEmpty();
    assertThat(low(both)).isNotEmpty();
  }

  @Test
  void aWeedThatItIsNotSprayedForAsksForNothing() {
    assertThat(low(soybean("ZEAMX", 5, "clethodim 0.0625 ai").weed("AMAPA", 8))).isEmpty();
  }

  @Test
  void aPartnerOfTheSameSiteThatMakesItUpLeavesANote() {
    String alone = "clethodim 0.05 ai";

    assertThat(low(soybean("AMAPA", 3, alone)))
        .extracting(Finding::severity)
        .containsExactly(Severity.WARN);
    assertThat(low(soybean("AMAPA", 3, alone + " + quizalofop-P-ethyl 0.044 ai")))
        .filteredOn(f -> f.about().ingredient().orElseThrow().value().equals("clethodim"))
        .singleElement()
        .satisfies(f -> assertThat(f.severity()).isEqualTo(Severity.NOTE))
        .satisfies(f -> assertThat(f.message()).contains("partner of site 1", "0.094 lb ai/acre"));
  }
}
