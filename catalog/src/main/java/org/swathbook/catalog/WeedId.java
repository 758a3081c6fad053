package org.swathbook.catalog;

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

  @Override
  public int compareTo(WeedId other) {
    return value.compareTo(other.value);
  }

  @Override
  public String toString() {
    return value;
  }
}
