package org.swathbook.catalog.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.groups.Tuple.tuple;

import java.time.MonthDay;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.swathbook.catalog.AdjuvantKind;
import org.swathbook.catalog.Cap;
import org.swathbook.catalog.Catalog;
import org.swathbook.catalog.Commodity;
import org.swathbook.catalog.Crop;
import org.swathbook.catalog.CropId;
import org.swathbook.catalog.DegreeDayMethod;
import org.swathbook.catalog.DropletClass;
import org.swathbook.catalog.HarvestLimit;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.IngredientId;
import org.swathbook.catalog.Interaction;
import org.swathbook.catalog.Limit;
import org.swathbook.catalog.PlantingBand;
import org.swathbook.catalog.Position;
import org.swathbook.catalog.Product;
import org.swathbook.catalog.ProductId;
import org.swathbook.catalog.Response;
import org.swathbook.catalog.Source;
import org.swathbook.catalog.Stated;
import org.swathbook.catalog.TankTerms;
import org.swathbook.catalog.TimePoint;
import org.swathbook.catalog.Trait;
import org.swathbook.catalog.Use;
import org.swathbook.catalog.Weed;
import org.swathbook.catalog.WeedId;
import org.swathbook.catalog.Window;
import org.swathbook.measure.Period;

/** What is written is what is read: units, the three answers, sources, terms of a use. */
class ReadingValuesTest {
  private static final CropId SOYBEAN = new CropId("soybean");
  private static final CropId CORN = new CropId("corn");

  private final Catalog catalog = new SmallCatalog().load();
  private final Ingredient metribuzin = catalog.ingredient(new IngredientId("metribuzin"));
  private final Ingredient glyphosate = catalog.ingredient(new IngredientId("glyphosate"));
  private final Use pre = metribuzin.uses().get(0);
  private final Use post = glyphosate.uses().get(1);

  @Test
  void keysAreStatedNoneOrUnknown() {
    assertThat(metribuzin.residual().find().orElseThrow())
        .satisfies(
            r -> {
              assertThat(r.lowDays()).isEqualTo(30);
              assertThat(r.high().lbPerAcre()).isEqualTo(0.5);
              assertThat(r.activatingRainMm()).isCloseTo(12.7, within(1e-9));
            });
    assertThat(metribuzin.foliar().isNone()).isTrue();
    assertThat(glyphosate.residual().isNone()).isTrue();
    assertThat(glyphosate.foliar().find().orElseThrow().rainfastHours().find()).contains(4.0);
    assertThat(metribuzin.terms().carrierMinGalPerAcre())
        .isEqualTo(Stated.unknown("least spray volume"));
    assertThat(pre.repeatDays().isNone()).isTrue();
    assertThat(post.repeatDays().isUnknown()).isTrue();
    assertThat(pre.harvestLimit(Commodity.GRAIN).isNone()).isTrue();
    assertThat(pre.harvestLimit(Commodity.FORAGE).find()).contains(new HarvestLimit(40, false));
    assertThat(pre.harvestLimit(Commodity.GRAZING).find().orElseThrow().refused()).isTrue();
    assertThat(pre.harvestLimit(Commodity.HAY).isUnknown()).isTrue();
    assertThat(metribuzin.rotationTo(CORN).find().orElseThrow().get(0).interval())
        .isEqualTo(new Period(4, 0));
    assertThat(metribuzin.rotationTo(SOYBEAN).isNone()).isTrue();
    assertThat(glyphosate.rotationTo(CORN).isUnknown()).isTrue();
    assertThat(metribuzin.usesComplete()).isTrue();
    assertThat(glyphosate.usesComplete()).isFalse();
  }

  @Test
  void theSourceWithTheLongestPathWins() {
    assertThat(metribuzin.residual().findSource()).contains(new Source("a handbook"));
    assertThat(metribuzin.halfLifeDays().findSource()).contains(new Source("a paper"));
    assertThat(metribuzin.foliar().findSource()).contains(Source.FROM_MEMORY);
    assertThat(pre.rates().findSource()).contains(new Source("a label"));
    assertThat(pre.harvestLimit(Commodity.FORAGE).findSource()).contains(new Source("a label"));
    assertThat(pre.caps().findSource()).contains(new Source("a letter"));
  }

  @Test
  void withoutSourcesAFolderEntrySaysSo() {
    Catalog bare =
        new SmallCatalog()
            .with(
                "ingredients/glyphosate.yaml",
                "sources:\n  - {for: [all], source: from memory}\n",
                "")
            .load();
    assertThat(bare.ingredient(glyphosate.id()).uses().get(0).rates().findSource())
        .contains(Source.NOT_GIVEN);
  }

  @Test
  void usesCarryWhatIsWritten() {
    assertThat(pre.positions()).containsExactly(Position.PREPLANT, Position.PRE);
    assertThat(pre.timing().find())
        .contains(
            new Window(
                Optional.of(new TimePoint.FromPlanting(-30)),
                Optional.empty(),
                Optional.of(new TimePoint.AtStage(TimePoint.EMERGENCE))));
    assertThat(pre.traits().isNone()).isTrue();
    assertThat(post.traits().find().orElseThrow()).containsExactly(new Trait("glyphosate"));
    assertThat(pre.rates().find().orElseThrow())
        .satisfiesExactly(
            r -> {
              assertThat(r.rates()).isEmpty();
              assertThat(r.when().organicMatterPct()).contains(Limit.below(2));
              assertThat(r.when().textures()).hasSize(3);
            },
            r -> assertThat(r.rates().orElseThrow()).hasToString("0.25-0.5 lb ai/acre"));
    assertThat(pre.plantingInterval().find().orElseThrow())
        .extracting(PlantingBand::days, PlantingBand::rainMm)
        .containsExactly(tuple(0, OptionalDouble.empty()), tuple(14, OptionalDouble.of(25.4)));
    assertThat(pre.soilPh().find().orElseThrow().allows(7.5)).isFalse();
    assertThat(pre.soilPh().find().orElseThrow().allows(7.49)).isTrue();
    assertThat(metribuzin.uses().get(1).refused()).isTrue();
    assertThat(glyphosate.uses().get(0).crop()).isEmpty();
    assertThat(post.caps().find().orElseThrow())
        .extracting(Cap::per, c -> c.counts(post.positions()), c -> c.counts(pre.positions()))
        .containsExactly(
            tuple(Cap.CapPeriod.CALENDAR_YEAR, true, true),
            tuple(Cap.CapPeriod.SEASON, true, false));
  }

  @Test
  void aUseReplacesTheTermsOfItsIngredientKeyByKey() {
    Limit wind = pre.terms().day().windMph().find().orElseThrow();
    assertThat(wind).isEqualTo(Limit.atMost(10));
    assertThat(pre.terms().day().inversionRefused().find()).contains(true);
    TankTerms.PartnerList partners = pre.terms().tank().partners().find().orElseThrow();
    assertThat(partners.allows(glyphosate.id())).isTrue();
    assertThat(partners.allows(metribuzin.id())).isFalse();
    assertThat(pre.terms().tank().cleanOut().find().orElseThrow().least())
        .isEqualTo(TankTerms.Rinse.TRIPLE_RINSE);
    assertThat(metribuzin.terms().tank().partners().isNone()).isTrue();
    assertThat(metribuzin.terms().day().windMph().find().orElseThrow().allows(2.9)).isFalse();
    assertThat(post.terms()).isEqualTo(glyphosate.terms());
    assertThat(post.terms().tank().adjuvantNeeded().find().orElseThrow())
        .containsExactly(
            new TankTerms.AdjuvantNeed(
                Set.of(AdjuvantKind.AMMONIUM_SULFATE), Optional.of("8.5 lb/100 gal"), false));
    assertThat(
            post.terms().tank().droplets().find().orElseThrow().allows(DropletClass.ULTRA_COARSE))
        .isFalse();
  }

  @Test
  void registrationOfAUse() {
    Use use =
        new SmallCatalog()
            .with(
                "ingredients/metribuzin.yaml",
                "    repeat: none\n",
                """
                    labelYears: 2026-2027
                    state: {refused: [CA]}
                    cutoff: [{states: [IL], date: 06-12}, {date: 06-30}]
                """)
            .load()
            .ingredient(metribuzin.id())
            .uses()
            .get(0);
    assertThat(use.registration().years().find().orElseThrow().last()).isEqualTo(2027);
    assertThat(use.registration().states().refused()).containsExactly("CA");
    assertThat(use.registration().cutoffs().find().orElseThrow().get(1).last())
        .isEqualTo(MonthDay.of(6, 30));
    assertThat(pre.registration().cutoffs().isUnknown()).isTrue();
  }

  @Test
  void cropsCountInCelsiusAndCentimetres() {
    Crop soybean = catalog.crop(SOYBEAN);
    assertThat(soybean.clock().method()).isEqualTo(DegreeDayMethod.AVERAGE);
    assertThat(soybean.clock().baseC()).isCloseTo(10, within(1e-12));
    assertThat(soybean.stages().get(0).degreeDays().orElseThrow()).isCloseTo(100, within(1e-9));
    assertThat(soybean.stages().get(4).daysAfterEmergence()).hasValue(42);
    assertThat(soybean.findStage("emergence")).hasValue(0);
    assertThat(soybean.findStage("v3")).hasValue(3);
    assertThat(soybean.findStage("V9")).isEmpty();
    assertThat(soybean.heightsCm().get("V3")).isCloseTo(20.32, within(1e-9));
    assertThat(soybean.canopy().daysByRowCm()).containsValues(40, 55);
    assertThat(soybean.canopy().neverBelowBuPerAcre()).hasValue(20);
    assertThat(soybean.removalBareByRowCm().values()).containsExactly("V2", "V1");
    assertThat(soybean.removalAfterResidualByRowCm().values()).containsExactly("V3", "V2");
    assertThat(soybean.sources().get("stages.at.R1")).isEqualTo(new Source("a paper"));
    assertThat(soybean.sources().get("stages.at.V1")).isEqualTo(Source.FROM_MEMORY);
    Crop corn = catalog.crop(CORN);
    assertThat(corn.clock().method()).isEqualTo(DegreeDayMethod.CLAMPED);
    assertThat(corn.clock().ceilingC().orElseThrow()).isCloseTo(30, within(1e-12));
    assertThat(corn.removalBareByRowCm().values()).containsExactly("V3");
    assertThat(corn.removalAfterResidualByRowCm().values()).containsExactly("V6");
    assertThat(corn.bbch()).isEmpty();
  }

  @Test
  void weedsCountInCelsiusDaysAndShares() {
    Weed weed = catalog.weed(new WeedId("AMAPA"));
    // 1 °F-day is 5/9 °C-day, by the definition of the scales.
    assertThat(weed.emergence().at10()).isCloseTo(50, within(1e-9));
    assertThat(weed.emergence().at90()).isCloseTo(200, within(1e-9));
    assertThat(weed.emergence().tail().orElseThrow().until()).isCloseTo(500, within(1e-9));
    assertThat(weed.emergence().clock().baseC()).isCloseTo(80.0 / 9, within(1e-12));
    assertThat(weed.emergence().start()).isEqualTo(MonthDay.of(1, 1));
    assertThat(weed.height().slopeCm()).isEqualTo(0.2);
    assertThat(weed.height().maxCm()).isEqualTo(300);
    assertThat(lossPerPlant(weed, SOYBEAN)).isEqualTo(0.4);
    assertThat(lossPerPlant(weed, CORN)).isCloseTo(0.01 * 0.09290304, within(1e-12));
    assertThat(weed.seed().survival()).isEqualTo(0.35);
    assertThat(catalog.findWeed("carelessweed")).contains(weed);
    assertThat(catalog.findWeed("PALMER amaranth")).contains(weed);
  }

  private static double lossPerPlant(Weed weed, CropId crop) {
    return Objects.requireNonNull(weed.competition().get(crop)).lossPerPlant();
  }

  @Test
  void productsKnowTheirStrengthInTheBasisOfTheActive() {
    Product liquid = catalog.product(new ProductId("glyphosate-4.5sl"));
    assertThat(liquid.contents().get(0).concentration().basis()).isEqualTo(glyphosate.rateBasis());
    assertThat(liquid.label().orElseThrow().id()).isEqualTo("DEMO-1");
    Product dry = catalog.product(new ProductId("metribuzin-75wg"));
    assertThat(dry.step()).isEqualTo(dry.spoken());
    assertThat(dry.label()).isEmpty();
    assertThat(dry.packageSize()).isEmpty();
    assertThat(catalog.singles(metribuzin.id())).containsExactly(dry);
  }

  @Test
  void tablesOfHowTheyMeet() {
    Response r =
        catalog
            .response(new WeedId("AMAPA"), glyphosate.id(), Response.Timing.POST)
            .find()
            .orElseThrow();
    assertThat(r.controlHeightCm().orElseThrow()).isCloseTo(10.16, within(1e-9));
    assertThat(
            catalog.response(new WeedId("AMAPA"), glyphosate.id(), Response.Timing.PRE).isUnknown())
        .isTrue();
    Interaction pair = catalog.interactions().get(0);
    assertThat(pair.factor()).isCloseTo(0.8, within(1e-12));
    assertThat(pair.affects()).isEqualTo(pair.one());
    assertThat(pair.unless().orElseThrow().atLeast().lbPerAcre()).isEqualTo(1.1);
  }

  @Test
  void aPairWithoutANumberIsShownAndNotCounted() {
    List<Interaction> pairs =
        new SmallCatalog()
            .with("interactions.yaml", "    loses: 10-30 %\n", "")
            .load()
            .interactions();
    assertThat(pairs).singleElement().matches(p -> !p.isCounted());
  }
}
