package org.swathbook.program;

import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Id of a field as the book writes it, {@code ND-1}; case counts for nothing. */
public record FieldId(String value) implements Comparable<FieldId> {

  public boolean matches(String typed) {
    return value.equalsIgnoreCase(typed.strip());
  }

  /** The id as part of a file name. */
  public String fileName() {
    return value.toLowerCase(Locale.ROOT);
  }

  // Written out, as in every key that is hashed at a start: what Java makes for a record is linked
  // when it is first called, which costs a short command more than all its hashing.
  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof FieldId o && value.equals(o.value);
  }

  @Override
  public int hashCode() {
    return value.hashCode();
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
