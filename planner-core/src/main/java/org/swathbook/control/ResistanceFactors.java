package org.swathbook.control;

import org.swathbook.book.Biotype;
import org.swathbook.book.Resistance;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Weed;

/**
 * What a resistant plant still feels of an active: what the book says it keeps. Where the book does
 * not say, nothing, except that actives of site 14 keep half of their soil activity on resistant
 * plants of the genus Amaranthus (default). Of several resistances to one active the strongest
 * counts: a plant that resists in two ways never feels more than one that resists in one of them.
 */
public final class ResistanceFactors {
  private static final double SITE_14_IN_SOIL = 0.5;

  private ResistanceFactors() {}

  /** Share of the control through leaves that is left, 0 to 1. */
  public static double foliar(Weed weed, Biotype biotype, Ingredient active) {
    double left = 1;
    for (Resistance r : biotype.resists()) {
      if (r.concerns(active)) {
        left = Math.min(left, r.kept().map(Resistance.Kept::leaf).orElse(0.0));
      }
    }
    return left;
  }

  /** Share of the control through the soil that is left, 0 to 1. */
  public static double soil(Weed weed, Biotype biotype, Ingredient active) {
    boolean half = active.site().number() == 14 && weed.genus().equalsIgnoreCase("amaranthus");
    double left = 1;
    for (Resistance r : biotype.resists()) {
      if (r.concerns(active)) {
        double unsaid = half ? SITE_14_IN_SOIL : 0;
        left = Math.min(left, r.kept().map(Resistance.Kept::soil).orElse(unsaid));
      }
    }
    return left;
  }
}
