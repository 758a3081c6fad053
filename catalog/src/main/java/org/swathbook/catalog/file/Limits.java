package org.swathbook.catalog.file;

import java.util.Optional;
import java.util.OptionalDouble;
import org.swathbook.catalog.Limit;
import org.swathbook.measure.MeasureException;
import org.swathbook.measure.Numbers;
import org.swathbook.source.MapReader;
import org.swathbook.source.Node;
import org.swathbook.source.Problems;
import org.swathbook.source.ScalarNode;
import org.swathbook.source.TextParser;

/**
 * Reads an allowed interval, as keys ({@code {from: 4 in, before: 12 in}}) or as a comparison
 * ({@code "< 2 %"}, {@code ">= 7.5"}, {@code 5.0-6.5}).
 */
final class Limits {
  private Limits() {}

  /**
   * The interval of a node.
   *
   * @param end reads one end with its unit into the number that is kept
   */
  static Optional<Limit> read(
      Node node, TextParser<Double> end, String example, Problems problems) {
    if (node instanceof ScalarNode) {
      return MapReader.scalar(node, text -> compared(text, end), example, problems);
    }
    return MapReader.of(node, example, problems)
        .flatMap(
            m -> {
              Optional<Limit> limit = ends(m, end, "from", "to", Optional.of("before"), example);
              m.done();
              return limit;
            });
  }

  /** The interval of {@code {min: 3 mph, max: 10 mph}}. */
  static Optional<Limit> minMax(MapReader map, TextParser<Double> end, String example) {
    return ends(map, end, "min", "max", Optional.empty(), example);
  }

  private static Optional<Limit> ends(
      MapReader map,
      TextParser<Double> end,
      String from,
      String to,
      Optional<String> before,
      String example) {
    int problemsBefore = map.problems().count();
    Optional<Double> least = map.find(from, end, example);
    Optional<Double> most = map.find(to, end, example);
    Optional<Double> below = before.flatMap(b -> map.find(b, end, example));
    if (map.problems().count() > problemsBefore) {
      return Optional.empty();
    }
    boolean excluded = below.isPresent() && (most.isEmpty() || below.get() <= most.get());
    Optional<Double> high = excluded ? below : most;
    if (least.isEmpty() && high.isEmpty()) {
      map.problems().add(map.mark(), "no end is given", "write '" + example + "'");
      return Optional.empty();
    }
    if (least.isPresent() && high.isPresent() && least.get() > high.get()) {
      String upper = excluded ? before.orElse(to) : to;
      map.problems()
          .add(
              map.mark(),
              "'" + from + "' lies above '" + upper + "'",
              "write the lower value under '" + from + "'");
      return Optional.empty();
    }
    if (excluded && least.equals(high)) {
      map.problems()
          .add(
              map.mark(),
              "nothing lies from one value to before the same",
              "write 'to' where the value itself is allowed");
      return Optional.empty();
    }
    return Optional.of(new Limit(boxed(least), false, boxed(high), excluded));
  }

  private static OptionalDouble boxed(Optional<Double> value) {
    return value.map(OptionalDouble::of).orElse(OptionalDouble.empty());
  }

  private static Limit compared(String text, TextParser<Double> end) {
    String t = text.strip();
    if (t.startsWith("<=")) {
      return Limit.atMost(end.parse(t.substring(2).strip()));
    }
    if (t.startsWith("<")) {
      return Limit.below(end.parse(t.substring(1).strip()));
    }
    if (t.startsWith(">=")) {
      return Limit.atLeast(end.parse(t.substring(2).strip()));
    }
    if (t.startsWith(">")) {
      return Limit.above(end.parse(t.substring(1).strip()));
    }
    Numbers.SplitRange range = Numbers.splitRange(t);
    if (range.low() == range.high()) {
      throw new MeasureException(
          "'"
              + text
              + "' does not say which side of it is meant; write '< "
              + t
              + "' or '>= "
              + t
              + "'");
    }
    return new Limit(
        OptionalDouble.of(end.parse(Numbers.plain(range.low()) + " " + range.rest())),
        false,
        OptionalDouble.of(end.parse(Numbers.plain(range.high()) + " " + range.rest())),
        false);
  }
}
