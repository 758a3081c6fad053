package org.swathbook.catalog.file;

import java.util.ArrayList;
import java.util.List;

/** Keys that lead to one value of an entry; a use goes by its number. */
record KeyPath(List<String> keys) {

  static final KeyPath ROOT = new KeyPath(List.of());

  KeyPath then(String key) {
    List<String> more = new ArrayList<>(keys);
    more.add(key);
    return new KeyPath(List.copyOf(more));
  }

  /** As {@code sources} name it. */
  @Override
  public String toString() {
    return String.join(".", keys);
  }
}
