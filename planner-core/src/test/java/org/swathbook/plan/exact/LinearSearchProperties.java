package org.swathbook.plan.exact;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.OptionalInt;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import net.jqwik.api.statistics.Statistics;

/** The branch and bound on linear plans, held against a look at every program. */
class LinearSearchProperties {

  @Property(tries = 100)
  void noProgramIsCheaper(@ForAll long seed) {
    compare(seed);
  }

  @Property(tries = 5000)
  @Tag("slow")
  void noneOfThousandsIsCheaper(@ForAll long seed) {
    compare(seed);
  }

  private static void compare(long seed) {
    double share = Math.floorMod(seed, 7) / 7.0;
    LinearPlan plan = LinearInstance.draw(seed, 4, 6, 2, 3, share);
    OptionalInt cheapest = new EveryLinearProgram(plan).cheapest();

    LinearSearch.Result found = LinearSearch.cheapest(plan, EnumSet.allOf(Pruning.class));

    assertThat(found.cents()).isEqualTo(cheapest);
    found.tanks().ifPresent(tanks -> holds(plan, tanks, cheapest.orElseThrow()));
    for (Pruning off : Pruning.values()) {
      if (off != Pruning.GAIN || seed % 5 == 0) {
        assertThat(LinearSearch.cheapest(plan, EnumSet.complementOf(EnumSet.of(off))).cents())
            .as("without " + off)
            .isEqualTo(cheapest);
      }
    }
    Statistics.label("some program meets the needs").collect(cheapest.isPresent());
  }

  private static void holds(LinearPlan plan, int[] program, int cents) {
    LinearTanks tanks = new LinearTanks(plan);
    assertThat(tanks.cents(program)).isEqualTo(cents);
    assertThat(tanks.meets(program)).isTrue();
    assertThat(tanks.areLegal(program)).isTrue();
    assertThat(Arrays.stream(program).map(t -> tanks.date[t]).distinct().count())
        .isEqualTo(program.length)
        .isLessThanOrEqualTo(plan.maxPasses());
  }
}
