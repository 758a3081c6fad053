package org.swathbook.control;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.swathbook.growth.SeasonTrace;
import org.swathbook.growth.Timings;
import org.swathbook.growth.TraceBuilder;
import org.swathbook.growth.TraceSet;
import org.swathbook.testing.DemoBook;

/** Cold days about a pass, counted again day by day from the demo book's weather. */
class ColdDaysTest {
  private static final TraceSet TRACES =
      TraceBuilder.build(DemoBook.BOOK, DemoBook.BOOK.findField("QH-2").orElseThrow());

  @Test
  void theShareIsThatOfTheDaysNoMoreThanThreeFromThePass() {
    ColdDays cold = ColdDays.of(TRACES);
    boolean some = false;
    for (LocalDate date = LocalDate.of(2027, 3, 10);
        date.isBefore(LocalDate.of(2027, 6, 20));
        date = date.plusDays(5)) {
      var timing = Timings.at(TRACES, date);
      int all = 0;
      int met = 0;
      for (int y = 0; y < TRACES.years().size(); y++) {
        SeasonTrace trace = TRACES.years().get(y);
        for (int d = -3; d <= 3; d++) {
          all++;
          met += isCold(trace, timing.years().get(y).day() + d) ? 1 : 0;
        }
      }
      assertThat(cold.about(timing)).isCloseTo((double) met / all, within(1e-12));
      assertThat(cold.isMostly(timing)).isEqualTo(2 * met > all);
      some |= met > 0 && met < all;
    }
    assertThat(some).as("a share between none and all").isTrue();
  }

  /** 60 F is 15.56 C, 40 F is 4.44 C. */
  private static boolean isCold(SeasonTrace trace, int day) {
    return trace.weather(day).tmaxC() < (60 - 32) / 1.8
        || trace.weather(day).tminC() < (40 - 32) / 1.8;
  }

  /** March on the plains is cold, and the second half of June is not. */
  @Test
  void marchIsColdAndJuneIsNot() {
    ColdDays cold = ColdDays.of(TRACES);
    assertThat(cold.isMostly(Timings.at(TRACES, LocalDate.of(2027, 3, 10)))).isTrue();
    assertThat(cold.isMostly(Timings.at(TRACES, LocalDate.of(2027, 6, 15)))).isFalse();
  }
}
