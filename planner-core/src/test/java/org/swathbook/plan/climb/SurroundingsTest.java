package org.swathbook.plan.climb;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.swathbook.plan.DemoCopy;
import org.swathbook.plan.PlanGround;
import org.swathbook.plan.draft.Draft;
import org.swathbook.plan.draft.Stop;
import org.swathbook.plan.draft.Walked;

/** The passes around a program, on one field of the demo book. */
class SurroundingsTest {
  private static final int WALKED = 200;

  private static PlanGround ground;
  private static Search search;
  private static Surroundings surroundings;
  private static Walked program;

  @BeforeAll
  static void climb(@TempDir Path folder) {
    ground = new PlanGround(new DemoCopy(folder.resolve("book")).load(), "QH-3");
    search = ground.search();
    surroundings =
        new Surroundings(
            search,
            new Moves(ground.space, ground.evaluator),
            ground.mending,
            ground.starts,
            ground.evaluator,
            ground.space.maxPasses(),
            WALKED);
    program = search.climb(ground.starts.all().get(0), ground.space.maxPasses()).orElseThrow();
  }

  @Test
  void itsOwnPassesComeFirst() {
    List<Stop> own = program.draft().stops();
    assertThat(own).isNotEmpty();
    assertThat(surroundings.of(List.of(program), 40)).startsWith(own.toArray(Stop[]::new));
    assertThat(surroundings.of(List.of(program), 1)).containsExactlyElementsOf(own);
  }

  @Test
  void everyOtherPassStandsInANeighbour() {
    Set<Draft> neighbours =
        new LinkedHashSet<>(new Moves(ground.space, ground.evaluator).of(program.draft()));
    neighbours.addAll(ground.mending.of(program));
    neighbours.addAll(ground.starts.withOneMorePass(program.draft(), Search.EARLY_POST));
    List<Stop> strange = new ArrayList<>(surroundings.of(List.of(program), 100));
    assertThat(strange).hasSize(100);
    strange.removeAll(program.draft().stops());
    strange.removeIf(s -> neighbours.stream().anyMatch(d -> d.stops().contains(s)));
    assertThat(strange).isEmpty();
  }

  @Test
  void everyPassMayBeReplacedAndOneMayBeAdded() {
    Set<Stop> around = surroundings.of(List.of(program), 100);
    for (Stop own : program.draft().stops()) {
      assertThat(around)
          .as("on the day of " + own)
          .anyMatch(s -> !s.equals(own) && s.date() == own.date());
    }
    assertThat(around).extracting(Stop::date).hasSizeGreaterThan(program.draft().stops().size());
  }

  @Test
  void theSameAgain() {
    assertThat(new ArrayList<>(surroundings.of(List.of(program), 60)))
        .isEqualTo(new ArrayList<>(surroundings.of(List.of(program), 60)));
  }
}
