package org.swathbook.audit;

import java.util.List;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import java.util.stream.IntStream;

/**
 * Work on many items by all processors. Each takes the next few when it is done with its own: a
 * parallel stream would give each a few long stretches, and at the end some would wait for the
 * last. Items that stand side by side are worked on at about the same time, so what they share is
 * still kept.
 */
final class AllHands {
  private static final int AT_A_TIME = 4;

  private AllHands() {}

  /**
   * @param work on one item; it knows of no other
   */
  static <T> void each(List<T> items, Consumer<? super T> work) {
    AtomicInteger next = new AtomicInteger();
    // Whoever waits for the pool works too.
    IntStream.rangeClosed(0, ForkJoinPool.getCommonPoolParallelism())
        .parallel()
        .forEach(
            hand -> {
              int from = next.getAndAdd(AT_A_TIME);
              while (from < items.size()) {
                items.subList(from, Math.min(items.size(), from + AT_A_TIME)).forEach(work);
                from = next.getAndAdd(AT_A_TIME);
              }
            });
  }
}
