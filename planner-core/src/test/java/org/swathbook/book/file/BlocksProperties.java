package org.swathbook.book.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.Map;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** What stands in blocks is found as in a map of places. */
class BlocksProperties {
  /** Some of them in one block, some many blocks apart. */
  private static final int[] REACHES = {100, 5_000, 40_000, 300_000};

  @Property(tries = 40)
  void whatWasSetIsFoundAndNothingElse(
      @ForAll long seed, @ForAll @IntRange(min = 0, max = 3) int reach) {
    Random random = new Random(seed);
    IntBlocks numbers = new IntBlocks();
    Blocks<String> texts = new Blocks<>();
    Map<Integer, Integer> plain = new HashMap<>();
    for (int i = 0; i < 500; i++) {
      int at = random.nextInt(REACHES[reach]);
      int value = 1 + random.nextInt(1_000_000);
      numbers.set(at, value);
      texts.set(at, "text " + value);
      plain.put(at, value);
      // Of another place mostly nothing was set, nor is its block there.
      int other = random.nextInt(2 * REACHES[reach]);
      Integer there = plain.get(other);
      assertThat(numbers.get(other)).isEqualTo(there == null ? 0 : there);
      assertThat(texts.get(other)).isEqualTo(there == null ? null : "text " + there);
    }
    plain.forEach(
        (at, value) -> {
          assertThat(numbers.get(at)).isEqualTo(value);
          assertThat(texts.get(at)).isEqualTo("text " + value);
        });
  }
}
