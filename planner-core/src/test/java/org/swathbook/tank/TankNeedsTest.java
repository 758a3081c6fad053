package org.swathbook.tank;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.swathbook.catalog.Catalog;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Movement;
import org.swathbook.catalog.file.CatalogLoader;
import org.swathbook.measure.Basis;
import org.swathbook.program.Adjuvant;
import org.swathbook.testing.IngredientBuilder;

/** Needs of tanks from the starter catalog; what labels ask for is named with its source there. */
class TankNeedsTest {
  private static final Catalog STARTER = new CatalogLoader().starter();

  private static List<Partner> of(String... names) {
    return Arrays.stream(names)
        .map(n -> STARTER.findIngredient(n).orElseThrow())
        .map(i -> new Partner(i, i.terms()))
        .toList();
  }

  private static IngredientBuilder active(String name) {
    return IngredientBuilder.of(name, 14, Movement.CONTACT, Basis.AI).foliar(1);
  }

  private static TankNeeds needs(IngredientBuilder... actives) {
    return TankNeeds.of(
        Arrays.stream(actives)
            .map(IngredientBuilder::build)
            .map((Ingredient i) -> new Partner(i, i.terms()))
            .toList());
  }

  /** Both orders of two partners, which must say the same. */
  private static TankNeeds inAnyOrder(IngredientBuilder a, IngredientBuilder b) {
    TankNeeds needs = needs(a, b);
    assertThat(needs(b, a)).isEqualTo(needs);
    return needs;
  }

  @Test
  void ammoniumSulfateOfTwoPartnersGoesInOnce() {
    TankNeeds needs = TankNeeds.of(of("glyphosate", "glufosinate-ammonium"));

    assertThat(needs.adjuvants())
        .containsOnlyOnce(new Adjuvant("ammonium-sulfate", "8.5 lb/100 gal"));
    assertThat(needs.gallonsPerAcre().orElseThrow()).isEqualTo(15);
  }

  @Test
  void anOilThatAPartnerRefusesIsNotPutInAndItsNeedStandsUnmet() {
    assertThat(TankNeeds.of(of("clethodim")).adjuvants())
        .extracting(Adjuvant::kind)
        .contains("crop-oil");
    assertThat(TankNeeds.of(of("clethodim")).unmet()).isEmpty();

    TankNeeds needs = TankNeeds.of(of("clethodim", "glufosinate-ammonium"));

    assertThat(needs.adjuvants())
        .extracting(Adjuvant::kind)
        .doesNotContain("crop-oil", "methylated-seed-oil");
    assertThat(needs.unmet())
        .singleElement()
        .satisfies(
            u -> {
              assertThat(u.of().name()).isEqualTo("clethodim");
              assertThat(UnmetNeed.words(u.need()))
                  .isEqualTo("crop-oil or methylated-seed-oil, 1 % v/v");
              assertThat(u.refusedBy()).containsExactly("glufosinate-ammonium");
            });
  }

  /** Each need alone could be met; the refusals of two partners together leave it nothing. */
  @Test
  void refusalsOfSeveralPartnersAddUp() {
    TankNeeds needs =
        needs(
            active("c").refuses("nonionic-surfactant"),
            active("a").needs("1 % v/v", false, "crop-oil", "nonionic-surfactant"),
            active("b").refuses("crop-oil"));

    assertThat(needs.adjuvants()).isEmpty();
    assertThat(needs.unmet()).extracting(UnmetNeed::refusedBy).containsExactly(List.of("b", "c"));
  }

  @Test
  void theLargerRateOfOneUnitGoverns() {
    TankNeeds needs =
        inAnyOrder(
            active("a").needs("0.25 % v/v", false, "nonionic-surfactant"),
            active("b").needs("1 % v/v", false, "nonionic-surfactant"));

    assertThat(needs.adjuvants()).containsExactly(new Adjuvant("nonionic-surfactant", "1 % v/v"));
  }

  /** Every partner refuses oils but one, which may have a surfactant in their place. */
  @Test
  void aSurfactantInPlaceOfAnOilGoesInAtTheRateOfASurfactant() {
    Ingredient mesotrione = STARTER.findIngredient("mesotrione").orElseThrow();
    Partner post = over(mesotrione, "corn");
    assertThat(TankNeeds.of(List.of(post)).adjuvants())
        .contains(new Adjuvant("crop-oil", "1 % v/v"));
    List<Partner> both = new java.util.ArrayList<>(List.of(post));
    both.addAll(of("glufosinate-ammonium"));

    assertThat(rate(TankNeeds.of(both))).isEqualTo("0.25 % v/v");
    Collections.reverse(both);
    assertThat(rate(TankNeeds.of(both))).isEqualTo("0.25 % v/v");
  }

  private static String rate(TankNeeds needs) {
    return needs.adjuvants().stream()
        .filter(a -> a.kind().equals("nonionic-surfactant"))
        .map(Adjuvant::rate)
        .reduce((a, b) -> a + " and " + b)
        .orElseThrow();
  }

  /** Under its use over a crop that is up. */
  private static Partner over(Ingredient i, String crop) {
    return i.uses().stream()
        .filter(u -> u.crop().filter(c -> c.value().equals(crop)).isPresent())
        .filter(u -> !u.refused() && u.isIn(org.swathbook.catalog.Position.Phase.IN_CROP))
        .map(u -> new Partner(i, u.terms()))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void amountsOnAnAreaCompareInWhateverUnit() {
    TankNeeds needs =
        inAnyOrder(
            active("a").needs("1 qt/acre", false, "crop-oil"),
            active("b").needs("1.5 pt/acre", false, "crop-oil"));

    assertThat(needs.adjuvants()).containsExactly(new Adjuvant("crop-oil", "1 qt/acre"));
  }

  /** Which is more depends on the spray volume: 1 % v/v is 1 qt/acre at 25 gal/acre. */
  @Test
  void ratesThatDoNotCompareStandBoth() {
    TankNeeds needs =
        inAnyOrder(
            active("a").needs("1 qt/acre", false, "crop-oil"),
            active("b").needs("1 % v/v", false, "crop-oil"));

    assertThat(needs.adjuvants())
        .containsExactlyInAnyOrder(
            new Adjuvant("crop-oil", "1 qt/acre"), new Adjuvant("crop-oil", "1 % v/v"));
  }

  @Test
  void oneKindThatServesBothGoesBeforeTwo() {
    TankNeeds needs =
        inAnyOrder(
            active("a").needs("0.25 % v/v", false, "nonionic-surfactant", "crop-oil"),
            active("b").needs("1 % v/v", false, "crop-oil", "methylated-seed-oil"));

    assertThat(needs.adjuvants()).containsExactly(new Adjuvant("crop-oil", "1 % v/v"));
  }

  @Test
  void theKindThatALabelNamesFirstGoesBeforeOthers() {
    assertThat(
            needs(active("a").needs("1 % v/v", false, "methylated-seed-oil", "crop-oil"))
                .adjuvants())
        .containsExactly(new Adjuvant("methylated-seed-oil", "1 % v/v"));
  }

  @Test
  void theLargestLeastVolumeGoverns() {
    double together = TankNeeds.of(of("paraquat", "metribuzin")).gallonsPerAcre().orElseThrow();
    double one = TankNeeds.of(of("paraquat")).gallonsPerAcre().orElseThrow();
    double other = TankNeeds.of(of("metribuzin")).gallonsPerAcre().orElseThrow();

    assertThat(together).isEqualTo(Math.max(one, other));
  }

  @Test
  void anEmptyTankNeedsNothing() {
    assertThat(TankNeeds.of(List.of()).adjuvants()).isEmpty();
    assertThat(TankNeeds.of(List.of()).gallonsPerAcre()).isEmpty();
  }
}
