package org.swathbook.rules;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.swathbook.testing.MixCase;
import org.swathbook.testing.Sky;

/** A neighbor that is nearer never takes a block of a label's buffer away. */
class NeighborBufferProperties {
  private static final String[] COMPASS = {"N", "NE", "E", "SE", "S", "SW", "W", "NW"};
  private static final String[] TANKS = {"clomazone 0.75 ai", "2,4-D amine 0.5 ae"};

  @Property(tries = 25)
  void aNearerNeighborClearsNoBlock(
      @ForAll @IntRange(max = 7) int bearing,
      @ForAll @IntRange(max = 359) int windFrom,
      @ForAll @IntRange(min = 1, max = 6000) int feet,
      @ForAll @IntRange(min = 1, max = 100) int percent,
      @ForAll @IntRange(max = 1) int tank) {
    int nearer = Math.max(1, feet * percent / 100);

    if (isBlocked(tank, bearing, windFrom, feet)) {
      assertThat(isBlocked(tank, bearing, windFrom, nearer)).isTrue();
    }
  }

  private static boolean isBlocked(int tank, int bearing, int windFrom, int feet) {
    return MixCase.in("soybean")
        .day(-30, "", 0)
        .tank(TANKS[tank])
        .field(f -> f.neighbors("vineyard " + COMPASS[bearing] + " " + feet + " ft"))
        .sky(Sky.fair().from(windFrom))
        .findings()
        .stream()
        .anyMatch(
            f -> f.rule().value().equals("sensitive-neighbor") && f.severity() == Severity.BLOCK);
  }
}
