package org.swathbook.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.swathbook.catalog.Movement;
import org.swathbook.catalog.Position;
import org.swathbook.check.DatedMix;
import org.swathbook.measure.Basis;
import org.swathbook.testing.FieldBuilder;
import org.swathbook.testing.IngredientBuilder;
import org.swathbook.testing.UseBuilder;

/** A grower who sprays on the printed dates must keep the interval, and so must the median year. */
class RepeatIntervalTest {

  private static final CaseBook BOOK =
      CaseBook.of(FieldBuilder.of("R-1", "soybean", "2027-05-11").traits("2,4-D"))
          .active(
              IngredientBuilder.of("2,4-D choline", 4, Movement.SYSTEMIC, Basis.AE)
                  .foliar(1)
                  .use(
                      UseBuilder.of("soybean", Position.POST)
                          .through("VE", "R1")
                          .traits("2,4-D")
                          .rate("0.95 lb ae/acre")
                          .repeatDays(12)));

  private static DatedMix pass(int index, String median, String planned) {
    DatedMix on = BOOK.pass(index, median, "2,4-D choline", "0.95 lb ae/acre");
    return new DatedMix(index, on.date(), LocalDate.parse(planned), on.positions(), on.mix());
  }

  private static boolean isBlocked(DatedMix first, DatedMix second) {
    return BOOK.sequence(first, second).sorted().stream()
        .anyMatch(f -> f.rule().value().equals("repeat-interval"));
  }

  @Test
  void printedDatesTooCloseAreBlocked() {
    assertThat(isBlocked(pass(0, "2027-06-01", "2027-06-01"), pass(1, "2027-06-13", "2027-06-12")))
        .isTrue();
  }

  @Test
  void medianDaysTooCloseAreBlocked() {
    assertThat(isBlocked(pass(0, "2027-06-02", "2027-06-01"), pass(1, "2027-06-13", "2027-06-13")))
        .isTrue();
  }

  @Test
  void bothTwelveDaysApartAreNot() {
    assertThat(isBlocked(pass(0, "2027-06-01", "2027-06-01"), pass(1, "2027-06-13", "2027-06-13")))
        .isFalse();
  }
}
