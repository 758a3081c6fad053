package org.swathbook.book;

import java.util.List;
import java.util.Optional;
import org.swathbook.catalog.RateRow;
import org.swathbook.catalog.Use;
import org.swathbook.measure.RateRange;

/**
 * The rates that a use allows on a field's soils: over all samples the highest of the lows and the
 * lowest of the highs, refused when any sample is refused.
 */
public sealed interface SoilRates {

  /** Allowed between these rates (low may top high when two soils of a field leave nothing). */
  record Allowed(RateRange range) implements SoilRates {}

  /** The label refuses this soil. */
  record Refused(SoilSample sample) implements SoilRates {}

  /** Not stated, or it depends on a fact that the field does not give. */
  record Unknown(String what) implements SoilRates {}

  static SoilRates of(Use use, Field field) {
    Optional<List<RateRow>> rows = use.rates().find();
    if (rows.isEmpty()) {
      return new Unknown("rate");
    }
    Optional<RateRange> all = Optional.empty();
    for (SoilSample sample : SoilSample.of(field)) {
      SoilRates one = of(rows.get(), sample);
      if (!(one instanceof Allowed a)) {
        return one;
      }
      all = Optional.of(all.map(r -> stricter(r, a.range())).orElse(a.range()));
    }
    return new Allowed(all.orElseThrow());
  }

  /** From the least to the most that a use allows on any soil; empty where it states no rate. */
  static Optional<RateRange> onAnySoil(Use use) {
    return use.rates().find().stream()
        .flatMap(List::stream)
        .map(RateRow::rates)
        .flatMap(Optional::stream)
        .reduce(SoilRates::wider);
  }

  private static RateRange wider(RateRange a, RateRange b) {
    return new RateRange(
        a.low().kgPerHa() <= b.low().kgPerHa() ? a.low() : b.low(),
        a.high().kgPerHa() >= b.high().kgPerHa() ? a.high() : b.high());
  }

  private static SoilRates of(List<RateRow> rows, SoilSample sample) {
    for (RateRow row : rows) {
      switch (sample.fits(row.when())) {
        case YES -> {
          return row.rates().isPresent() ? new Allowed(row.rates().get()) : new Refused(sample);
        }
        case UNKNOWN -> {
          return new Unknown("rate on this soil (" + sample + "; the label's rows need more)");
        }
        case NO -> {}
      }
    }
    return new Unknown("rate on " + sample);
  }

  private static RateRange stricter(RateRange a, RateRange b) {
    return new RateRange(
        a.low().kgPerHa() >= b.low().kgPerHa() ? a.low() : b.low(),
        a.high().kgPerHa() <= b.high().kgPerHa() ? a.high() : b.high());
  }
}
