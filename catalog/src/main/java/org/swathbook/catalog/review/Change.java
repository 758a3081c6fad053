package org.swathbook.catalog.review;

import java.util.Optional;

/**
 * One difference between two catalogs.
 *
 * @param kind of what, {@code ingredient}
 * @param entry which, {@code dicamba}
 * @param part within it, {@code soybean, post}; empty for the entry as a whole
 * @param what the value in words, {@code most in a period}; empty when the whole entry came or went
 * @param before what stood there; empty when nothing did
 * @param after what stands there now; empty when nothing does
 */
public record Change(
    String kind,
    String entry,
    String part,
    String what,
    Optional<String> before,
    Optional<String> after) {

  /** The difference in words, without naming the entry. */
  public String words() {
    String where = part.isEmpty() ? "" : part + ": ";
    if (what.isEmpty()) {
      String thing = part.isEmpty() ? "the " + kind : "the use " + part;
      return thing + (before.isEmpty() ? " is new" : " is gone");
    }
    if (before.isEmpty()) {
      return where + what + " is now stated, " + after.orElse("");
    }
    return after
        .map(a -> where + what + " was " + before.get() + ", is now " + a)
        .orElseGet(() -> where + what + " is no longer stated, was " + before.get());
  }
}
