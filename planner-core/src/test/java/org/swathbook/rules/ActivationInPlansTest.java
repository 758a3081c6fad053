package org.swathbook.rules;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.swathbook.testing.MixCase;

/** What a plan says of the rain that starts a layer. */
class ActivationInPlansTest {

  @Test
  void aPlanTellsInHowManyYearsTheLayerStarts() {
    MixCase soy = MixCase.in("soybean", "glyphosate").weed("AMAPA", 0);

    assertThat(
            soy.judgedAsProgram(
                    MixCase.in("soybean", "glyphosate")
                        .day(0, "", 0)
                        .tank("metribuzin 0.5 ai + S-metolachlor 1.6 ai + flumioxazin 0.08 ai"))
                .findings())
        .filteredOn(f -> f.rule().value().equals("no-activating-rain"))
        .singleElement()
        .satisfies(
            f ->
                assertThat(f.message())
                    .matches("The layer of this pass starts within .* weather years\\."));
  }
}
