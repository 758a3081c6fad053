package org.swathbook.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.swathbook.plan.climb.Search;
import org.swathbook.plan.climb.Surroundings;
import org.swathbook.plan.draft.Delay;
import org.swathbook.plan.draft.Draft;
import org.swathbook.plan.draft.Goal;
import org.swathbook.plan.draft.Stop;
import org.swathbook.plan.draft.Walked;

/** What is found around the top of a hill, on a dry field of sorghum of the demo book. */
class ImprovingTest {
  private PlanGround ground;
  private Search search;

  @BeforeEach
  void climb(@TempDir Path folder) {
    ground = new PlanGround(new DemoCopy(folder.resolve("book")).load(), "QH-3");
    search = ground.search();
    for (Draft start : ground.starts.all()) {
      search.climb(start, ground.space.maxPasses());
    }
  }

  @Test
  void whereNothingBetterIsFoundItStopsWithWhatItHad() {
    Walked before = search.best().orElseThrow();
    List<Set<Stop>> asked = new ArrayList<>();
    improve(
        passes -> {
          asked.add(Set.copyOf(passes));
          return Optional.empty();
        });
    assertThat(asked).isNotEmpty().hasSizeLessThanOrEqualTo(20);
    assertThat(asked).allMatch(passes -> passes.size() <= Effort.USUAL.combined().passes());
    assertThat(asked.get(0)).containsAll(before.draft().stops());
    // Neighbours are walked on the way, and may be better themselves.
    assertThat(Goal.BEST.compare(search.best().orElseThrow(), before)).isLessThanOrEqualTo(0);
  }

  @Test
  void combiningNeverLosesTheBestAndFindsWhatNoClimbFound() {
    Walked before = search.best().orElseThrow();
    List<Walked> found = new ArrayList<>();
    Delay delay = new Delay(ground.space, ground.evaluator);
    improve(
        passes -> {
          Optional<Walked> w =
              Combining.soon(
                      ground.book,
                      ground.space,
                      ground.evaluator,
                      delay,
                      search.walked(),
                      passes,
                      Effort.USUAL)
                  .best();
          w.ifPresent(found::add);
          return w;
        });
    Walked after = search.best().orElseThrow();
    assertThat(found).isNotEmpty();
    assertThat(found).allMatch(w -> Goal.BEST.compare(after, w) <= 0);
    assertThat(Goal.BEST.compare(after, before)).isNegative();
    assertThat(after.broken()).isEmpty();
  }

  private void improve(Function<Set<Stop>, Optional<Walked>> combine) {
    new Improving(
            search,
            new Surroundings(
                search,
                ground.moves,
                ground.mending,
                ground.starts,
                ground.evaluator,
                ground.space.maxPasses(),
                Effort.USUAL.combined().walked()),
            combine,
            Effort.USUAL.combined())
        .run();
  }
}
