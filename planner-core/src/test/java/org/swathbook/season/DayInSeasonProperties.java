package org.swathbook.season;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.swathbook.program.Anchor;
import org.swathbook.program.Mix;
import org.swathbook.program.Pass;
import org.swathbook.program.Program;
import org.swathbook.season.RandomPrograms.Plan;
import org.swathbook.season.outcome.WalkedPasses;
import org.swathbook.testing.Fixtures;

/**
 * A tank on its day is told as the walk of the whole season tells it, whatever was tried before.
 */
class DayInSeasonProperties {

  @Property(tries = 200)
  void everyTankIsToldAsTheWholeWalkTellsIt(@ForAll long seed) {
    Random random = new Random(seed);
    Kernel kernel = Kernels.of(RandomPrograms.field(random));
    LocalDate planted = kernel.traces().field().plantDate();
    List<Plan> plans = RandomPrograms.plans(random, 3);
    plans.add(RandomPrograms.plan(random));
    plans.sort((a, b) -> Integer.compare(a.day(), b.day()));
    Plan last = plans.remove(plans.size() - 1);
    LocalDate date = planted.plusDays(last.day());
    List<DayInSeason.Made> before =
        plans.stream().map(p -> new DayInSeason.Made(planted.plusDays(p.day()), p.mix())).toList();
    DayInSeason day = DayInSeason.of(Fixtures.book(), kernel, before, date);
    for (Mix mix : List.of(last.mix(), RandomPrograms.plan(random).mix(), last.mix())) {
      assertThat(day.with(mix)).isEqualTo(whole(kernel, before, date, mix));
    }
  }

  private static WalkedPasses whole(
      Kernel kernel, List<DayInSeason.Made> before, LocalDate date, Mix mix) {
    List<Pass> passes = new ArrayList<>();
    before.forEach(m -> passes.add(new Pass(new Anchor.OnDate(m.date()), m.mix())));
    passes.add(new Pass(new Anchor.OnDate(date), mix));
    return SeasonWalk.walkMade(
            Fixtures.book(), kernel, new Program("all", kernel.traces().field().id(), passes))
        .walkedPasses();
  }
}
