package org.swathbook.plan.draft;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.ConcurrentHashMap;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.statistics.Statistics;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.growth.Timings;
import org.swathbook.growth.TraceBuilder;
import org.swathbook.growth.TraceSet;
import org.swathbook.plan.DemoCopy;
import org.swathbook.plan.choice.DateGrid;
import org.swathbook.plan.choice.DoseLegality;
import org.swathbook.plan.choice.DoseOption;
import org.swathbook.plan.choice.OptionMaker;

/** Two doses judged on one day are judged alike on any other day on which the same uses speak. */
class PairsByUseProperties {
  private static final Book DEMO = DemoCopy.inMemory();

  /** Kept from try to try, so that most questions are answered by what was asked before. */
  private static final Map<String, Ground> KEPT = new ConcurrentHashMap<>();

  private record Ground(
      TraceSet traces, DateGrid grid, List<DoseOption> options, Legality legality) {}

  @Property(tries = 1000)
  void pairsAreJudgedAsOnThatVeryDay(@ForAll long seed) {
    Random random = new Random(seed);
    // Few fields and a stretch of options, so that the same two doses come again on other days.
    Field field = DEMO.fields().get(random.nextInt(3));
    Ground ground = KEPT.computeIfAbsent(field.id().toString(), id -> ground(field));
    int date = random.nextInt(ground.grid().size());
    int first = random.nextInt(ground.options().size());
    DoseOption a = ground.options().get(first);
    DoseOption b = ground.options().get((first + 1 + random.nextInt(12)) % ground.options().size());
    boolean anew =
        new DoseLegality(DEMO, ground.traces())
            .allows(a.dose(), b.dose(), Timings.at(ground.traces(), ground.grid().date(date)));
    assertThat(ground.legality().allows(a, b, date))
        .as(field.id() + " " + ground.grid().date(date) + " " + a + " " + b)
        .isEqualTo(anew);
    Statistics.label("pairs").collect(anew ? "let pass" : "refused");
  }

  private static Ground ground(Field field) {
    TraceSet traces = TraceBuilder.build(DEMO, field);
    DateGrid grid = new DateGrid(field, DEMO.house().dateStepDays());
    return new Ground(
        traces, grid, OptionMaker.make(DEMO, field).options(), new Legality(DEMO, traces, grid));
  }
}
