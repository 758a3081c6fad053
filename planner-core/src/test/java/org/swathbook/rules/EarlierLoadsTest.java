package org.swathbook.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.swathbook.catalog.TankTerms.Rinse.CLEANER;
import static org.swathbook.catalog.TankTerms.Rinse.TRIPLE_RINSE;
import static org.swathbook.catalog.TankTerms.Rinse.WATER_RINSE;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.swathbook.catalog.IngredientId;
import org.swathbook.catalog.TankTerms.Rinse;
import org.swathbook.check.Judgement;
import org.swathbook.program.EarlierLoad;
import org.swathbook.testing.MixCase;

/**
 * Loads before the last one, with dicamba before soybean without the trait: its label asks for a
 * triple rinse, which takes out 99.996 % of it (Agronomy 2020 10:772).
 */
class EarlierLoadsTest {
  private static final String GLYPHOSATE = "glyphosate";

  private static MixCase soybean() {
    return MixCase.in("soybean", GLYPHOSATE).day(24, "V2", 5).tank("glyphosate 1.0 ae");
  }

  private static EarlierLoad dicamba(Rinse cleaned) {
    return new EarlierLoad(List.of(IngredientId.of("dicamba")), Optional.of(cleaned));
  }

  private static List<Finding> residue(MixCase job) {
    return job.findings().stream().filter(f -> f.rule().value().equals("tank-residue")).toList();
  }

  private static List<String> asked(MixCase job) {
    Judgement judged = job.judged().judgement();
    return judged.asks().stream()
        .filter(a -> a.rule().value().equals("tank-residue"))
        .map(Ask::what)
        .toList();
  }

  @Test
  void twoRinsesOneAfterAnotherAreNoTripleRinse() {
    assertThat(residue(soybean().lastLoad(GLYPHOSATE, WATER_RINSE).earlier(dicamba(WATER_RINSE))))
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.severity()).isEqualTo(Severity.BLOCK);
              assertThat(f.message()).startsWith("A load before the last one held dicamba");
            });
  }

  @Test
  void oneFullCleanOutSinceIsEnoughWheneverItWas() {
    assertThat(residue(soybean().lastLoad(GLYPHOSATE, WATER_RINSE).earlier(dicamba(TRIPLE_RINSE))))
        .isEmpty();
    assertThat(residue(soybean().lastLoad(GLYPHOSATE, TRIPLE_RINSE).earlier(dicamba(WATER_RINSE))))
        .isEmpty();
    assertThat(residue(soybean().lastLoad(GLYPHOSATE, CLEANER).earlier(dicamba(WATER_RINSE))))
        .isEmpty();
  }

  @Test
  void earlierLoadsAreAskedForOnlyWithoutAFullCleanOutSince() {
    assertThat(asked(soybean().lastLoad(GLYPHOSATE, WATER_RINSE)))
        .singleElement()
        .asString()
        .contains("before its last load");
    assertThat(asked(soybean().lastLoad(GLYPHOSATE, TRIPLE_RINSE))).isEmpty();
    assertThat(asked(soybean().lastLoad(GLYPHOSATE, WATER_RINSE).earlier())).isEmpty();
    assertThat(asked(soybean())).isEmpty();
  }
}
