package org.swathbook.plan.draft;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** A draft is what it holds, in whatever order it was put together. */
class DraftProperties {

  @Provide
  Arbitrary<List<Stop>> stops() {
    Arbitrary<Integer> option = Arbitraries.integers().between(0, 40);
    return Arbitraries.integers()
        .between(0, 30)
        .list()
        .uniqueElements()
        .ofMaxSize(4)
        .flatMap(
            dates ->
                option
                    .list()
                    .ofMinSize(0)
                    .ofMaxSize(4)
                    .list()
                    .ofSize(dates.size())
                    .map(
                        tanks -> {
                          List<Stop> out = new ArrayList<>();
                          for (int i = 0; i < dates.size(); i++) {
                            out.add(new Stop(dates.get(i), tanks.get(i)));
                          }
                          return out;
                        }));
  }

  @Property
  void theOrderOfPassesAndDosesDoesNotMatter(@ForAll("stops") List<Stop> stops, @ForAll long seed) {
    List<Stop> shuffled = new ArrayList<>();
    Random random = new Random(seed);
    for (Stop s : stops) {
      List<Integer> tank = new ArrayList<>(s.options());
      Collections.shuffle(tank, random);
      shuffled.add(new Stop(s.date(), tank));
    }
    Collections.shuffle(shuffled, random);

    assertThat(new Draft(shuffled)).isEqualTo(new Draft(stops)).hasSameHashCodeAs(new Draft(stops));
    assertThat(new Draft(shuffled).key()).isEqualTo(new Draft(stops).key());
  }

  @Property
  void anEmptyTankIsNoPass(@ForAll("stops") List<Stop> stops) {
    assertThat(new Draft(stops).stops()).noneMatch(s -> s.options().isEmpty());
    assertThat(new Draft(stops).stops())
        .isSortedAccordingTo(java.util.Comparator.comparingInt(Stop::date));
  }
}
