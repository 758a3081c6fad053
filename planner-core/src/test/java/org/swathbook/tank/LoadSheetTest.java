package org.swathbook.tank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Stated;
import org.swathbook.catalog.TankTerms.Rinse;
import org.swathbook.catalog.Terms;
import org.swathbook.program.Mix;
import org.swathbook.program.SprayJob;
import org.swathbook.testing.MixCase;

/** The sheet of a whole job, and what partners ask for together. */
class LoadSheetTest {

  private static LoadSheet sheet(MixCase tank, double acres) {
    return LoadSheet.of(tank.book(), tank.job(), Partners.of(tank.job().mix()), acres, 1200);
  }

  private static MixCase tank() {
    return MixCase.in("soybean", "glyphosate", "2,4-D")
        .product("2-4-d-choline-3.8sl", "2 pt/acre")
        .product("glyphosate-4.5sl", "32 fl oz/acre");
  }

  @Test
  void everyLoadHasItsAmounts() {
    LoadSheet sheet = sheet(tank(), 100);

    assertThat(sheet.split().way()).isEqualTo(LoadSplit.Way.FULL_AND_REST);
    assertThat(sheet.loads()).hasSize(2);
    assertThat(sheet.loads().get(0).products().get(0).poured().words()).isEqualTo("20 gal");
    assertThat(sheet.loads().get(1).products().get(0).poured().words()).isEqualTo("5 gal");
    assertThat(sheet.loads().get(1).carrierGallons()).isEqualTo(290);
  }

  /** 48 h of a 2,4-D label against 4 to 12 h of glyphosate, as the catalog cites them. */
  @Test
  void theLongestReentryGoverns() {
    LongestReentry reentry = sheet(tank(), 100).reentry();

    assertThat(reentry.hours()).hasValue(48);
    assertThat(reentry.unknown()).isEmpty();
  }

  @Test
  void aPartnerOfWhichItIsNotKnownIsNamed() {
    Partner known = partner("glyphosate");
    Partner silent = silent(partner("dicamba"));

    LongestReentry both = LongestReentry.of(List.of(known, silent));

    assertThat(both.hours()).isNotEmpty();
    assertThat(both.unknown()).containsExactly("dicamba");
    assertThat(LongestReentry.of(List.of(silent)).hours()).isEmpty();
    assertThat(RestrictedUse.of(List.of(silent)).unknown()).containsExactly("dicamba");
  }

  private static Partner partner(String name) {
    Ingredient i = MixCase.CATALOG.findIngredient(name).orElseThrow();
    return new Partner(i, i.terms());
  }

  /** Of a label that nobody read. */
  private static Partner silent(Partner p) {
    Terms t = p.terms();
    return new Partner(
        p.ingredient(),
        new Terms(
            t.foliar(),
            t.carrierMinGalPerAcre(),
            t.carrierAdvisedGalPerAcre(),
            t.carrierMaxGalPerAcre(),
            t.waterPh(),
            t.fertilizerRefusedOverCrop(),
            Stated.unknown("re-entry"),
            Stated.unknown("restricted use"),
            Stated.unknown("training"),
            t.tank(),
            t.day(),
            t.setbacks()));
  }

  @Test
  void paraquatIsForCertifiedApplicatorsOnly() {
    MixCase tank = MixCase.in("soybean").tank("paraquat 0.5 cation + metribuzin 0.38 ai");

    assertThat(sheet(tank, 80).restricted().restricted()).containsExactly("paraquat");
  }

  @Test
  void cleanOutBeforeIsThatOfTheLastLoadAndAfterThatOfThisOne() {
    LoadSheet sheet = sheet(tank().lastLoad("dicamba", Rinse.WATER_RINSE), 80);

    assertThat(sheet.before().orElseThrow().rows())
        .singleElement()
        .satisfies(r -> assertThat(r.ingredient().name()).isEqualTo("dicamba"));
    assertThat(sheet.after().rows())
        .extracting(r -> r.ingredient().name())
        .containsExactly("2,4-D choline", "glyphosate");
    assertThat(sheet.after().strictest()).isPresent();
  }

  @Test
  void whatTheSprayerHeldMayBeUnknown() {
    SprayJob job = tank().job();
    SprayJob bare = SprayJob.of(job.field(), job.date(), job.mix());

    LoadSheet sheet = LoadSheet.of(tank().book(), bare, Partners.of(job.mix()), 80, 1200);

    assertThat(sheet.before()).isEmpty();
    assertThat(sheet.water()).isInstanceOf(WaterTreatment.Untested.class);
  }

  @Test
  void withoutAVolumeThereIsNoLoad() {
    SprayJob job = tank().job();
    SprayJob without =
        job.with(new Mix(job.mix().doses(), job.mix().adjuvants(), OptionalDouble.empty()));

    assertThatThrownBy(() -> LoadSheet.of(tank().book(), without, Partners.of(job.mix()), 80, 1200))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void everyStepSaysHowItMixesAndWhoSaysSo() {
    List<MixingStep> steps = sheet(tank(), 80).order().sequence();

    assertThat(steps)
        .extracting(MixingStep::kind)
        .containsExactly(
            MixingStep.Kind.CARRIER_FIRST,
            MixingStep.Kind.PRODUCT,
            MixingStep.Kind.PRODUCT,
            MixingStep.Kind.TOP_UP);
    assertThat(steps.get(1).formulation()).contains("SL");
    assertThat(steps.get(1).form()).contains("solutions");
    // South Dakota State gives solutions no place.
    assertThat(steps.get(1).guides())
        .containsExactly("Oklahoma State", "North Dakota", "Utah State", "Missouri DOT");
  }
}
