package org.swathbook.season;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.swathbook.control.HeightClasses;

/** The class of a share of the plants is that of the height which they do not exceed. */
class HeightCountsProperties {

  private record Plants(double perM2, double heightCm) {}

  @Property(tries = 200)
  void itIsTheClassOfThePlantAtThatPlaceInARow(
      @ForAll long seed, @ForAll @DoubleRange(min = 0.01, max = 1) double share) {
    Random random = new Random(seed);
    List<Plants> all = new ArrayList<>();
    HeightCounts counts = new HeightCounts();
    for (int i = 0; i <= random.nextInt(40); i++) {
      // Whole numbers, so that no sum is rounded.
      Plants p = new Plants(1 + random.nextInt(50), random.nextDouble() * 160);
      all.add(p);
      counts.add(p.perM2(), HeightClasses.of(p.heightCm()));
    }
    all.sort(Comparator.comparingDouble(Plants::heightCm));
    double sum = all.stream().mapToDouble(Plants::perM2).sum();
    double upTo = 0;
    int i = -1;
    while (upTo < share * sum * HeightCounts.ROUNDING) {
      upTo += all.get(++i).perM2();
    }

    assertThat(counts.perM2()).isEqualTo(sum);
    assertThat(counts.percentileClass(share)).isEqualTo(HeightClasses.of(all.get(i).heightCm()));
  }

  @Test
  void whereNothingStandsItIsTheLowest() {
    assertThat(new HeightCounts().percentileClass(0.9)).isZero();
  }
}
