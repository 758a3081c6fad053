package org.swathbook.catalog;

import org.jspecify.annotations.Nullable;

/** Id of a crop: {@code grain-sorghum}. */
public record CropId(String value) implements Comparable<CropId> {

  public CropId {
    if (value.isEmpty()) {
      throw new IllegalArgumentException("an id must not be empty");
    }
  }

  /** The id of a name as people write it. */
  public static CropId of(String name) {
    return new CropId(Slug.of(name));
  }

  // Written out, as in every key that is hashed at a start: what Java makes for a record is linked
  // when it is first called, which costs a short command more than all its hashing.
  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof CropId o && value.equals(o.value);
  }

  @Override
  public int hashCode() {
    return value.hashCode();
  }

  @Override
  public int compareTo(CropId other) {
    return value.compareTo(other.value);
  }

  @Override
  public String toString() {
    return value;
  }
}
