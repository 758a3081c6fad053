package org.swathbook.program;

import java.util.Locale;

/** Id of a field as the book writes it, {@code ND-1}; case counts for nothing. */
public record FieldId(String value) implements Comparable<FieldId> {

  public boolean matches(String typed) {
    return value.equalsIgnoreCase(typed.strip());
  }

  /** The id as part of a file name. */
  public String fileName() {
    return value.toLowerCase(Locale.ROOT);
  }

  @Override
  public int compareTo(FieldId other) {
    return value.compareTo(other.value);
  }

  @Override
  public String toString() {
    return value;
  }
}
