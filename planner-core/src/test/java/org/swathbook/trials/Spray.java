package org.swathbook.trials;

import java.util.List;
import java.util.OptionalDouble;
import org.swathbook.catalog.IngredientId;

/**
 * One pass of a trial as read.
 *
 * @param when when it was made; unknown words never get here
 */
record Spray(List<Part> parts, When when) {

  Spray {
    parts = List.copyOf(parts);
  }

  /**
   * An active in it.
   *
   * @param kgPerHa as printed; empty for the label's typical rate
   * @param share of the typical rate, 1 unless the table says "0.66x"
   */
  record Part(IngredientId active, OptionalDouble kgPerHa, double share) {}

  /** The points of a season at which trials spray. */
  enum Point {
    /** Weeds up, crop not planted. */
    PREPLANT,
    /** At planting, nothing up. */
    PRE,
    /** Over small weeds. */
    EARLY_POST,
    POST,
    LATE_POST,
    /** So many days after a pass that failed. */
    RESPRAY
  }

  /**
   * A point, with what the row says closer.
   *
   * @param daysAfterPlanting stated, else empty
   * @param weedCm height of the weeds stated, else empty
   * @param daysAfterLast stated days after the pass before it, else empty
   */
  record When(
      Point point,
      OptionalDouble daysAfterPlanting,
      OptionalDouble weedCm,
      OptionalDouble daysAfterLast) {
    static When at(Point point) {
      return new When(
          point, OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());
    }

    When day(double day) {
      return new When(point, OptionalDouble.of(day), weedCm, daysAfterLast);
    }

    When height(double cm) {
      return new When(point, daysAfterPlanting, OptionalDouble.of(cm), daysAfterLast);
    }

    When afterLast(double days) {
      return new When(point, daysAfterPlanting, weedCm, OptionalDouble.of(days));
    }
  }
}
