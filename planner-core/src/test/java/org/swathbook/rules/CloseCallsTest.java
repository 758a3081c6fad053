package org.swathbook.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.swathbook.catalog.Movement;
import org.swathbook.catalog.Position;
import org.swathbook.measure.Basis;
import org.swathbook.testing.IngredientBuilder;
import org.swathbook.testing.MixCase;
import org.swathbook.testing.Sky;
import org.swathbook.testing.UseBuilder;

/** Remembered limits that nearly decide: 2,4-D choline, weeds to 6 in and 12 days between. */
class CloseCallsTest {

  private static MixCase choline() {
    return MixCase.in("soybean", "2,4-D", "glyphosate")
        .day(24, "V2", 5)
        .tank("2,4-D choline 0.95 ae");
  }

  private static List<String> warned(MixCase job) {
    return job.findings().stream()
        .filter(f -> f.rule().value().equals("value-from-memory"))
        .filter(f -> f.severity() == Severity.WARN)
        .map(f -> f.actual() + " of " + f.limit())
        .toList();
  }

  @Test
  void aDriverWeedOfNearlyTheTallestHeightIsWarnedOf() {
    assertThat(warned(choline().weed("AMAPA", 5.4))).containsExactly("5.4 in of 6 in");
    assertThat(warned(choline().weed("AMAPA", 5.3))).isEmpty();
    assertThat(warned(choline().weed("AMAPA", 6.1))).isEmpty();
  }

  @Test
  void daysBetweenTwoApplicationsThatAreNearlyTooFewAreWarnedOf() {
    assertThat(warned(choline().applied(12, "2,4-D choline 0.7 ae")))
        .containsExactly("12 days of 12 days");
    assertThat(warned(choline().applied(10, "2,4-D choline 0.7 ae"))).isEmpty();
  }

  /** Fluthiacet-methyl: an hour without rain, from memory. */
  @Test
  void rainThatComesOnlyJustLateEnoughIsWarnedOf() {
    assertThat(warned(dry(RAINFAST_H))).containsExactly("1 h of 1 h");
    assertThat(warned(dry(1.1 * RAINFAST_H))).containsExactly("1.1 h of 1 h");
    assertThat(warned(dry(1.2 * RAINFAST_H))).isEmpty();
    assertThat(warned(dry(0.9 * RAINFAST_H))).isEmpty();
  }

  private static final double RAINFAST_H = 1;

  private static MixCase dry(double hours) {
    return MixCase.in("soybean")
        .day(24, "V2", 5)
        .tank("fluthiacet-methyl 0.0064 ai")
        .weed("ABUTH", 1)
        .sky(Sky.fair().rain(hours, 0.1));
  }

  /** A fall burndown for next season under a label of this year. */
  @Test
  void aLabelOfTheYearBeforeTheSeasonIsOldBeforeItHasRunOut() {
    assertThat(stale(2026)).containsExactly(Severity.WARN);
    assertThat(stale(2027)).isEmpty();
    assertThat(stale(2025)).isEmpty();
  }

  private static List<Severity> stale(int lastYear) {
    CaseBook book =
        SeasonCases.soybean()
            .active(
                IngredientBuilder.of("labelled", 9, Movement.SYSTEMIC, Basis.AE)
                    .foliar(1)
                    .use(
                        UseBuilder.of(
                                "soybean", Position.FALL, Position.BURNDOWN, Position.PREPLANT)
                            .before("", "emergence")
                            .traits()
                            .rate("0.75-1.13 lb ae/acre")
                            .plantingDays(0)
                            .labelYears(2025, lastYear)));
    return SeasonCase.of(book)
        .pass("2026-10-20", book.mix("labelled", "1 lb ae/acre"))
        .judge()
        .findings()
        .stream()
        .filter(f -> f.rule().value().equals("catalog-stale"))
        .map(Finding::severity)
        .toList();
  }
}
