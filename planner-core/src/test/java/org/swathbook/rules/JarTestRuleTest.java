package org.swathbook.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.swathbook.program.Carrier;
import org.swathbook.testing.MixCase;

/** What a jar test is advised for (Utah State University Extension 2012, Using a Jar Test). */
class JarTestRuleTest {

  private static MixCase soybean() {
    return MixCase.in("soybean", "glyphosate").day(27, "V3", 7);
  }

  private static List<Severity> jar(MixCase job) {
    return job.findings().stream()
        .filter(f -> f.rule().value().equals("jar-test"))
        .map(Finding::severity)
        .toList();
  }

  @Test
  void aDryProductWithAnOilConcentrateIsTried() {
    assertThat(jar(soybean().tank("cloransulam 0.0158 ai").adjuvant("crop-oil", "1 % v/v")))
        .containsExactly(Severity.NOTE);
    assertThat(
            jar(
                soybean()
                    .tank("cloransulam 0.0158 ai")
                    .adjuvant("nonionic-surfactant", "0.25 % v/v")))
        .isEmpty();
  }

  @Test
  void oneProductInLiquidFertilizerIsTriedToo() {
    assertThat(
            jar(
                soybean()
                    .day(-3, "", 0)
                    .liquid(Carrier.Liquid.LIQUID_FERTILIZER)
                    .tank("metribuzin 0.2 ai")))
        .containsExactly(Severity.WARN);
  }

  @Test
  void tenGallonsAreEnoughAndLessAreNot() {
    String two = "glyphosate 1.0 ae + imazethapyr 0.0625 ai";

    assertThat(jar(soybean().gallons(10).tank(two))).isEmpty();
    assertThat(jar(soybean().gallons(9.9).tank(two))).containsExactly(Severity.NOTE);
    assertThat(jar(soybean().gallons(9.9).tank("glyphosate 1.0 ae"))).isEmpty();
  }

  @Test
  void aPairOfWhichALabelsListIsNotKnownIsTried() {
    // 2,4-D choline has a list of partners that nobody copied for the date.
    assertThat(
            jar(
                MixCase.in("soybean", "2,4-D", "glyphosate")
                    .day(24, "V2", 5)
                    .tank("2,4-D choline 0.95 ae + glyphosate 1.0 ae")))
        .containsExactly(Severity.NOTE);
  }
}
