package org.swathbook.catalog;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A trait or seed treatment of a crop that a use may need: {@code glyphosate}, {@code 2-4-d},
 * {@code safened-seed}.
 */
public record Trait(String value) implements Comparable<Trait> {
  /** All that labels speak of; a catalog and the fields of a book know no others. */
  public static final List<String> NAMES =
      List.of(
          "2-4-d",
          "accase-tolerant",
          "als-tolerant",
          "dicamba",
          "fop-tolerant",
          "glufosinate",
          "glyphosate",
          "imidazolinone",
          "isoxaflutole",
          "mesotrione",
          "safened-seed");

  public Trait {
    if (value.isEmpty()) {
      throw new IllegalArgumentException("an id must not be empty");
    }
  }

  /** The id of a name as people write it. */
  public static Trait of(String name) {
    return new Trait(Slug.of(name));
  }

  // Written out, as in every key that is hashed at a start: what Java makes for a record is linked
  // when it is first called, which costs a short command more than all its hashing.
  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Trait o && value.equals(o.value);
  }

  @Override
  public int hashCode() {
    return value.hashCode();
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
