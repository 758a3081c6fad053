package org.swathbook.catalog.starter;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import org.swathbook.catalog.Stated;

/**
 * How the starter stands to a published limit.
 *
 * @param detail what the starter says instead, when it is laxer
 */
record Verdict(Outcome outcome, String detail) {

  /** From the best to the worst. */
  enum Outcome {
    /** At least as strict. */
    FOLLOWED,
    /** The starter has no such use, so there is nothing that could be laxer. */
    NO_USE,
    /** Laxer, or not stated. */
    NOT_FOLLOWED
  }

  static final Verdict FOLLOWED = new Verdict(Outcome.FOLLOWED, "");
  static final Verdict NO_USE = new Verdict(Outcome.NO_USE, "");

  static Verdict notFollowed(String detail) {
    return new Verdict(Outcome.NOT_FOLLOWED, detail);
  }

  static Verdict of(boolean strict, Object said) {
    return strict ? FOLLOWED : notFollowed("starter: " + said);
  }

  /** A stated value is tested; a known none and an unknown are never strict enough. */
  static <T> Verdict of(Stated<T> stated, Predicate<T> strict) {
    return of(stated, strict, Object::toString);
  }

  static <T> Verdict of(Stated<T> stated, Predicate<T> strict, Function<T, String> shown) {
    return stated.match(
        (v, s) -> of(strict.test(v), shown.apply(v)),
        s -> notFollowed("starter: none"),
        what -> notFollowed("starter: not stated"));
  }

  /** All of them must be followed; without any there is no such use. */
  static Verdict every(List<Verdict> all) {
    Optional<Verdict> lax =
        all.stream().filter(v -> v.outcome() == Outcome.NOT_FOLLOWED).findFirst();
    return lax.orElseGet(() -> all.contains(FOLLOWED) ? FOLLOWED : NO_USE);
  }

  /** One that is followed is enough. */
  static Verdict any(List<Verdict> all) {
    if (all.contains(FOLLOWED)) {
      return FOLLOWED;
    }
    return all.contains(NO_USE) ? NO_USE : all.get(0);
  }
}
