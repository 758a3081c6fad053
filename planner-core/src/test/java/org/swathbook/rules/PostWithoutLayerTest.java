package org.swathbook.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.swathbook.testing.MixCase;

/**
 * A pass over soybean that lays no layer while Palmer amaranth is still to come (overlapping
 * residuals: Norsworthy et al. 2012; the shares are the rule book's own).
 */
class PostWithoutLayerTest {

  private static MixCase soy() {
    return MixCase.in("soybean", "glyphosate", "glufosinate", "2,4-D");
  }

  private static List<Finding> noResidual(MixCase... passes) {
    return soy().weed("AMAPA", 0).judgedAsProgram(passes).findings().stream()
        .filter(f -> f.rule().value().equals("no-residual"))
        .toList();
  }

  @Test
  void aPostWithoutALayerIsToldOfTheCheapestThatALabelLists() {
    List<Finding> found =
        noResidual(
            soy().day(0, "", 0).tank("metribuzin 0.38 ai"),
            soy().day(26, "V3", 7).tank("glufosinate-ammonium 0.59 ai"));

    assertThat(found).hasSize(1);
    assertThat(found.get(0).severity()).isEqualTo(Severity.WARN);
    assertThat(found.get(0).about().pass()).hasValue(1);
    assertThat(found.get(0).remedy()).contains("a layer with this pass: ");
  }

  @Test
  void aPostWithALayerIsSilent() {
    assertThat(
            noResidual(
                soy().day(0, "", 0).tank("metribuzin 0.38 ai"),
                soy().day(26, "V3", 7).tank("glufosinate-ammonium 0.59 ai + S-metolachlor 1.2 ai")))
        .isEmpty();
  }

  @Test
  void aPostWhenTheRowsCloseIsSilent() {
    assertThat(
            noResidual(
                soy().day(0, "", 0).tank("metribuzin 0.38 ai"),
                soy().day(26, "V3", 7).tank("glufosinate-ammonium 0.59 ai + S-metolachlor 1.2 ai"),
                soy().day(70, "R1", 28).tank("glyphosate 1.0 ae")))
        .isEmpty();
  }
}
