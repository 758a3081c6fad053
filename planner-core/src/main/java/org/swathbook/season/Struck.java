package org.swathbook.season;

import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.Ingredient;

/** Whether a listed or suspected resistance, at any share, strikes an active from the counts. */
final class Struck {
  private Struck() {}

  static boolean is(WeedPressure pressure, Ingredient active) {
    return pressure.listed().stream().anyMatch(r -> r.concerns(active));
  }
}
