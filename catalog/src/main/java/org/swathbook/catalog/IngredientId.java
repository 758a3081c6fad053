package org.swathbook.catalog;

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

  @Override
  public int compareTo(IngredientId other) {
    return value.compareTo(other.value);
  }

  @Override
  public String toString() {
    return value;
  }
}
