package org.swathbook.tank;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.swathbook.catalog.TankTerms.Rinse;
import org.swathbook.tank.LoadSequence.Demand;

/** Orders of loads beside every order with every clean-out. */
class LoadSequenceProperties {
  private static final int[] FILLINGS = {0, 1, 3, 4};
  private static final List<Rinse> RINSES = List.of(Rinse.values());
  private static final List<Demand> DEMANDS = List.of(Demand.values());
  private static final List<String> ACTIVES = List.of("a", "b", "c", "d");

  /** Loads, what the sprayer held, and what each residue asks for before each load. */
  private record Day(
      List<Set<String>> loads,
      Map<String, Optional<Rinse>> held,
      Map<String, List<Demand>> demands) {

    Demand before(String active, int load) {
      List<Demand> of = demands.getOrDefault(active, List.of());
      return of.isEmpty() ? Demand.NOTHING : of.get(load);
    }
  }

  private static Day day(long seed, int n) {
    Random random = new Random(seed);
    List<Set<String>> loads = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      Set<String> actives = new TreeSet<>();
      ACTIVES.stream().filter(a -> random.nextInt(3) == 0).forEach(actives::add);
      loads.add(actives);
    }
    Map<String, Optional<Rinse>> held = new TreeMap<>();
    if (random.nextBoolean()) {
      int level = random.nextInt(4);
      held.put("a", level == 0 ? Optional.empty() : Optional.of(RINSES.get(level - 1)));
    }
    Map<String, List<Demand>> demands = new HashMap<>();
    for (String a : ACTIVES) {
      List<Demand> of = new ArrayList<>();
      for (int i = 0; i < n; i++) {
        of.add(DEMANDS.get(random.nextInt(3) == 0 ? 0 : random.nextInt(5)));
      }
      demands.put(a, of);
    }
    return new Day(loads, held, demands);
  }

  private static int level(Demand d) {
    return d == Demand.UNKNOWN ? 3 : DEMANDS.indexOf(d);
  }

  /** Least fillings over all orders and all clean-outs, needed or not. */
  private static int leastOfAll(Day day, int done, Map<String, Integer> residues) {
    if (done == (1 << day.loads().size()) - 1) {
      return 0;
    }
    int best = Integer.MAX_VALUE;
    for (int load = 0; load < day.loads().size(); load++) {
      if ((done & 1 << load) != 0) {
        continue;
      }
      for (int level = 0; level < 4; level++) {
        Map<String, Integer> after = new TreeMap<>();
        boolean harms = false;
        for (var r : residues.entrySet()) {
          int since = Math.max(r.getValue(), level);
          after.put(r.getKey(), since);
          harms |=
              !day.loads().get(load).contains(r.getKey())
                  && level(day.before(r.getKey(), load)) > since;
        }
        if (!harms) {
          day.loads().get(load).forEach(a -> after.put(a, 0));
          int rest = leastOfAll(day, done | 1 << load, after);
          best = Math.min(best, FILLINGS[level] + rest);
        }
      }
    }
    return best;
  }

  @Property(tries = 200)
  void noOrderTakesLessWater(@ForAll long seed, @ForAll @IntRange(min = 1, max = 4) int n) {
    Day day = day(seed, n);
    LoadSequence found = LoadSequence.of(day.loads(), day.held(), day::before);
    Map<String, Integer> held = new TreeMap<>();
    day.held().forEach((a, r) -> held.put(a, r.map(x -> RINSES.indexOf(x) + 1).orElse(0)));

    assertThat(found.stops())
        .hasSize(n)
        .extracting(LoadSequence.Stop::load)
        .doesNotHaveDuplicates();
    assertThat(found.fillings()).isEqualTo(leastOfAll(day, 0, held));
  }

  /** Walked again, no residue that injures is left before any load. */
  @Property(tries = 200)
  void noResidueHarmsALaterCrop(@ForAll long seed, @ForAll @IntRange(min = 1, max = 8) int n) {
    Day day = day(seed, n);
    Map<String, Integer> residues = new TreeMap<>();
    day.held().forEach((a, r) -> residues.put(a, r.map(x -> RINSES.indexOf(x) + 1).orElse(0)));
    for (LoadSequence.Stop stop : LoadSequence.of(day.loads(), day.held(), day::before).stops()) {
      int level = stop.before().map(r -> RINSES.indexOf(r) + 1).orElse(0);
      residues.replaceAll((a, since) -> Math.max(since, level));
      residues.forEach(
          (a, since) -> {
            if (!day.loads().get(stop.load()).contains(a)) {
              assertThat(level(day.before(a, stop.load()))).isLessThanOrEqualTo(since);
            }
          });
      assertThat(stop.because().isEmpty()).isEqualTo(stop.before().isEmpty());
      day.loads().get(stop.load()).forEach(a -> residues.put(a, 0));
    }
  }

  /** Soybean goes before dicamba: then nothing stands between. Common practice, no source. */
  @Example
  void whatIsSensitiveGoesFirst() {
    LoadSequence found =
        LoadSequence.of(
            List.of(Set.of("dicamba"), Set.of("glyphosate")),
            Map.of(),
            (active, load) ->
                active.equals("dicamba") && load == 1 ? Demand.TRIPLE_RINSE : Demand.NOTHING);

    assertThat(found.stops()).extracting(LoadSequence.Stop::load).containsExactly(1, 0);
    assertThat(found.fillings()).isZero();
  }

  /** Where the order is of no matter it stays as named. */
  @Example
  void anOrderThatIsAsGoodAsAnyStays() {
    LoadSequence found =
        LoadSequence.of(
            List.of(Set.of("b"), Set.of("a"), Set.of("c")), Map.of(), (a, l) -> Demand.NOTHING);

    assertThat(found.stops()).extracting(LoadSequence.Stop::load).containsExactly(0, 1, 2);
  }
}
