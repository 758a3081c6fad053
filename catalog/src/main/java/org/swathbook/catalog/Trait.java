package org.swathbook.catalog;

/**
 * A trait or seed treatment of a crop that a use may need: {@code glyphosate}, {@code 2-4-d},
 * {@code safened-seed}.
 */
public record Trait(String value) implements Comparable<Trait> {

  public Trait {
    if (value.isEmpty()) {
      throw new IllegalArgumentException("an id must not be empty");
    }
  }

  /** The id of a name as people write it. */
  public static Trait of(String name) {
    return new Trait(Slug.of(name));
  }

  @Override
  public int compareTo(Trait other) {
    return value.compareTo(other.value);
  }

  @Override
  public String toString() {
    return value;
  }
}
