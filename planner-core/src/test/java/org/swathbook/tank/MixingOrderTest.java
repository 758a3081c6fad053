package org.swathbook.tank;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.swathbook.program.Carrier;
import org.swathbook.testing.MixCase;

/** The order against the guides that it rests on, named beside each check. */
class MixingOrderTest {
  private static final String WATER = "half the water, agitator running";
  private static final String WAIT = "wait until all that is dry is uniform, some minutes";

  private static MixCase tank() {
    return MixCase.in("soybean");
  }

  private static MixingOrder order(MixCase tank) {
    return MixingOrder.of(tank.job().mix(), tank.job().carrier().liquid());
  }

  /** Conditioner, dry, wait, flowables, surfactant last: all five guides agree. */
  @Test
  void whatAllGuidesAgreeOnIsTheirOrder() {
    MixingOrder order =
        order(
            tank()
                .adjuvant("nonionic-surfactant", "0.25 % v/v")
                .product("mesotrione-4sc", "3 fl oz/acre")
                .product("metribuzin-75wg", "5 oz weight/acre")
                .adjuvant("ammonium-sulfate", "8.5 lb/100 gal"));

    assertThat(order.steps())
        .containsExactly(
            WATER,
            "ammonium-sulfate",
            "metribuzin-75wg",
            WAIT,
            "mesotrione-4sc",
            "nonionic-surfactant",
            "top up with water");
  }

  /** Missouri DOT alone has suspensions before granules. */
  @Test
  void aGuideThatHasTwoThingsOfTheTankOtherwiseIsNamed() {
    assertThat(
            order(
                    tank()
                        .product("metribuzin-75wg", "5 oz weight/acre")
                        .product("mesotrione-4sc", "3 fl oz/acre"))
                .disagreements())
        .containsExactly("Missouri DOT puts suspensions before dispersible granules");
  }

  /** North Dakota, Utah State and Missouri DOT against Oklahoma State. */
  @Test
  void emulsionsGoBeforeSolutionsAsThreeOfFourGuidesHaveIt() {
    MixingOrder order =
        order(
            tank()
                .product("glyphosate-4.5sl", "32 fl oz/acre")
                .product("s-metolachlor-7.62ec", "1.3 pt/acre"));

    assertThat(order.steps())
        .containsExactly(WATER, "s-metolachlor-7.62ec", "glyphosate-4.5sl", "top up with water");
    assertThat(order.disagreements())
        .containsExactly("Oklahoma State puts solutions before emulsions");
  }

  @Test
  void nothingIsSaidOfGuidesWhereTheTankHasNothingToDifferOn() {
    assertThat(
            order(
                    tank()
                        .product("glyphosate-4.5sl", "32 fl oz/acre")
                        .adjuvant("ammonium-sulfate", "8.5 lb/100 gal"))
                .disagreements())
        .isEmpty();
  }

  @Test
  void fertilizerThatCarriesTheMixIsFilledInPlaceOfWater() {
    assertThat(
            order(
                    tank()
                        .liquid(Carrier.Liquid.LIQUID_FERTILIZER)
                        .product("s-metolachlor-7.62ec", "1.3 pt/acre"))
                .steps())
        .containsExactly(
            "half the liquid fertilizer, agitator running",
            "s-metolachlor-7.62ec",
            "top up with liquid fertilizer");
  }

  /** Pairs of the guides themselves; South Dakota State alone has capsules after emulsions. */
  @ParameterizedTest
  @CsvSource({
    "CONDITIONER, POWDER",
    "CONDITIONER, SOLUTION",
    "POWDER, GRANULE",
    "GRANULE, SUSPENSION",
    "SUSPENSION, EMULSION",
    "CAPSULES, EMULSION",
    "EMULSION, SOLUTION",
    "EMULSION, OIL",
    "SOLUTION, SURFACTANT",
    "SOLUTION, FERTILIZER",
    "SURFACTANT, DRIFT_REDUCER",
    "SOLUBLE_DRY, GRANULE"
  })
  void aKindGoesBeforeAnother(TankPart one, TankPart other) {
    assertThat(PartOrder.place(one)).isLessThan(PartOrder.place(other));
  }

  /** No published order is overruled by nobody. */
  @Test
  void whatNoGuideContradictsIsKept() {
    List<String> broken = new ArrayList<>();
    for (TankPart a : TankPart.values()) {
      for (TankPart b : TankPart.values()) {
        boolean said = MixingGuide.ALL.stream().anyMatch(g -> g.puts(a, b));
        boolean denied = MixingGuide.ALL.stream().anyMatch(g -> g.puts(b, a));
        if (said && !denied && PartOrder.place(a) > PartOrder.place(b)) {
          broken.add(a + " before " + b);
        }
      }
    }

    assertThat(broken).isEmpty();
  }

  /** Three guides of a circle, the clearest of whose pairs win: ranked pairs by hand. */
  @Test
  void guidesThatGoInACircleStillGiveAnOrder() {
    MixingGuide suspensionEmulsion = guide(TankPart.SUSPENSION, TankPart.EMULSION);
    List<MixingGuide> circle =
        List.of(
            guide(TankPart.EMULSION, TankPart.SOLUTION),
            guide(TankPart.EMULSION, TankPart.SOLUTION),
            guide(TankPart.SOLUTION, TankPart.SUSPENSION),
            guide(TankPart.SOLUTION, TankPart.SUSPENSION),
            suspensionEmulsion);

    assertThat(PartOrder.inOrder(circle))
        .containsSubsequence(TankPart.EMULSION, TankPart.SOLUTION, TankPart.SUSPENSION);
  }

  private static MixingGuide guide(TankPart one, TankPart other) {
    return new MixingGuide("invented", List.of(Set.of(one), Set.of(other)));
  }

  /** Codes that the catalog has no product of, after the international coding system. */
  @ParameterizedTest
  @CsvSource({
    "WP, true, false",
    "SG, true, false",
    "wg, true, false",
    "EC, false, true",
    "OD, false, true",
    "SE, false, true",
    "SC, false, false",
    "CS, false, false",
    "SL, false, false",
    "GR, false, false"
  })
  void aFormulationIsDryOrAnEmulsionOrNeither(String code, boolean dry, boolean emulsion) {
    assertThat(MixingOrder.isDry(code)).isEqualTo(dry);
    assertThat(MixingOrder.isEmulsion(code)).isEqualTo(emulsion);
  }
}
