package org.swathbook.rules;

import org.jspecify.annotations.Nullable;

/** Stable id of a rule in plain words, {@code annual-cap}; never reused. */
public record RuleId(String value) implements Comparable<RuleId> {
  // Written out, as in every key that is hashed at a start: what Java makes for a record is linked
  // when it is first called, which costs a short command more than all its hashing.
  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof RuleId o && value.equals(o.value);
  }

  @Override
  public int hashCode() {
    return value.hashCode();
  }

  @Override
  public int compareTo(RuleId other) {
    return value.compareTo(other.value);
  }

  @Override
  public String toString() {
    return value;
  }
}
