package org.swathbook.growth;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * What was computed, by key, so that it is computed once. With more than so many all are forgotten
 * and made again, to the same bits: rarer and cheaper than to keep account of which were asked for
 * last, and nothing to start for a command of half a second. Several threads may use it.
 *
 * @param <K> with equals and hashCode
 * @param <V> immutable, and a function of the key alone
 */
public final class Kept<K, V> {
  private final int most;
  private final Map<K, V> values = new ConcurrentHashMap<>();

  /**
   * @param most kept at a time
   */
  public Kept(int most) {
    this.most = most;
  }

  /** The value of a key, computed if it is not there. */
  public V get(K key, Function<? super K, ? extends V> compute) {
    // Asked for without a lock first: what is kept is asked for far more often than it is made.
    V known = values.get(key);
    if (known != null) {
      return known;
    }
    makeRoom();
    return values.computeIfAbsent(key, compute);
  }

  /** The value of a key if it is there: whoever asks most often makes no closure for it. */
  public @Nullable V find(K key) {
    return values.get(key);
  }

  /**
   * Keeps what was computed because it was not found. Two threads may both compute one; both go on
   * with that of the first.
   */
  public V keep(K key, V computed) {
    makeRoom();
    V first = values.putIfAbsent(key, computed);
    return first != null ? first : computed;
  }

  private void makeRoom() {
    if (values.size() >= most) {
      values.clear();
    }
  }
}
