package org.swathbook.tank;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.swathbook.catalog.Catalog;
import org.swathbook.program.Carrier;
import org.swathbook.testing.MixCase;
import org.swathbook.testing.OrderedByLabel;

/** What labels say of their own place; all of it invented. */
class LabelOrderTest {
  private static final String WATER = "half the water, agitator running";
  private static final String TOP = "top up with water";

  private static Catalog label(String product, String before, String after) {
    return OrderedByLabel.in(MixCase.CATALOG, product, before, after);
  }

  private static MixingOrder order(Catalog catalog) {
    MixCase tank =
        MixCase.in("soybean")
            .catalog(catalog)
            .product("acetochlor-3cs", "1.5 qt/acre")
            .product("glyphosate-4.5sl", "32 fl oz/acre")
            .product("s-metolachlor-7.62ec", "1 pt/acre")
            .adjuvant("ammonium-sulfate", "8.5 lb/100 gal");
    return MixingOrder.of(tank.job().mix(), Carrier.Liquid.WATER);
  }

  @Test
  void withoutAWordOfALabelTheGuidesStand() {
    MixingOrder order = order(MixCase.CATALOG);

    assertThat(order.steps())
        .containsExactly(
            WATER,
            "ammonium-sulfate",
            "acetochlor-3cs",
            "s-metolachlor-7.62ec",
            "glyphosate-4.5sl",
            TOP);
    assertThat(order.byLabel()).isEmpty();
    assertThat(order.againstGuides()).isEmpty();
    assertThat(order.circles()).isEmpty();
  }

  @Test
  void aLabelMovesItsOwnProductAndNothingElse() {
    MixingOrder order = order(label("acetochlor-3cs", "", "EC"));

    assertThat(order.steps())
        .containsExactly(
            WATER,
            "ammonium-sulfate",
            "s-metolachlor-7.62ec",
            "acetochlor-3cs",
            "glyphosate-4.5sl",
            TOP);
    assertThat(order.byLabel())
        .containsExactly(
            "the label of acetochlor-3cs puts s-metolachlor-7.62ec before acetochlor-3cs");
    assertThat(order.againstGuides()).isEqualTo(order.byLabel());
  }

  @Test
  void aLabelThatAgreesWithTheGuidesChangesNothing() {
    MixingOrder order = order(label("acetochlor-3cs", "EC glyphosate", "ammonium-sulfate"));

    assertThat(order.steps()).isEqualTo(order(MixCase.CATALOG).steps());
    assertThat(order.byLabel()).hasSize(3);
    assertThat(order.againstGuides()).isEmpty();
  }

  @Test
  void whatIsNotInTheTankIsNotSpokenOf() {
    assertThat(order(label("acetochlor-3cs", "WG crop-oil dicamba", "")).byLabel()).isEmpty();
  }

  @Test
  void aCircleIsToldAndTheOtherLabelsStand() {
    Catalog both =
        OrderedByLabel.in(
            OrderedByLabel.in(
                label("acetochlor-3cs", "s-metolachlor", ""),
                "s-metolachlor-7.62ec",
                "glyphosate",
                ""),
            "glyphosate-4.5sl",
            "acetochlor",
            "");

    MixingOrder order = order(both);

    assertThat(order.circles())
        .containsExactly(
            "the label of glyphosate-4.5sl puts glyphosate-4.5sl before acetochlor-3cs, and other"
                + " labels in the tank acetochlor-3cs before s-metolachlor-7.62ec before"
                + " glyphosate-4.5sl");
    assertThat(order.steps())
        .containsExactly(
            WATER,
            "ammonium-sulfate",
            "acetochlor-3cs",
            "s-metolachlor-7.62ec",
            "glyphosate-4.5sl",
            TOP);
  }
}
