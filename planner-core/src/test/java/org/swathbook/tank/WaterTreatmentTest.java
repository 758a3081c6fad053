package org.swathbook.tank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.swathbook.program.Carrier;
import org.swathbook.program.SprayJob;
import org.swathbook.testing.MixCase;

/** Ammonium sulfate for hard water. */
class WaterTreatmentTest {

  private static WaterTreatment of(MixCase tank) {
    SprayJob job = tank.job();
    return of(job, job.carrier());
  }

  private static WaterTreatment of(SprayJob job, Carrier carrier) {
    return WaterTreatment.of(
        job.mix(), job.mix().gallonsPerAcre().orElseThrow(), carrier, Partners.of(job.mix()));
  }

  private static MixCase glyphosate() {
    return MixCase.in("soybean", "glyphosate").product("glyphosate-4.5sl", "32 fl oz/acre");
  }

  /**
   * The formula of North Dakota State with all its terms, worked by hand for two waters: 0.002 K +
   * 0.005 Na + 0.009 Ca + 0.014 Mg + 0.042 Fe, of which calcium, magnesium and iron are from
   * memory. A hardness counts both as calcium, 2.497 ppm of CaCO3 a ppm of calcium and 4.118 a ppm
   * of magnesium.
   */
  @ParameterizedTest
  @CsvSource({"10, 40, 120, 50, 1, 2.04", "5, 60, 300, 110, 2, 4.63"})
  void hardnessStandsForCalciumAndMagnesiumAndLeavesOutSodiumAndPotassium(
      double k, double na, double ca, double mg, double fe, double all) {
    assertThat(0.002 * k + 0.005 * na + 0.009 * ca + 0.014 * mg + 0.042 * fe)
        .isCloseTo(all, within(0.005));
    double ours = AmmoniumSulfate.lbPer100Gal(2.497 * ca + 4.118 * mg, fe);

    assertThat(ours).isGreaterThanOrEqualTo(all - 0.002 * k - 0.005 * na - 0.005);
    assertThat(ours).isLessThan(all);
  }

  @Test
  void hardWaterAsksForWhatItsSaltsTakeAndTheLabelForMore() {
    WaterTreatment.Tested water =
        (WaterTreatment.Tested)
            of(glyphosate().hardness(600).adjuvant("ammonium-sulfate", "5 lb/100 gal"));

    assertThat(water.acids()).containsExactly("glyphosate");
    assertThat(water.hard()).isTrue();
    assertThat(water.lbPer100Gal()).isCloseTo(0.009 * 240, within(1e-9));
    assertThat(water.facts().held()).hasValue(5);
    assertThat(water.facts().conditioner()).isFalse();
    // 8.5 lb in 100 gal: Hager 2016, University of Illinois, of glufosinate; glyphosate from
    // memory.
    assertThat(water.askedLbPer100Gal()).isEqualTo(8.5);
    assertThat(water.facts().refusedBy()).isEmpty();
  }

  /** 3000 ppm of CaCO3 are 1200 of calcium: 10.8 lb by the formula above, and 8.5 by the label. */
  @Test
  void veryHardWaterTakesMoreThanTheLabelAsks() {
    WaterTreatment.Tested water = (WaterTreatment.Tested) of(glyphosate().hardness(3000));

    assertThat(water.askedLbPer100Gal()).isCloseTo(10.8, within(0.01));
  }

  @Test
  void aWeightOnAnAcreCountsAtTheSprayVolume() {
    WaterTreatment.Tested water =
        (WaterTreatment.Tested)
            of(glyphosate().gallons(10).adjuvant("ammonium-sulfate", "1.7 lb/acre"));

    assertThat(water.facts().held().orElseThrow()).isCloseTo(17, within(1e-9));
    assertThat(water.hard()).isFalse();
  }

  @Test
  void exactlyAtTheLimitIsNotHard() {
    assertThat(((WaterTreatment.Tested) of(glyphosate().hardness(150))).hard()).isFalse();
    assertThat(((WaterTreatment.Tested) of(glyphosate().hardness(151))).hard()).isTrue();
  }

  @Test
  void aLiquidOfUnknownStrengthIsNotCounted() {
    WaterTreatment.Tested water =
        (WaterTreatment.Tested) of(glyphosate().adjuvant("ammonium-sulfate", "2.5 % v/v"));

    assertThat(water.facts().held()).isEmpty();
  }

  /** Over-the-top dicamba refuses ammonium. */
  @Test
  void whoRefusesIsNamed() {
    SprayJob job = glyphosate().hardness(600).product("glufosinate-2.34sl", "32 fl oz/acre").job();
    var dicamba =
        MixCase.CATALOG.findIngredient("dicamba").orElseThrow().uses().stream()
            .filter(
                u ->
                    u.terms()
                        .tank()
                        .adjuvantRefused()
                        .find()
                        .filter(
                            r -> r.contains(org.swathbook.catalog.AdjuvantKind.AMMONIUM_SULFATE))
                        .isPresent())
            .findFirst()
            .orElseThrow();
    var partners = new java.util.ArrayList<>(Partners.of(job.mix()));
    partners.add(
        new Partner(MixCase.CATALOG.findIngredient("dicamba").orElseThrow(), dicamba.terms()));

    WaterTreatment.Tested water =
        (WaterTreatment.Tested) WaterTreatment.of(job.mix(), 15, job.carrier(), partners);

    assertThat(water.facts().refusedBy()).containsExactly("dicamba");
  }

  @Test
  void untestedWaterIsUntestedAndFertilizerIsNoWater() {
    SprayJob job = glyphosate().job();

    assertThat(of(job, Carrier.UNKNOWN)).isInstanceOf(WaterTreatment.Untested.class);
    assertThat(
            of(
                job,
                new Carrier(
                    Carrier.Liquid.LIQUID_FERTILIZER,
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    OptionalDouble.empty())))
        .isEqualTo(new WaterTreatment.NoWater());
  }

  @Test
  void saltsTieUpNothingWhereNoWeakAcidIs() {
    assertThat(
            of(MixCase.in("soybean").hardness(900).product("metribuzin-75wg", "5 oz weight/acre")))
        .isEqualTo(new WaterTreatment.NoWeakAcid());
  }

  @Test
  void aConditionerWithoutAmmoniumIsKnownToBeInTheTank() {
    WaterTreatment.Tested with =
        (WaterTreatment.Tested)
            of(glyphosate().hardness(600).adjuvant("water-conditioner", "1 qt/100 gal"));
    WaterTreatment.Tested without = (WaterTreatment.Tested) of(glyphosate().hardness(600));

    assertThat(with.facts().conditioner()).isTrue();
    assertThat(with.facts().held()).hasValue(0);
    assertThat(without.facts().conditioner()).isFalse();
  }

  /** Purdue University (from memory): hard from 150 ppm on, stated as CaCO3. */
  @Test
  void waterIsHardAboveItsLimitAndNotAtIt() {
    assertThat(((WaterTreatment.Tested) of(glyphosate().hardness(150))).hard()).isFalse();
    assertThat(((WaterTreatment.Tested) of(glyphosate().hardness(151))).hard()).isTrue();
  }
}
