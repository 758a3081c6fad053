package org.swathbook.catalog;

import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;

/**
 * Copies that nobody can change and that keep their order. The platform's own copies shuffle theirs
 * anew in every run, and an order that changes ends up in output sooner or later.
 */
public final class Ordered {
  private Ordered() {}

  public static <T> Set<T> set(Collection<T> items) {
    return Collections.unmodifiableSet(new LinkedHashSet<>(items));
  }

  public static <K, V> Map<K, V> map(Map<K, V> entries) {
    return Collections.unmodifiableMap(new LinkedHashMap<>(entries));
  }
}
