package org.swathbook.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.concurrent.atomic.AtomicIntegerArray;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class AllHandsTest {

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 3, 4, 5, 8, 97, 1000})
  void everyItemIsWorkedOnOnce(int items) {
    AtomicIntegerArray times = new AtomicIntegerArray(Math.max(1, items));
    AllHands.each(numbers(items), times::incrementAndGet);
    for (int i = 0; i < items; i++) {
      assertThat(times.get(i)).isEqualTo(1);
    }
  }

  @Test
  void whatGoesWrongIsThrown() {
    assertThatThrownBy(
            () ->
                AllHands.each(
                    numbers(50),
                    i -> {
                      if (i == 31) {
                        throw new IllegalStateException("item 31");
                      }
                    }))
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining("item 31");
  }

  private static List<Integer> numbers(int items) {
    return IntStream.range(0, items).boxed().toList();
  }
}
