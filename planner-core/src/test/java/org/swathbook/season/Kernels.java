package org.swathbook.season;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.swathbook.growth.TraceBuilder;
import org.swathbook.growth.TraceSet;
import org.swathbook.testing.Fixtures;

/** Kernels of the fixture fields, made once for all tests. */
final class Kernels {
  private static final Map<String, Kernel> KEPT = new ConcurrentHashMap<>();

  private Kernels() {}

  static Kernel of(String field) {
    return KEPT.computeIfAbsent(
        field,
        f -> Kernel.of(Fixtures.book(), TraceBuilder.build(Fixtures.book(), Fixtures.field(f))));
  }

  static TraceSet traces(String field) {
    return of(field).traces();
  }
}
