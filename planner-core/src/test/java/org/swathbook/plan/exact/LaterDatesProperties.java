package org.swathbook.plan.exact;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** What further passes bring at most, held against all dates sorted by what they bring. */
class LaterDatesProperties {
  private static final int MOST_PASSES = 4;
  private static final int DRAWS = 50;

  @Property(tries = 8)
  void theBestDatesAfterEachAreCountedOnce(@ForAll long seed) {
    DrawnCandidates.of(seed)
        .ifPresent(
            drawn -> {
              for (int i = 0; i < DRAWS; i++) {
                compare(drawn.candidates(), drawn.random());
              }
            });
  }

  private static void compare(Candidates candidates, Random random) {
    int[] some = IntStream.range(0, candidates.size()).filter(c -> random.nextInt(4) > 0).toArray();
    double[] gain =
        DoubleStream.generate(() -> 10 * random.nextDouble() - 2).limit(some.length).toArray();
    int passes = random.nextInt(MOST_PASSES + 1);
    double[] after = LaterDates.after(candidates, some, gain, passes);

    assertThat(after).hasSize(candidates.dates());
    for (int date = 0; date < after.length; date++) {
      Double[] best = new Double[after.length];
      Arrays.fill(best, 0.0);
      for (int i = 0; i < some.length; i++) {
        int on = candidates.placeOfDate(some[i]);
        if (on > date) {
          best[on] = Math.max(best[on], gain[i]);
        }
      }
      List<Double> dearestFirst = Arrays.stream(best).sorted(Collections.reverseOrder()).toList();
      double most = dearestFirst.stream().limit(passes).mapToDouble(b -> b).sum();
      assertThat(after[date]).isCloseTo(most, within(1e-9));
    }
  }
}
