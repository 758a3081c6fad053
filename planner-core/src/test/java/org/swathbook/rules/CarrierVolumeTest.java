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
import org.swathbook.program.Mix;
import org.swathbook.testing.IngredientBuilder;
import org.swathbook.testing.MixCase;

/**
 * Least, advised and highest spray volume of a label, and the volume that serves the whole tank.
 */
class CarrierVolumeTest {
  private static IngredientBuilder active(String name) {
    return IngredientBuilder.of(name, 2, Movement.SYSTEMIC, Basis.AI)
        .foliar(1)
        .use(post("0.1-1 lb ai/acre"));
  }

  private static CaseBook book() {
    return soybean()
        .active(active("narrow").volumes(10, 15, 20))
        .active(active("wet").volumes(18, 22, 40))
        .active(active("wetter").volumes(25, 30, 40));
  }

  private static List<Finding> said(double gallons, String... tank) {
    CaseBook book = book();
    Mix mix = book.mix(tank);
    return SeasonCase.of(book)
        .pass("2027-06-10", new Mix(mix.doses(), mix.adjuvants(), OptionalDouble.of(gallons)))
        .judge()
        .findings()
        .stream()
        .filter(f -> f.rule().value().equals("carrier-volume"))
        .toList();
  }

  @ParameterizedTest
  @CsvSource({"9.9,BLOCK", "10,WARN", "14.9,WARN", "20.1,BLOCK"})
  void outsideOfALabel(double gallons, Severity severity) {
    assertThat(said(gallons, "narrow", "0.1 lb ai/acre"))
        .extracting(Finding::severity)
        .containsExactly(severity);
  }

  @ParameterizedTest
  @CsvSource({"15", "17.5", "20"})
  void insideOfALabel(double gallons) {
    assertThat(said(gallons, "narrow", "0.1 lb ai/acre")).isEmpty();
  }

  /** 18 are the least of one and 20 the most of the other; the 22 that are advised do not fit. */
  @Test
  void theRemedyServesTheWholeTank() {
    assertThat(said(12, "narrow", "0.1 lb ai/acre", "wet", "0.1 lb ai/acre"))
        .extracting(Finding::remedy)
        .containsOnly("spray 20 gal/acre");
  }

  @Test
  void labelsThatHaveNoVolumeInCommonNeedTwoPasses() {
    assertThat(said(12, "narrow", "0.1 lb ai/acre", "wetter", "0.1 lb ai/acre"))
        .extracting(Finding::remedy)
        .containsOnly("two passes: no volume is within all labels of this tank");
  }

  /** 1200 gal at 15 gal/acre. */
  @Test
  void theRemedySaysWhatALoadThenCovers() {
    assertThat(
            MixCase.in("soybean")
                .day(-40, "", 0)
                .tank("saflufenacil 0.022 ai")
                .gallons(10)
                .findings())
        .filteredOn(f -> f.rule().value().equals("carrier-volume"))
        .extracting(Finding::remedy)
        .containsExactly("spray 15 gal/acre; a load of 1200 gal then covers 80 acres");
  }
}
