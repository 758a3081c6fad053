package org.swathbook.catalog.file;

import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import org.swathbook.catalog.Limit;
import org.swathbook.source.MapWriter;
import org.swathbook.source.Node;

/** Writes allowed intervals as {@link Limits} reads them. */
final class LimitsWriter {
  private LimitsWriter() {}

  /** {@code "< 2 %"} where one end is open, else {@code {from: 5, to: 7}}. */
  static Node compared(Limit limit, DoubleFunction<String> end) {
    if (limit.least().isPresent() && limit.most().isPresent()) {
      return keys(limit, end);
    }
    return MapWriter.quoted(
        limit.most().isPresent()
            ? (limit.mostExcluded() ? "< " : "<= ") + end.apply(limit.most().getAsDouble())
            : (limit.leastExcluded() ? "> " : ">= ") + end.apply(limit.least().getAsDouble()));
  }

  /** {@code {from: 4 in, before: 12 in}}; only a comparison can leave out a lower end. */
  static Node keys(Limit limit, DoubleFunction<String> end) {
    if (limit.leastExcluded() && limit.most().isEmpty()) {
      return compared(limit, end);
    }
    MapWriter map = new MapWriter();
    ends(map, limit, "from", limit.mostExcluded() ? "before" : "to", end);
    return map.node();
  }

  /** {@code min: 3 mph, max: 10 mph}. */
  static void minMax(MapWriter map, Limit limit, DoubleFunction<String> end) {
    if (limit.mostExcluded()) {
      throw new IllegalArgumentException("the upper end of '" + limit + "' cannot lie outside");
    }
    ends(map, limit, "min", "max", end);
  }

  private static void ends(
      MapWriter map, Limit limit, String from, String to, DoubleFunction<String> end) {
    if (limit.least().isPresent() && limit.leastExcluded()) {
      throw new IllegalArgumentException("the lower end of '" + limit + "' cannot lie outside");
    }
    put(map, from, limit.least(), end);
    put(map, to, limit.most(), end);
  }

  private static void put(
      MapWriter map, String key, OptionalDouble value, DoubleFunction<String> end) {
    value.ifPresent(v -> map.put(key, end.apply(v)));
  }
}
