package org.swathbook.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.swathbook.book.Book;
import org.swathbook.plan.choice.PlanWishes;
import org.swathbook.season.outcome.PassOutcome;
import org.swathbook.testing.BookParts;
import org.swathbook.testing.Restated;

/** Nobody is sent over a field again sooner than the house lets it: no program of a plan does. */
class PassesApartTest {
  private static final LocalDate WINTER = LocalDate.parse("2027-03-01");

  private static Book house(int days) {
    Book demo = DemoCopy.inMemory();
    return BookParts.of(demo)
        .house(Restated.with(demo.house(), "minDaysBetweenPasses", days))
        .whole();
  }

  /** Days from each pass to the next, of all programs that a plan names and of its front. */
  private static List<Long> gaps(Book book, String field) {
    FieldPlan plan =
        new Planner(book, PlanWishes.NONE, Effort.QUICK)
            .plan(book.findField(field).orElseThrow(), WINTER);
    List<List<LocalDate>> all = new ArrayList<>();
    plan.programs()
        .forEach(p -> all.add(p.outcome().passes().stream().map(PassOutcome::planned).toList()));
    plan.front()
        .forEach(p -> all.add(p.passes().stream().map(FrontProgram.Trip::planned).toList()));
    assertThat(all).isNotEmpty();
    return all.stream().flatMapToLong(PassesApartTest::gaps).boxed().toList();
  }

  private static LongStream gaps(List<LocalDate> days) {
    return LongStream.range(1, days.size())
        .map(i -> ChronoUnit.DAYS.between(days.get((int) i - 1), days.get((int) i)));
  }

  @ParameterizedTest
  @ValueSource(strings = {"QH-3", "OB-3", "OB-4"})
  void noProgramOfAPlanHasPassesNearerThanTheHouseLetsThem(String field) {
    assertThat(gaps(house(7), field)).isNotEmpty().allMatch(d -> d >= 7);
    assertThat(gaps(house(12), field)).isNotEmpty().allMatch(d -> d >= 12);
  }

  /** Without the rule a field gets passes within the week: there it binds. */
  @Test
  void withoutADistancePassesComeWithinDays() {
    assertThat(gaps(house(0), "QH-3")).anyMatch(d -> d < 7);
  }
}
