package org.swathbook.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.swathbook.book.Neighbor;
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

  private static List<Severity> burndown(String tank, String neighbor) {
    return MixCase.in("soybean")
        .day(-30, "", 0)
        .tank(tank)
        .field(f -> f.neighbors(neighbor))
        .sky(Sky.fair().from(270))
        .findings()
        .stream()
        .filter(f -> f.rule().value().equals("sensitive-neighbor"))
        .map(Finding::severity)
        .toList();
  }

  /**
   * Labels of 2,4-D esters warn of grapes, tomatoes and cotton (from memory): the form that leaves
   * as vapor is held to no less than the choline, though its label states no distance.
   */
  @Test
  void anEsterIsRefusedTowardTenderPlantsAsTheCholineIs() {
    assertThat(burndown("2,4-D ester 0.475 ae", "market tomatoes E 1200 ft"))
        .containsExactly(Severity.BLOCK);
    assertThat(burndown("2,4-D choline 0.475 ae", "market tomatoes E 1200 ft"))
        .containsExactly(Severity.BLOCK);
    assertThat(burndown("2,4-D ester 0.475 ae", "market tomatoes E 6000 ft")).isEmpty();
    assertThat(burndown("2,4-D ester 0.475 ae", "market tomatoes W 1200 ft")).isEmpty();
  }

  /** A plan has no wind yet: each pass says which winds it has to wait out, and for whom. */
  @Test
  void aPlanNamesTheWindsThatBlowTowardANeighbor() {
    MixCase tank =
        MixCase.in("soybean", "dicamba", "glyphosate")
            .day(24, "V2", 5)
            .tank("dicamba 0.5 ae + glyphosate 1.0 ae")
            .field(f -> f.neighbors(VINEYARD, "shelterbelt N 1400 ft"));
    List<Finding> said =
        tank.judgedAsProgram(tank).findings().stream()
            .filter(f -> f.rule().value().equals("sensitive-neighbor"))
            .toList();

    assertThat(said)
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.severity()).isEqualTo(Severity.NOTE);
              assertThat(f.about().neighbor()).isEqualTo(Optional.of(VINEYARD));
              assertThat(f.message())
                  .isEqualTo(
                      "Not with wind from S to W, which blows toward the neighbor 'vineyard', 1500"
                          + " ft to the NE: dicamba must not get there.");
            });
  }

  @Test
  void theWindsTowardANeighborAreThoseThatBlowTowardIt() {
    for (String point : List.of("N", "NE", "E", "SSW", "NNW")) {
      Neighbor n = Neighbor.parse("garden " + point + " 100 ft");
      String[] ends = n.windsToward().split(" to ");
      double from = Neighbor.degrees(ends[0]).orElseThrow();
      double to = Neighbor.degrees(ends[1]).orElseThrow();

      assertThat(n.bearing()).isEqualTo(point);
      assertThat(n.isDownwind(from)).isTrue();
      assertThat(n.isDownwind(to)).isTrue();
      assertThat(n.isDownwind((from + 45) % 360)).isTrue();
      assertThat(n.isDownwind((from + 337.5) % 360)).isFalse();
      assertThat(n.isDownwind((to + 22.5) % 360)).isFalse();
    }
  }

  private static List<Finding> clomazone(String neighbor, double from) {
    return MixCase.in("soybean")
        .day(-1, "", 0)
        .tank("clomazone 0.75 ai")
        .field(f -> f.neighbors(neighbor))
        .sky(Sky.fair().from(from))
        .findings()
        .stream()
        .filter(f -> f.rule().value().equals("sensitive-neighbor"))
        .toList();
  }

  /** 1200 ft from orchards, gardens and landscapes; PNW Weed Management Handbook has 1000. */
  @Test
  void clomazoneGoesByTheDistanceOfItsOwnLabel() {
    assertThat(clomazone("orchard E 1199 ft", 270))
        .extracting(Finding::severity)
        .containsExactly(Severity.BLOCK);
    assertThat(clomazone("orchard E 1200 ft", 270)).isEmpty();
  }

  /** PNW Weed Management Handbook: 300 ft from crops (edamame); 1200 ft from gardens. */
  @Test
  void fieldCropsMayLieNearerToClomazoneThanGardens() {
    assertThat(clomazone("corn E 299 ft", 270))
        .singleElement()
        .satisfies(f -> assertThat(f.severity()).isEqualTo(Severity.BLOCK))
        .satisfies(
            f ->
                assertThat(f.message())
                    .endsWith(
                        "Its label keeps 300 ft from field crops and 1200 ft from orchards, gardens,"
                            + " homes and all else; this neighbor counts as a field crop."));
    assertThat(clomazone("corn E 300 ft", 270)).isEmpty();
    assertThat(clomazone("corn E 299 ft", 90))
        .extracting(Finding::severity)
        .containsExactly(Severity.WARN);
    assertThat(clomazone("corn E 300 ft", 90)).isEmpty();
    assertThat(clomazone("garden with sweet corn E 300 ft", 270))
        .extracting(Finding::severity)
        .containsExactly(Severity.BLOCK);
    assertThat(clomazone("organic soybean E 1199 ft", 270))
        .extracting(Finding::severity)
        .containsExactly(Severity.BLOCK);
  }

  @Test
  void vaporOfClomazoneTurnsWithTheWindOfLaterDays() {
    assertThat(clomazone("orchard E 400 ft", 90))
        .extracting(Finding::severity)
        .containsExactly(Severity.WARN);
    assertThat(clomazone("shelterbelt E 400 ft", 90)).isEmpty();
  }

  /** 80 acres are a square of 1866.8 ft; 600 ft along a side are 25.7 acres. */
  @Test
  void theRemedySaysWhatAStripCosts() {
    assertThat(clomazone("orchard E 400 ft", 270))
        .singleElement()
        .satisfies(
            f ->
                assertThat(f.remedy())
                    .contains("a strip of 800 ft on that side left untreated, about 34.3 acres"));
  }
}
