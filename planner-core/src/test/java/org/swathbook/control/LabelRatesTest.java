package org.swathbook.control;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.swathbook.catalog.Catalog;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Movement;
import org.swathbook.catalog.Position;
import org.swathbook.catalog.SoilTexture;
import org.swathbook.catalog.file.CatalogLoader;
import org.swathbook.measure.Basis;
import org.swathbook.measure.Rate;
import org.swathbook.testing.FieldBuilder;
import org.swathbook.testing.IngredientBuilder;
import org.swathbook.testing.UseBuilder;

/**
 * Doses on leaves are measured against the top of the label's range, residuals against that of the
 * soil.
 */
class LabelRatesTest {
  private static final Catalog STARTER = new CatalogLoader().starter();

  private static FieldBuilder soybean() {
    return FieldBuilder.of("T", "soybean", "2027-05-10");
  }

  private static Ingredient active(String name) {
    return STARTER.findIngredient(name).orElseThrow();
  }

  /**
   * S-metolachlor in soybean goes up to 1.27 lb on coarse, 1.60 lb on medium soils and fine ones
   * with less than 3 % organic matter, 1.91 lb on fine ones with more: the starter's rows, with the
   * sources that stand there.
   */
  @ParameterizedTest
  @CsvSource({
    "SANDY_LOAM, 2, 1.27",
    "SILT_LOAM, 2, 1.60",
    "SILTY_CLAY_LOAM, 2.9, 1.60",
    "SILTY_CLAY_LOAM, 3, 1.91"
  })
  void asMuchOfTheHighestRateAsTheSoilNeeds(SoilTexture texture, double om, double lb) {
    assertThat(
            LabelRates.soilShare(active("S-metolachlor"), soybean().soil(texture, om, 6.5).build()))
        .isCloseTo(lb / 1.91, within(1e-9));
  }

  /**
   * A top that is cut where the low end stays says nothing of what the soil needs: dicamba and
   * saflufenacil on sand in corn, atrazine on slopes with little residue (the starter's rows). So
   * it says nothing in a crop whose own rows are not graded either.
   */
  @ParameterizedTest
  @CsvSource({"dicamba, corn", "dicamba, soybean", "saflufenacil, corn", "saflufenacil, soybean"})
  void aTopThatIsCutToSpareTheCropMakesNoDoseLastLonger(String name, String crop) {
    assertThat(
            LabelRates.soilShare(
                active(name),
                FieldBuilder.of("T", crop, "2027-05-01")
                    .soil(SoilTexture.SANDY_LOAM, 1.1, 6.5)
                    .build()))
        .isEqualTo(1);
  }

  /** A soil binds an active whatever grows on it: soybean's rows of metribuzin hold in corn too. */
  @Test
  void whereTheCropGradesNothingTheSoilIsThatOfAnotherCrop() {
    assertThat(
            LabelRates.soilShare(
                active("metribuzin"),
                FieldBuilder.of("T", "corn", "2027-05-01").soil(SoilTexture.LOAM, 3, 6.5).build()))
        .isCloseTo(0.50 / 0.75, within(1e-9));
  }

  @Test
  void allOfItWhereNothingIsGradedOrTheSoilIsNotKnownOrRefused() {
    assertThat(LabelRates.soilShare(active("S-metolachlor"), soybean().soilUnknown().build()))
        .isEqualTo(1);
    assertThat(
            LabelRates.soilShare(
                active("metribuzin"), soybean().soil(SoilTexture.SAND, 1, 6.5).build()))
        .isEqualTo(1);
    assertThat(
            LabelRates.soilShare(
                active("glyphosate"), soybean().soil(SoilTexture.SANDY_LOAM, 2, 6.5).build()))
        .isEqualTo(1);
  }

  private static TankActive invented(UseBuilder... uses) {
    IngredientBuilder b = IngredientBuilder.of("testactive", 9, Movement.SYSTEMIC, Basis.AI);
    for (UseBuilder u : uses) {
      b.use(u);
    }
    return new TankActive(b.build(), List.of("SL"), 1);
  }

  private static UseBuilder use(String crop, String rate, Position... at) {
    return UseBuilder.of(crop, at).noTiming().noCropHeight().traits().rate(rate);
  }

  private static void assertMeasure(TankActive active, Position.Phase phase, double lb) {
    assertThat(LabelRates.high(active, soybean().soil(SoilTexture.LOAM, 2, 6.5).build(), phase))
        .hasValueCloseTo(Rate.lbPerAcre(lb, Basis.AI).kgPerHa(), within(1e-9));
  }

  /** Against a dose over the crop measured by what dries down a ripe one, or is sprayed before. */
  @Test
  void overTheCropTheRateOverTheCropCounts() {
    TankActive all =
        invented(
            use("soybean", "0.5-1.0 lb ai/acre", Position.POST),
            use("soybean", "0.5-1.2 lb ai/acre", Position.POST),
            use("soybean", "1.0-3.0 lb ai/acre", Position.PRE),
            use("soybean", "1.0-4.0 lb ai/acre", Position.HARVEST_AID),
            use("corn", "1.0-5.0 lb ai/acre", Position.POST));
    assertMeasure(all, Position.Phase.IN_CROP, 1.2);
    assertMeasure(all, Position.Phase.BEFORE_EMERGENCE, 3.0);
  }

  /**
   * Dicamba over corn: 0.25 to 0.5 lb, on coarse soils 0.25 lb (the starter's row, with the source
   * that stands there). A Palmer amaranth of 4 in needs no less of it on sand: 0.25 lb is half a
   * dose there too.
   */
  @Test
  void aLightSoilTakesNothingOffWhatLeavesNeed() {
    TankActive dicamba = new TankActive(active("dicamba"), List.of("SL"), 0.28);
    for (SoilTexture texture : List.of(SoilTexture.SANDY_LOAM, SoilTexture.SILT_LOAM)) {
      assertThat(
              LabelRates.high(
                  dicamba,
                  FieldBuilder.of("T", "corn", "2027-05-01").soil(texture, 3, 6.5).build(),
                  Position.Phase.IN_CROP))
          .as(texture.name())
          .hasValueCloseTo(Rate.lbPerAcre(0.5, Basis.AE).kgPerHa(), within(1e-9));
    }
  }

  /**
   * Metribuzin before soybean moves both ends of its range by soil, 0.25 to 0.50 lb on medium ones
   * (the starter's rows, with the sources that stand there).
   */
  @Test
  void theWholeRangeOfASoilHerbicideIsThatOfTheSoil() {
    assertThat(
            LabelRates.high(
                new TankActive(active("metribuzin"), List.of("WG"), 0.28),
                soybean().soil(SoilTexture.SILT_LOAM, 3, 6.5).build(),
                Position.Phase.BEFORE_EMERGENCE))
        .hasValueCloseTo(Rate.lbPerAcre(0.50, Basis.AI).kgPerHa(), within(1e-9));
  }

  /** A rule blocks such a dose; it is still measured by what comes nearest. */
  @Test
  void withoutAUseOfThePhaseTheNextNearestCounts() {
    assertMeasure(
        invented(
            use("soybean", "1.0-3.0 lb ai/acre", Position.PRE),
            use("corn", "1.0-5.0 lb ai/acre", Position.POST)),
        Position.Phase.IN_CROP,
        3.0);
    assertMeasure(
        invented(use("corn", "1.0-5.0 lb ai/acre", Position.POST)), Position.Phase.IN_CROP, 5.0);
    assertThat(
            LabelRates.high(
                invented(use("soybean", "1.0-4.0 lb ai/acre", Position.HARVEST_AID)),
                soybean().build(),
                Position.Phase.IN_CROP))
        .isEmpty();
  }
}
