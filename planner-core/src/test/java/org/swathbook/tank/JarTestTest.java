package org.swathbook.tank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.swathbook.measure.Quantity;
import org.swathbook.measure.Unit;
import org.swathbook.program.Carrier;
import org.swathbook.testing.MixCase;

/** A quart of spray, by hand: at 20 gal/acre it is that of 1/80 acre. */
class JarTestTest {

  private static JarTest jar(MixCase tank) {
    var job = tank.job();
    return JarTest.of(
        job.mix(),
        job.carrier().liquid(),
        job.mix().gallonsPerAcre().orElseThrow(),
        MixingOrder.of(job.mix(), job.carrier().liquid()),
        Partners.of(job.mix()));
  }

  private static JarTest.Recipe recipe(MixCase tank) {
    return (JarTest.Recipe) jar(tank);
  }

  private static double amount(JarTest.Recipe recipe, String what) {
    Quantity q =
        recipe.portions().stream()
            .filter(p -> p.what().equals(what))
            .findFirst()
            .orElseThrow()
            .amount()
            .orElseThrow();
    return q.value();
  }

  /** 453.6 g / 80, 473.2 mL / 80, 8.5 lb/100 gal, 0.25 and 1 % of 946 mL: computed by hand. */
  @Test
  void aQuartAtTwentyGallons() {
    JarTest.Recipe jar =
        recipe(
            MixCase.in("soybean")
                .gallons(20)
                .product("metribuzin-75wg", "1 lb/acre")
                .product("glyphosate-4.5sl", "1 pt/acre")
                .adjuvant("ammonium-sulfate", "8.5 lb/100 gal")
                .adjuvant("nonionic-surfactant", "0.25 % v/v")
                .adjuvant("crop-oil", "1 % v/v"));

    assertThat(jar.acres()).isCloseTo(1 / 80.0, within(1e-12));
    assertThat(amount(jar, "metribuzin-75wg")).isCloseTo(5.67, within(0.005));
    assertThat(amount(jar, "glyphosate-4.5sl")).isCloseTo(5.91, within(0.005));
    assertThat(amount(jar, "ammonium-sulfate")).isCloseTo(9.6, within(0.05));
    assertThat(amount(jar, "nonionic-surfactant")).isCloseTo(2.37, within(0.005));
    assertThat(amount(jar, "crop-oil")).isCloseTo(9.46, within(0.005));
    assertThat(jar.carrierMl()).isCloseTo(946.35 - 5.91 - 2.37 - 9.46, within(0.02));
    assertThat(jar.portions())
        .extracting(JarTest.Portion::what)
        .containsExactly(
            "ammonium-sulfate",
            "metribuzin-75wg",
            "glyphosate-4.5sl",
            "crop-oil",
            "nonionic-surfactant");
  }

  /** Labels print half a teaspoon in a pint for a pint an acre at 25 gal/acre (from memory). */
  @Test
  void aPintOnAnAcreIsATeaspoonInAQuartAtTwentyFive() {
    JarTest.Recipe jar =
        recipe(
            MixCase.in("soybean")
                .gallons(25)
                .product("glyphosate-4.5sl", "1 pt/acre")
                .adjuvant("drift-reducer", "as the label says"));

    Quantity ml = new Quantity(amount(jar, "glyphosate-4.5sl"), Unit.MILLILITRE);
    assertThat(ml.in(Unit.FLUID_OUNCE) / JarTest.TEASPOON_FLUID_OUNCES).isCloseTo(1, within(0.05));
    assertThat(jar.portions())
        .filteredOn(p -> p.what().equals("drift-reducer"))
        .singleElement()
        .satisfies(p -> assertThat(p.amount()).isEmpty());
  }

  @Test
  void oneProductMeetsLiquidFertilizerAndNothingInWater() {
    MixCase one = MixCase.in("corn").gallons(20).product("atrazine-4sc", "1 qt/acre");

    assertThat(jar(one)).isInstanceOf(JarTest.NothingToTry.class);
    JarTest.Recipe inFertilizer = recipe(one.liquid(Carrier.Liquid.LIQUID_FERTILIZER));
    // A quart in 20 gal is one part in 80 of a quart: 946.35 mL / 80.
    assertThat(amount(inFertilizer, "atrazine-4sc")).isCloseTo(11.83, within(0.005));
    assertThat(inFertilizer.carrierMl()).isCloseTo(946.35 - 11.83, within(0.02));
  }

  /** Newest labels of paraquat forbid it (Helms, Northeastern IPM Center). */
  @Test
  void neverWithParaquat() {
    assertThat(
            jar(
                MixCase.in("soybean")
                    .tank("paraquat 0.5 cation + metribuzin 0.38 ai")
                    .adjuvant("nonionic-surfactant", "0.25 % v/v")))
        .isEqualTo(new JarTest.Forbidden(List.of("paraquat")));
  }

  @Test
  void oneThingMeetsNothing() {
    assertThat(jar(MixCase.in("soybean").product("glyphosate-4.5sl", "32 fl oz/acre")))
        .isEqualTo(new JarTest.NothingToTry());
  }
}
