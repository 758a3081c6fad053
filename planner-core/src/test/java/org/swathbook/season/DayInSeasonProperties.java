package org.swathbook.season;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.swathbook.catalog.WeedId;
import org.swathbook.program.Anchor;
import org.swathbook.program.Mix;
import org.swathbook.program.Pass;
import org.swathbook.season.RandomPrograms.Plan;
import org.swathbook.season.outcome.PassWeed;
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
      assertThat(day.sites(mix, weeds(kernel)))
          .isEqualTo(sites(whole(kernel, before, date, mix), before.size()));
    }
  }

  @Property(tries = 100)
  void whatComesLaterChangesNoSiteOfATank(@ForAll long seed) {
    Random random = new Random(seed);
    Kernel kernel = Kernels.of(RandomPrograms.field(random));
    LocalDate planted = kernel.traces().field().plantDate();
    List<DayInSeason.Made> made = new ArrayList<>();
    for (Plan p : RandomPrograms.plans(random, 4)) {
      made.add(new DayInSeason.Made(planted.plusDays(p.day()), p.mix()));
    }
    Plan last = RandomPrograms.plan(random);
    made.add(new DayInSeason.Made(planted.plusDays(last.day()), last.mix()));
    made.sort(Comparator.comparing(DayInSeason.Made::date));
    WalkedPasses whole = SeasonWalk.sumsMade(Fixtures.book(), kernel, passes(made)).walkedPasses();
    for (int p = 0; p < made.size(); p++) {
      DayInSeason day =
          DayInSeason.of(Fixtures.book(), kernel, made.subList(0, p), made.get(p).date());
      assertThat(day.sites(made.get(p).mix(), weeds(kernel))).isEqualTo(sites(whole, p));
    }
  }

  private static List<WeedId> weeds(Kernel kernel) {
    return kernel.traces().weeds().stream().map(w -> w.weed().id()).toList();
  }

  private static Map<WeedId, SitesMet.OfPass> sites(WalkedPasses walked, int at) {
    return walked.passes().get(at).weeds().stream()
        .collect(
            Collectors.toMap(
                PassWeed::weed, w -> new SitesMet.OfPass(w.stands(), w.foliar(), w.soil())));
  }

  private static List<Pass> passes(List<DayInSeason.Made> made) {
    List<Pass> passes = new ArrayList<>();
    made.forEach(m -> passes.add(new Pass(new Anchor.OnDate(m.date()), m.mix())));
    return passes;
  }

  private static WalkedPasses whole(
      Kernel kernel, List<DayInSeason.Made> before, LocalDate date, Mix mix) {
    List<Pass> passes = passes(before);
    passes.add(new Pass(new Anchor.OnDate(date), mix));
    return SeasonWalk.sumsMade(Fixtures.book(), kernel, passes).walkedPasses();
  }
}
