package org.swathbook.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.swathbook.rules.SeasonCases.post;
import static org.swathbook.rules.SeasonCases.soybean;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.swathbook.catalog.Movement;
import org.swathbook.measure.Basis;
import org.swathbook.program.Adjuvant;
import org.swathbook.program.Mix;
import org.swathbook.testing.IngredientBuilder;

/** What is said of adjuvants that are missing, refused, or cannot be had. */
class AdjuvantRulesTest {
  private static final String JUNE = "2027-06-10";

  private static IngredientBuilder active(String name, int site) {
    return IngredientBuilder.of(name, site, Movement.CONTACT, Basis.AI)
        .foliar(1)
        .use(post("0.1-1 lb ai/acre"));
  }

  private static CaseBook book() {
    return soybean()
        .active(active("oily", 1).needs("1 % v/v", false, "crop-oil", "methylated-seed-oil"))
        .active(active("dry", 10).refuses("crop-oil", "methylated-seed-oil"))
        .active(active("waxy", 14).refuses("crop-oil"));
  }

  private static List<Finding> said(CaseBook book, Mix mix, String rule) {
    return SeasonCase.of(book).pass(JUNE, mix).judge().findings().stream()
        .filter(f -> f.rule().value().equals(rule))
        .toList();
  }

  @Test
  void aMissingOilIsAWarningWithWhatToPour() {
    CaseBook book = book();

    assertThat(said(book, book.mix("oily", "0.1 lb ai/acre"), "adjuvant-needed"))
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.severity()).isEqualTo(Severity.WARN);
              assertThat(f.message())
                  .isEqualTo(
                      "The label of oily asks for crop-oil or methylated-seed-oil, 1 % v/v; it is"
                          + " not in the tank.");
              assertThat(f.remedy()).isEqualTo("crop-oil 1 % v/v, that is 1 gal in 100 gal");
            });
  }

  @Test
  void anyOfTheKindsWillDo() {
    CaseBook book = book();
    Mix mix = CaseBook.with(book.mix("oily", "0.1 lb ai/acre"), "methylated-seed-oil", "1 % v/v");

    assertThat(said(book, mix, "adjuvant-needed")).isEmpty();
  }

  /** Rounded to a jug it is enough. */
  @ParameterizedTest
  @CsvSource({
    "crop-oil,0.97 % v/v,1",
    "crop-oil,0.98 % v/v,0",
    "crop-oil,1 gal/100 gal,0",
    "crop-oil,3 qt/100 gal,1",
    "crop-oil,1 lb/100 gal,0",
    "crop-oil,as the label says,0",
    "methylated-seed-oil,0.5 % v/v,1"
  })
  void lessThanTheLabelAsksForIsAWarning(String kind, String rate, int warnings) {
    CaseBook book = book();
    Mix mix = CaseBook.with(book.mix("oily", "0.1 lb ai/acre"), kind, rate);

    assertThat(said(book, mix, "adjuvant-needed"))
        .hasSize(warnings)
        .allMatch(f -> f.severity() == Severity.WARN)
        .allMatch(f -> f.limit().equals("at least 1 gal in 100 gal"));
  }

  /** Each kind is held against its own rate, and one that is enough will do. */
  @ParameterizedTest
  @CsvSource({
    "nonionic-surfactant,0.25 % v/v,crop-oil,0.5 % v/v,0",
    "nonionic-surfactant,0.125 % v/v,crop-oil,1 % v/v,0",
    "nonionic-surfactant,0.125 % v/v,crop-oil,0.25 % v/v,1",
    "nonionic-surfactant,1 qt/100 gal,drift-reducer,0.25 % v/v,0",
    "crop-oil,0.25 % v/v,drift-reducer,0.25 % v/v,1"
  })
  void kindsWithRatesOfTheirOwn(
      String one, String rate, String other, String otherRate, int warnings) {
    CaseBook book =
        soybean()
            .active(
                active("either", 14)
                    .needsEach("crop-oil", "1 % v/v", "nonionic-surfactant", "0.25 % v/v"));
    Mix mix =
        new Mix(
            book.mix("either", "0.1 lb ai/acre").doses(),
            List.of(new Adjuvant(one, rate), new Adjuvant(other, otherRate)),
            OptionalDouble.empty());

    assertThat(said(book, mix, "adjuvant-needed"))
        .hasSize(warnings)
        .allSatisfy(
            f ->
                assertThat(f.message())
                    .startsWith(
                        "The label of either asks for crop-oil 1 % v/v or nonionic-surfactant"
                            + " 0.25 % v/v; there is less "));
  }

  @Test
  void aKindThatAPartnerLeavesIsTheRemedy() {
    CaseBook book = book();
    Mix mix = book.mix("oily", "0.1 lb ai/acre", "waxy", "0.1 lb ai/acre");

    assertThat(said(book, mix, "adjuvant-needed"))
        .extracting(Finding::remedy)
        .containsExactly("methylated-seed-oil 1 % v/v, that is 1 gal in 100 gal");
  }

  @Test
  void aNeedThatPartnersRefuseCannotBeMet() {
    CaseBook book = book();
    Mix mix = book.mix("oily", "0.1 lb ai/acre", "dry", "0.1 lb ai/acre");

    assertThat(said(book, mix, "adjuvant-needed"))
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.message())
                  .isEqualTo(
                      "The label of oily asks for crop-oil or methylated-seed-oil, 1 % v/v; dry"
                          + " refuses all that would do.");
              assertThat(f.actual()).isEqualTo("refused by a partner");
              assertThat(f.remedy()).contains("two passes");
            });
    assertThat(SeasonCase.of(book).pass(JUNE, mix).judge().tanks().get(0).unmet()).hasSize(1);
  }

  @Test
  void aRefusedOilBlocksAndTheOtherIsNamed() {
    CaseBook book = book();
    Mix mix =
        CaseBook.with(
            book.mix("oily", "0.1 lb ai/acre", "waxy", "0.1 lb ai/acre"), "crop-oil", "1 % v/v");

    assertThat(said(book, mix, "adjuvant-refused"))
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.severity()).isEqualTo(Severity.BLOCK);
              assertThat(f.message()).isEqualTo("The label of waxy refuses crop-oil in soybean.");
              assertThat(f.remedy())
                  .isEqualTo(
                      "leave crop-oil out; what the labels together ask for is"
                          + " methylated-seed-oil");
            });
  }
}
