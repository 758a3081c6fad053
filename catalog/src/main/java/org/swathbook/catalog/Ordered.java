package org.swathbook.catalog;

import java.util.AbstractMap;
import java.util.AbstractSet;
import java.util.Collection;
import java.util.Collections;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.Spliterator;
import org.jspecify.annotations.Nullable;

/**
 * Copies that nobody can change and that keep their order. The platform's own copies shuffle theirs
 * anew in every run, and an order that changes ends up in output sooner or later. A copy of a copy
 * is the copy itself, for records are made of others by the hundred thousand.
 */
public final class Ordered {
  private Ordered() {}

  public static <T> Set<T> set(Collection<T> items) {
    return items instanceof FrozenSet<T> frozen ? frozen : new FrozenSet<>(items);
  }

  public static <K, V> Map<K, V> map(Map<K, V> entries) {
    return entries instanceof FrozenMap<K, V> frozen ? frozen : new FrozenMap<>(entries);
  }

  private static final class FrozenSet<T> extends AbstractSet<T> {
    private final Set<T> items;

    FrozenSet(Collection<T> items) {
      this.items = Collections.unmodifiableSet(new LinkedHashSet<>(items));
    }

    @Override
    public boolean contains(@Nullable Object item) {
      return items.contains(item);
    }

    @Override
    public Iterator<T> iterator() {
      return items.iterator();
    }

    @Override
    public Spliterator<T> spliterator() {
      return items.spliterator();
    }

    @Override
    public int size() {
      return items.size();
    }
  }

  private static final class FrozenMap<K, V> extends AbstractMap<K, V> {
    private final Map<K, V> entries;

    FrozenMap(Map<K, V> entries) {
      this.entries = Collections.unmodifiableMap(new LinkedHashMap<>(entries));
    }

    @Override
    public @Nullable V get(@Nullable Object key) {
      return entries.get(key);
    }

    @Override
    public boolean containsKey(@Nullable Object key) {
      return entries.containsKey(key);
    }

    @Override
    public Set<K> keySet() {
      return entries.keySet();
    }

    @Override
    public Collection<V> values() {
      return entries.values();
    }

    @Override
    public Set<Map.Entry<K, V>> entrySet() {
      return entries.entrySet();
    }

    @Override
    public int size() {
      return entries.size();
    }
  }
}
