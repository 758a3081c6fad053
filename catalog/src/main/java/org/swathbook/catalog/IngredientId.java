package org.swathbook.catalog;

import org.jspecify.annotations.Nullable;

/** Id of an active ingredient: its ISO common name as a slug, {@code s-metolachlor}. */
public record IngredientId(String value) implements Comparable<IngredientId> {

  public IngredientId {
    if (value.isEmpty()) {
      throw new IllegalArgumentException("an id must not be empty");
    }
  }

  /** The id of a name as people write it. */
  public static IngredientId of(String name) {
    return new IngredientId(Slug.of(name));
  }

  // Written out, as in every key that is hashed at a start: what Java makes for a record is linked
  // when it is first called, which costs a short command more than all its hashing.
  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof IngredientId o && value.equals(o.value);
  }

  @Override
  public int hashCode() {
    return value.hashCode();
  }

  @Override
  public int compareTo(IngredientId other) {
    return value.compareTo(other.value);
  }

  @Override
  public String toString() {
    return value;
  }
}
