package org.swathbook.program;

import org.jspecify.annotations.Nullable;

/** An adjuvant by kind with its rate as written, {@code 8.5 lb/100 gal}. */
public record Adjuvant(String kind, String rate) {
  /** What is written for the rate when the catalog names none. */
  public static final String RATE_OF_THE_LABEL = "as the label says";

  // Written out, as in every key that is hashed at a start: see RuleId.
  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Adjuvant o && kind.equals(o.kind) && rate.equals(o.rate);
  }

  @Override
  public int hashCode() {
    return 31 * kind.hashCode() + rate.hashCode();
  }
}
