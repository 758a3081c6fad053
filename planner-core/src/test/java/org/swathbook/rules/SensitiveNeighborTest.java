package org.swathbook.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.swathbook.testing.MixCase;
import org.swathbook.testing.Sky;

/** Which neighbor a finding is about: each is tested, and each is named as the book writes it. */
class SensitiveNeighborTest {
  private static final String VINEYARD = "vineyard NE 1500 ft";
  private static final String ORCHARD = "orchard E 400 ft";
  private static final String TOMATOES = "tomatoes W 300 ft";

  private static List<Finding> findings(Sky sky) {
    return MixCase.in("soybean", "dicamba", "glyphosate")
        .day(24, "V2", 5)
        .tank("dicamba 0.5 ae")
        .field(f -> f.neighbors(VINEYARD, ORCHARD, TOMATOES))
        .sky(sky)
        .findings()
        .stream()
        .filter(f -> f.rule().value().equals("sensitive-neighbor"))
        .toList();
  }

  @Test
  void namesEveryNeighborDownwindAndNoOther() {
    assertThat(findings(Sky.fair().from(240)))
        .extracting(f -> f.about().neighbor().orElse(""))
        .containsExactly(ORCHARD, VINEYARD);
  }

  @Test
  void namesEveryNeighborWhereTheDirectionIsNotKnown() {
    assertThat(findings(Sky.fair().directionUnknown()))
        .extracting(f -> f.about().neighbor().orElse(""))
        .containsExactly(ORCHARD, TOMATOES, VINEYARD);
  }

  @Test
  void namesTheActiveBesideIt() {
    assertThat(findings(Sky.fair().from(90)))
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.about().neighbor()).isEqualTo(Optional.of(TOMATOES));
              assertThat(f.about().ingredient().orElseThrow().value()).isEqualTo("dicamba");
            });
  }

  @Test
  void aRuleOnSomethingElseNamesNone() {
    assertThat(
            MixCase.in("soybean", "dicamba", "glyphosate")
                .day(24, "V2", 5)
                .tank("dicamba 0.5 ae")
                .field(f -> f.neighbors(VINEYARD))
                .sky(Sky.fair().wind(14))
                .findings())
        .filteredOn(f -> f.rule().value().equals("wind"))
        .isNotEmpty()
        .allMatch(f -> f.about().neighbor().isEmpty());
  }
}
