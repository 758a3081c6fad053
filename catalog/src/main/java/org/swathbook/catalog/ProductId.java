package org.swathbook.catalog;

/** Id of a generic product: {@code glyphosate-4.5sl}. */
public record ProductId(String value) implements Comparable<ProductId> {

  public ProductId {
    if (value.isEmpty()) {
      throw new IllegalArgumentException("an id must not be empty");
    }
  }

  /** The id of a name as people write it. */
  public static ProductId of(String name) {
    return new ProductId(Slug.of(name));
  }

  @Override
  public int compareTo(ProductId other) {
    return value.compareTo(other.value);
  }

  @Override
  public String toString() {
    return value;
  }
}
