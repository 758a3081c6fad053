package org.swathbook.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.swathbook.rules.SeasonCases.soybean;
import static org.swathbook.rules.SeasonCases.weed;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.swathbook.book.DriverKind;

/**
 * A layer that holds on the day the crop comes up moves the critical time of removal (Knezevic et
 * al. 2003, residuals delay it); one that is over by then, or comes later, does not.
 */
class LateAfterLayerTest {
  private static final int EMERGENCE = book().traces().years().get(0).emergenceDay();

  /** Late by itself, and in time behind a layer. */
  private static final LocalDate BETWEEN = firstLate(false);

  private static CaseBook book() {
    return soybean(weed("AMAPA", 80, DriverKind.YES, 0));
  }

  private static SeasonCase at(LocalDate date) {
    CaseBook book = book();
    SeasonCase s = SeasonCase.of(book);
    return s.pass(
        date.toString(),
        book.mix("glyphosate", "1.13 lb ae/acre"),
        s.standing("AMAPA", 40, 3, s.site("glyphosate", "AMAPA", 95)));
  }

  private static boolean isLate(SeasonCase s) {
    return s.judge().findings().stream().anyMatch(f -> f.rule().value().equals("late-first-pass"));
  }

  private static LocalDate firstLate(boolean layer) {
    LocalDate date = LocalDate.parse("2027-05-24");
    while (!isLate(layer ? at(date).layer("AMAPA", EMERGENCE - 5, EMERGENCE + 5) : at(date))) {
      date = date.plusDays(1);
    }
    return date;
  }

  /** Two leaf stages later in the catalog of these cases, so about a week. */
  @Test
  void aLayerGivesAFewDaysMore() {
    assertThat(firstLate(true)).isBetween(BETWEEN.plusDays(4), BETWEEN.plusDays(14));
  }

  @ParameterizedTest
  @CsvSource({"-20, 0, false", "0, 20, false", "-20, -1, true", "1, 20, true"})
  void itHasToHoldOnTheVeryDay(int from, int to, boolean late) {
    assertThat(isLate(at(BETWEEN).layer("AMAPA", EMERGENCE + from, EMERGENCE + to)))
        .isEqualTo(late);
  }
}
