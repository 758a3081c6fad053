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

  /**
   * The rates by which weeds are met through their leaves: from the least to the most that the use
   * allows on any soil, since a top that is cut on some soils spares the crop or the water and no
   * weed. A label that moves both ends of its range by soil is that of a soil herbicide; what it
   * does to leaves was seen at the rates of such soils, so that those of the field's hold (default,
   * ours). Empty where no rate is stated.
   */
  static Optional<RateRange> throughLeaves(Use use, Field field) {
    return isGradedByNeed(use) && of(use, field) instanceof Allowed a
        ? Optional.of(a.range())
        : onAnySoil(use);
  }

  /**
   * The most that a use allows on the field's soil as a share of the most by which weeds are met
   * through their leaves; 1 where the soil or the rate is not known.
   */
  static double shareOfTop(Use use, Field field) {
    return of(use, field) instanceof Allowed a
        ? throughLeaves(use, field)
            .map(r -> Math.min(1, a.range().high().kgPerHa() / r.high().kgPerHa()))
            .orElse(1.0)
        : 1;
  }

  /** Whether a use has rates that are lower at both ends on some soils than on others. */
  static boolean isGradedByNeed(Use use) {
    List<RateRange> ranges = ranges(use);
    return ranges.stream().mapToDouble(r -> r.low().kgPerHa()).distinct().count() > 1
        && ranges.stream().mapToDouble(r -> r.high().kgPerHa()).distinct().count() > 1;
  }

  /** From the least to the most that a use allows on any soil; empty where it states no rate. */
  static Optional<RateRange> onAnySoil(Use use) {
    return ranges(use).stream().reduce(SoilRates::wider);
  }

  private static List<RateRange> ranges(Use use) {
    return use.rates().find().stream()
        .flatMap(List::stream)
        .map(RateRow::rates)
        .flatMap(Optional::stream)
        .toList();
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
