package org.swathbook.catalog;

import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;

/**
 * Three answers to "what does the label say?": a value, that there is no such limit, or that nobody
 * stated it. Never null; unknown never passes for none.
 */
public sealed interface Stated<T> {

  /** A stated value. */
  record Value<T>(T value, Source source) implements Stated<T> {}

  /** It is known that there is no such limit. */
  record None<T>(Source source) implements Stated<T> {}

  /**
   * Not stated; {@code what} names it for the question that follows, as in {@code soil pH limit}.
   */
  record Unknown<T>(String what) implements Stated<T> {}

  static <T> Stated<T> value(T value, Source source) {
    return new Value<>(value, source);
  }

  static <T> Stated<T> none(Source source) {
    return new None<>(source);
  }

  static <T> Stated<T> unknown(String what) {
    return new Unknown<>(what);
  }

  default <R> R match(
      BiFunction<T, Source, R> value, Function<Source, R> none, Function<String, R> unknown) {
    if (this instanceof Value<T> v) {
      return value.apply(v.value(), v.source());
    }
    if (this instanceof None<T> n) {
      return none.apply(n.source());
    }
    return unknown.apply(((Unknown<T>) this).what());
  }

  default Optional<T> find() {
    return this instanceof Value<T> v ? Optional.of(v.value()) : Optional.empty();
  }

  default boolean isUnknown() {
    return this instanceof Unknown;
  }

  default boolean isNone() {
    return this instanceof None;
  }

  /** Source of a value or of a known none. */
  default Optional<Source> findSource() {
    return match((v, s) -> Optional.of(s), Optional::of, u -> Optional.empty());
  }
}
