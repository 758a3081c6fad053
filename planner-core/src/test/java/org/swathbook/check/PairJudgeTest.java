package org.swathbook.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.swathbook.catalog.Catalog;
import org.swathbook.catalog.CropId;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Position;
import org.swathbook.catalog.Product;
import org.swathbook.catalog.ProductId;
import org.swathbook.catalog.Source;
import org.swathbook.catalog.Stated;
import org.swathbook.catalog.Use;
import org.swathbook.catalog.file.CatalogLoader;
import org.swathbook.measure.Concentration;
import org.swathbook.measure.Rate;
import org.swathbook.program.Dose;
import org.swathbook.program.Doses;
import org.swathbook.rules.About;
import org.swathbook.rules.ActiveUse;
import org.swathbook.rules.Ask;
import org.swathbook.rules.Findings;
import org.swathbook.rules.Severity;

/** Which actives of a tank make pairs, over soybean, from the starter catalog. */
class PairJudgeTest {
  private static final Catalog STARTER = new CatalogLoader().starter();

  /** Every active in a product of its own. */
  private static List<ActiveUse> singles(String... names) {
    return Arrays.stream(names).flatMap(n -> premix(n).stream()).toList();
  }

  /** All actives in one product. */
  private static List<ActiveUse> premix(String... names) {
    List<Ingredient> actives =
        Arrays.stream(names).map(n -> STARTER.findIngredient(n).orElseThrow()).toList();
    Product product =
        new Product(
            new ProductId(String.join("-", names)),
            String.join("-", names),
            actives.stream()
                .map(
                    i ->
                        new Product.Content(i.id(), Concentration.parse("2 lb/gal", i.rateBasis())))
                .toList(),
            "SL",
            Rate.parseUnit("fl oz/acre"),
            Rate.parse("1 fl oz/acre"),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Stated.unknown("protective equipment"),
            "",
            new Source("default, test case"),
            Map.of());
    Dose dose = Doses.ofProduct(STARTER, product, Rate.parse("24 fl oz/acre"));
    return dose.actives().stream().map(a -> new ActiveUse(dose, a, over(a.ingredient()))).toList();
  }

  private static Optional<Use> over(Ingredient i) {
    return i.uses().stream()
        .filter(u -> u.isFor(CropId.of("soybean")) && u.isIn(Position.Phase.IN_CROP))
        .filter(u -> !u.refused())
        .findFirst();
  }

  private static Findings judged(List<ActiveUse> tank) {
    Findings out = Findings.all();
    PairJudge.judge(tank, About.PROGRAM.withPass(0), out);
    return out;
  }

  @Test
  void twoProductsAreAPair() {
    assertThat(judged(singles("dicamba", "glufosinate-ammonium")).isBlocked()).isTrue();
  }

  @Test
  void whatStandsTogetherInOneProductIsNoPair() {
    Findings out = judged(premix("dicamba", "glufosinate-ammonium"));

    assertThat(out.isBlocked()).isFalse();
    assertThat(out.count(Severity.ASK)).isZero();
  }

  @Test
  void eachActiveOfAPremixMakesAPairWithAnotherProduct() {
    List<ActiveUse> tank =
        Stream.concat(
                premix("glyphosate", "dicamba").stream(), singles("glufosinate-ammonium").stream())
            .toList();

    assertThat(judged(tank).isBlocked()).isTrue();
  }

  @Test
  void aListThatIsNotKnownIsAskedForOnceWithAllItsPartners() {
    Findings out = judged(singles("2,4-D choline", "glyphosate", "S-metolachlor"));

    assertThat(out.count(Severity.ASK)).isOne();
    assertThat(out.sortedAsks())
        .extracting(Ask::what)
        .containsExactly(
            "whether the partner list of 2,4-D choline for the date allows glyphosate and"
                + " S-metolachlor");
  }

  @Test
  void anActiveAloneAsksForNoPartners() {
    assertThat(judged(singles("2,4-D choline")).sortedAsks()).isEmpty();
  }
}
