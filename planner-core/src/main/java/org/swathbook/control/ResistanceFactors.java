package org.swathbook.control;

import org.swathbook.book.Biotype;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Weed;

/**
 * What a resistant plant still feels of an active: nothing, except that actives of site 14 keep
 * half of their soil activity on resistant plants of the genus Amaranthus (default).
 */
public final class ResistanceFactors {
  private static final double SITE_14_IN_SOIL = 0.5;

  private ResistanceFactors() {}

  /** Share of the control through leaves that is left, 0 to 1. */
  public static double foliar(Weed weed, Biotype biotype, Ingredient active) {
    return resists(biotype, active) ? 0 : 1;
  }

  /** Share of the control through the soil that is left, 0 to 1. */
  public static double soil(Weed weed, Biotype biotype, Ingredient active) {
    if (!resists(biotype, active)) {
      return 1;
    }
    boolean half = active.site().number() == 14 && weed.genus().equalsIgnoreCase("amaranthus");
    return half ? SITE_14_IN_SOIL : 0;
  }

  private static boolean resists(Biotype biotype, Ingredient active) {
    return biotype.resists().stream().anyMatch(r -> r.concerns(active));
  }
}
