package org.swathbook.plan.draft;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.statistics.Statistics;
import org.swathbook.book.Book;
import org.swathbook.plan.DemoCopy;
import org.swathbook.plan.PlanGround;
import org.swathbook.plan.choice.DateGrid;
import org.swathbook.plan.choice.PlanWishes;
import org.swathbook.program.Anchor;
import org.swathbook.program.Mix;
import org.swathbook.program.Pass;
import org.swathbook.season.Kernel;
import org.swathbook.testing.BookParts;
import org.swathbook.testing.Restated;

/**
 * Drafts of few passes on days drawn close together: legal are those that were legal without a
 * distance and keep it, also from what is made.
 */
class PassesApartProperties {
  private static final int CLOSE_DAYS = 30;

  private static final PlanGround FREE = new PlanGround(house(0), "ND-1");
  private static final Legality RULES = new Legality(FREE.book, FREE.traces, grid());

  private static Book house(int days) {
    Book demo = DemoCopy.inMemory();
    return BookParts.of(demo)
        .house(Restated.with(demo.house(), "minDaysBetweenPasses", days))
        .whole();
  }

  private static DateGrid grid() {
    return FREE.space.grid();
  }

  @Property(tries = 200)
  void theDistanceIsAskedBesideTheRulesAndNothingElse(
      @ForAll @IntRange(max = 20) int days, @ForAll long seed) {
    Random random = new Random(seed);
    List<Stop> stops = new ArrayList<>();
    int first = random.nextInt(grid().size() - CLOSE_DAYS);
    for (int i = 1 + random.nextInt(3); i > 0; i--) {
      int date = first + random.nextInt(CLOSE_DAYS);
      List<Integer> legal = FREE.space.legalOn(date);
      if (stops.stream().noneMatch(s -> s.date() == date) && !legal.isEmpty()) {
        stops.add(new Stop(date, List.of(legal.get(random.nextInt(legal.size())))));
      }
    }
    Draft draft = new Draft(stops);
    List<LocalDate> made =
        random.nextBoolean() ? List.of(grid().date(first)) : List.<LocalDate>of();
    boolean free = evaluator(house(0), made).legal(draft);
    assertThat(evaluator(house(days), made).legal(draft))
        .isEqualTo(free && fewestDays(draft, made) >= days);
    Statistics.label("the distance alone refuses")
        .collect(free && fewestDays(draft, made) < days)
        .coverage(c -> c.check(true).percentage(p -> p > 5));
    Statistics.label("a legal draft of several passes")
        .collect(free && stops.size() + made.size() > 1 && fewestDays(draft, made) >= days)
        .coverage(c -> c.check(true).percentage(p -> p > 5));
  }

  private static FieldEvaluator evaluator(Book book, List<LocalDate> made) {
    PlanSpace space =
        new PlanSpace(
            FREE.traces.field(),
            book.house(),
            grid(),
            FREE.space.options(),
            (o, date) -> FREE.space.legalOn(date).contains(o.index()),
            (a, b, date) -> true);
    List<Pass> passes =
        made.stream()
            .map(d -> new Pass(new Anchor.Made(d), Mix.of(List.of(space.option(0).dose()))))
            .toList();
    return new FieldEvaluator(
        book, Kernel.of(book, FREE.traces), space, RULES, PlanWishes.NONE, passes);
  }

  /** Between any two of which one is to come; a great many where there are no two. */
  private static long fewestDays(Draft draft, List<LocalDate> made) {
    List<LocalDate> days = new ArrayList<>(made);
    draft.stops().forEach(s -> days.add(FREE.traces.field().plantDate().plusDays(s.date() - 30)));
    Collections.sort(days);
    long out = Long.MAX_VALUE;
    for (int i = 1; i < days.size(); i++) {
      out = Math.min(out, ChronoUnit.DAYS.between(days.get(i - 1), days.get(i)));
    }
    return out;
  }
}
