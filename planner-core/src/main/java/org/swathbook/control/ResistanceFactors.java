package org.swathbook.control;

import java.util.List;
import org.swathbook.book.Biotype;
import org.swathbook.book.Resistance;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Weed;
import org.swathbook.model.ModelCard;
import org.swathbook.model.ModelSection;

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

  /** What the reference prints. */
  static List<ModelCard> cards() {
    return List.of(
        ModelCard.of(
                ModelSection.MIXES,
                ResistanceFactors.class,
                "resistant plants",
                "E times what the book says they keep of the site or active; where it does not say, nothing,"
                    + " except a share of site 14 in the soil in the genus *Amaranthus*",
                "default")
            .with("share", SITE_14_IN_SOIL, ""));
  }
}
