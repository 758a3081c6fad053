package org.swathbook.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.swathbook.testing.MixCase;

/** What the starter knows of partners and oils in corn that trials or labels warn of. */
class TankMatesInCornTest {

  private static List<Finding> said(String rule, MixCase tank) {
    return tank.findings().stream().filter(f -> f.rule().value().equals(rule)).toList();
  }

  /** Schuster, Al-Khatib & Dille 2007, Weed Science 55:429-434. */
  @Test
  void mesotrioneTakesFromNicosulfuronOnFoxtail() {
    MixCase corn = MixCase.in("corn").day(20, "V4", 8);

    assertThat(
            said(
                "antagonism",
                corn.tank("nicosulfuron 0.031 ai + mesotrione 0.094 ai").weed("SETVI", 3)))
        .singleElement()
        .satisfies(f -> assertThat(f.message()).startsWith("Nicosulfuron loses control"))
        .satisfies(f -> assertThat(f.source()).contains("Schuster, Al-Khatib & Dille 2007"));
  }

  @Test
  void nicosulfuronAloneLosesNothing() {
    MixCase corn = MixCase.in("corn").day(20, "V4", 8);

    assertThat(said("antagonism", corn.tank("nicosulfuron 0.031 ai").weed("SETVI", 3))).isEmpty();
  }

  /** Labels of dicamba salts keep oils to corn under about five inches (from memory). */
  @Test
  void dicambaOverTallCornRefusesAnOil() {
    assertThat(
            said(
                "adjuvant-refused",
                MixCase.in("corn")
                    .day(30, "V6", 16)
                    .tank("dicamba 0.25 ae")
                    .adjuvant("crop-oil", "1 % v/v")))
        .extracting(Finding::severity)
        .containsExactly(Severity.BLOCK);
    assertThat(
            said(
                "adjuvant-refused",
                MixCase.in("corn")
                    .day(30, "V6", 16)
                    .tank("dicamba 0.25 ae")
                    .adjuvant("nonionic-surfactant", "0.25 % v/v")))
        .isEmpty();
  }
}
