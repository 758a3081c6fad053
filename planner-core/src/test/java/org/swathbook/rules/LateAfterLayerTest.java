package org.swathbook.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.swathbook.rules.SeasonCases.soybean;
import static org.swathbook.rules.SeasonCases.weed;

import java.time.LocalDate;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.swathbook.book.DriverKind;

/**
 * A layer that holds on the day the crop comes up moves the critical time of removal (Knezevic et
 * al. 2003, residuals delay it); one that is over by then, or comes later, does not.
 */
class LateAfterLayerTest {
  private static int emergence;

  /** Late by itself, and in time behind a layer. */
  private static LocalDate between = LocalDate.EPOCH;

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
    while (!isLate(layer ? at(date).layer("AMAPA", emergence - 5, emergence + 5) : at(date))) {
      date = date.plusDays(1);
    }
    return date;
  }

  @BeforeAll
  static void findTheDay() {
    emergence = book().traces().years().get(0).emergenceDay();
    between = firstLate(false);
  }

  /** Two leaf stages later in the catalog of these cases, so about a week. */
  @Test
  void aLayerGivesAFewDaysMore() {
    assertThat(firstLate(true)).isBetween(between.plusDays(4), between.plusDays(14));
  }

  @ParameterizedTest
  @CsvSource({"-20, 0, false", "0, 20, false", "-20, -1, true", "1, 20, true"})
  void itHasToHoldOnTheVeryDay(int from, int to, boolean late) {
    assertThat(isLate(at(between).layer("AMAPA", emergence + from, emergence + to)))
        .isEqualTo(late);
  }
}
