package org.swathbook.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.swathbook.book.Field;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.Product;
import org.swathbook.catalog.Site;
import org.swathbook.growth.TraceSet;
import org.swathbook.measure.Rate;
import org.swathbook.program.Anchor;
import org.swathbook.program.Dose;
import org.swathbook.program.Doses;
import org.swathbook.program.Mix;
import org.swathbook.program.Pass;
import org.swathbook.program.Program;
import org.swathbook.rules.Finding;
import org.swathbook.rules.Severity;
import org.swathbook.rules.TankOffers;
import org.swathbook.season.SeasonWalk;

/** Soil sites that the demo book's house can ask of a first layer; it names two. */
final class SoilOffersTest {

  /**
   * What holds the weed by itself decides, after traits, soil and listed resistance.
   *
   * <ul>
   *   <li>ND-2, giant ragweed in corn: atrazine holds it, and isoxaflutole, mesotrione and
   *       saflufenacil in part. Of site 2 only cloransulam would, which is not for corn.
   *   <li>OB-1, the same in soybean, where it resists site 2: metribuzin in part, and nothing else.
   *   <li>OB-2, shattercane in corn: no site holds more of it than 60 %.
   *   <li>Palmer amaranth, velvetleaf and kochia meet many.
   * </ul>
   *
   * <p>Source: responses before emergence, from memory, as in the catalog.
   */
  @ParameterizedTest
  @CsvSource({
    "ND-2, AMBTR, 1",
    "OB-1, AMBTR, 1",
    "OB-2, SORVU, 1",
    "ND-1, AMAPA, 2",
    "ND-4, ABUTH, 2",
    "QH-1, AMAPA, 2",
    "QH-3, KCHSC, 2"
  })
  void asManyAsHoldTheWeedByThemselves(String field, String weed, int asked) {
    assertThat(asked(field, weed, 2)).isEqualTo(asked);
  }

  @ParameterizedTest
  @CsvSource({"ND-2, AMBTR, 5", "OB-1, AMBTR, ", "OB-2, SORVU, "})
  void theSitesThemselves(String field, String weed, String sites) {
    var named = new TreeSet<Site>();
    if (sites != null) {
      named.add(Site.find(sites).orElseThrow());
    }
    assertThat(offers(field).soilSites(pressure(field, weed))).isEqualTo(named);
  }

  @Test
  void aPassWithoutALayerOwesNothing() {
    assertThat(asked("ND-2", "AMBTR", 0)).isZero();
  }

  /**
   * Atrazine at 2 lb, with what holds in part beside it, is all the layer that giant ragweed can
   * get in corn: the house takes it, and a note says why there are no two. Where two can be had it
   * warns.
   */
  @Test
  void aLayerOfAllThatCanBeHadMeetsTheHouseRule() {
    Judgement layer =
        judged("ND-2", -8, "atrazine-4sc", "4 pt/acre", "bicyclopyrone-1.67sl", "3.4 fl oz/acre");

    assertThat(layer.brokenNames()).doesNotContain(HouseRuleCheck.MIN_SOIL_SITES);
    assertThat(ofSoilSites(layer))
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.severity()).isEqualTo(Severity.NOTE);
              assertThat(f.message())
                  .startsWith("Giant ragweed meets one effective soil site (site 5: ")
                  .endsWith(
                      "; the house asks for 2, and the catalog has no other that holds it by itself"
                          + " in this crop, trait and soil.");
              assertThat(f.remedy())
                  .isEqualTo(
                      "partners that hold it in part, and other sites on the leaves of what comes up"
                          + " through the layer");
            });
    Judgement alone = judged("ND-3", 0, "acetochlor-6.4ec", "2 pt/acre");
    assertThat(alone.brokenNames()).contains(HouseRuleCheck.MIN_SOIL_SITES);
    assertThat(ofSoilSites(alone))
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.severity()).isEqualTo(Severity.WARN);
              assertThat(f.remedy()).startsWith("a partner of site 2 or 3 or 14");
            });
  }

  private static List<Finding> ofSoilSites(Judgement judged) {
    return judged.findings().stream()
        .filter(f -> f.rule().value().equals("single-site") && f.message().contains("soil site"))
        .toList();
  }

  private static Judgement judged(String fieldId, int day, String... productsAndRates) {
    List<Dose> doses = new ArrayList<>();
    for (int i = 0; i < productsAndRates.length; i += 2) {
      Product product = DemoFields.BOOK.catalog().findProduct(productsAndRates[i]).orElseThrow();
      doses.add(
          Doses.ofProduct(DemoFields.BOOK.catalog(), product, Rate.parse(productsAndRates[i + 1])));
    }
    Field field = DemoFields.field(fieldId);
    TraceSet traces = DemoFields.traces(field);
    Program program =
        new Program(
            "layer", field.id(), List.of(new Pass(new Anchor.FromPlanting(day), Mix.of(doses))));
    return ProgramJudge.judge(
        DemoFields.BOOK,
        traces,
        SeasonWalk.walk(DemoFields.BOOK, traces, program),
        LocalDate.of(2027, 3, 1));
  }

  private static int asked(String field, String weed, int wanted) {
    return offers(field).soilSitesAsked(pressure(field, weed), wanted);
  }

  private static TankOffers offers(String fieldId) {
    return new TankOffers(DemoFields.BOOK, traces(fieldId));
  }

  private static TraceSet traces(String fieldId) {
    Field field = DemoFields.field(fieldId);
    return DemoFields.traces(field);
  }

  private static WeedPressure pressure(String fieldId, String weedId) {
    return traces(fieldId).weeds().stream()
        .filter(w -> w.weed().id().value().equals(weedId))
        .findFirst()
        .orElseThrow();
  }
}
