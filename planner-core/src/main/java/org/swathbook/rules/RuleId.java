package org.swathbook.rules;

/** Stable id of a rule in plain words, {@code annual-cap}; never reused. */
public record RuleId(String value) implements Comparable<RuleId> {
  @Override
  public int compareTo(RuleId other) {
    return value.compareTo(other.value);
  }

  @Override
  public String toString() {
    return value;
  }
}
