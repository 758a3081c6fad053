package org.swathbook.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.swathbook.testing.MixCase;

/** What labels ask in words is asked of every tank; the conditions themselves are from memory. */
class LabelConditionTest {
  private static List<String> asked(MixCase tank) {
    return tank.judged().judgement().asks().stream()
        .filter(a -> a.rule().value().equals("label-condition"))
        .map(Ask::what)
        .toList();
  }

  @Test
  void flumioxazinKeepsApartFromSomePartnersNearPlanting() {
    MixCase tank = MixCase.in("soybean").day(1, "", 0).tank("flumioxazin 0.08 ai");

    assertThat(asked(tank))
        .singleElement()
        .asString()
        .contains("label of flumioxazin", "not mixed with metolachlor", "no-till");
    assertThat(tank.judged().judgement().verdict()).isNotEqualTo(Verdict.CLEAR);
  }

  @Test
  void dicambaBeforePlantingAsksForRainAndOverSeedForDepth() {
    assertThat(asked(MixCase.in("soybean").day(-30, "", 0).tank("dicamba 0.25 ae")))
        .singleElement()
        .asString()
        .contains("25 in of rain");
    assertThat(asked(MixCase.in("corn").day(2, "", 0).tank("dicamba 0.25 ae")))
        .singleElement()
        .asString()
        .contains("shallower than 1.5 in");
  }

  /** A remark for the reader is no question. */
  @Test
  void aRemarkAsksNothing() {
    assertThat(asked(MixCase.in("soybean").day(24, "V2", 5).tank("S-metolachlor 1.0 ai")))
        .isEmpty();
  }
}
