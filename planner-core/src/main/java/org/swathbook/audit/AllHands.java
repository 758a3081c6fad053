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
 * still kept; of few items each is taken by itself, for every one of them is then long.
 */
final class AllHands {
  private static final int MOST_AT_A_TIME = 4;
  private static final int FEW = 1000;

  private AllHands() {}

  /**
   * @param work on one item; it knows of no other
   */
  static <T> void each(List<T> items, Consumer<? super T> work) {
    int atATime = items.size() <= FEW ? 1 : MOST_AT_A_TIME;
    AtomicInteger next = new AtomicInteger();
    // Whoever waits for the pool works too.
    IntStream.rangeClosed(0, ForkJoinPool.getCommonPoolParallelism())
        .parallel()
        .forEach(
            hand -> {
              int from = next.getAndAdd(atATime);
              while (from < items.size()) {
                items.subList(from, Math.min(items.size(), from + atATime)).forEach(work);
                from = next.getAndAdd(atATime);
              }
            });
  }
}
