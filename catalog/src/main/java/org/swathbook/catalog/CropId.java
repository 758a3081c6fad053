package org.swathbook.catalog;

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

  @Override
  public int compareTo(CropId other) {
    return value.compareTo(other.value);
  }

  @Override
  public String toString() {
    return value;
  }
}
