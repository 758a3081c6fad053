package org.swathbook.catalog;

import org.jspecify.annotations.Nullable;

/** Id of a weed: its EPPO code in capitals, {@code AMAPA}. */
public record WeedId(String value) implements Comparable<WeedId> {

  public WeedId {
    if (value.isEmpty()) {
      throw new IllegalArgumentException("an id must not be empty");
    }
  }

  /** The id of a name as people write it. */
  public static WeedId of(String name) {
    return new WeedId(name.strip().toUpperCase(java.util.Locale.ROOT));
  }

  // Written out, as in every key that is hashed at a start: what Java makes for a record is linked
  // when it is first called, which costs a short command more than all its hashing.
  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof WeedId o && value.equals(o.value);
  }

  @Override
  public int hashCode() {
    return value.hashCode();
  }

  @Override
  public int compareTo(WeedId other) {
    return value.compareTo(other.value);
  }

  @Override
  public String toString() {
    return value;
  }
}
