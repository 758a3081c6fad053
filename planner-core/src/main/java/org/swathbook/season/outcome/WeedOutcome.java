package org.swathbook.season.outcome;

import java.util.List;
import java.util.Optional;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.Site;

/**
 * What a program does to one weed, over the weather years.
 *
 * @param controlPct mean
 * @param worstYearControlPct lowest year
 * @param exposedPct median year; {@code exposedWorstFifthPct} the year that one in five is worse
 *     than or equal to
 * @param survivorsPerAcre of those up before needed-until, mean
 * @param seedReturnPerM2 seeds that the plants alive at harvest shed on a m², mean of the years; an
 *     order of magnitude
 * @param seedbankFactor seedbank of the next year beside this year's, mean of the years; an order
 *     of magnitude
 * @param metNonePct share of the season's emergence that met none, one, two or more effective
 *     sites, mean
 * @param weakestSite the site whose loss hurts most; empty when no site works on it
 * @param survivorsPerAcreWithoutWeakest as {@code survivorsPerAcre}, with that site gone
 * @param overlaps of consecutive layers, in order
 * @param unknownActives names of actives of the program whose control of this weed is not known:
 *     counted as nothing
 */
public record WeedOutcome(
    WeedPressure pressure,
    double controlPct,
    double worstYearControlPct,
    double exposedPct,
    double exposedWorstFifthPct,
    double exposedToNothingPct,
    double survivorsPerAcre,
    double allSurvivorsPerAcre,
    double seedReturnPerM2,
    double seedbankFactor,
    double metNonePct,
    double metOnePct,
    double metTwoOrMorePct,
    Optional<Site> weakestSite,
    double controlPctWithoutWeakest,
    double survivorsPerAcreWithoutWeakest,
    List<LayerOverlap> overlaps,
    List<String> unknownActives) {

  /**
   * Two consecutive layers: days from the start of the next to the end of the previous, negative
   * for a hole between them.
   *
   * @param medianDays over the years in which both layers exist
   * @param negativeShare share of all years in which there is a hole or the next layer never
   *     starts, and the first does not last until the canopy closes
   * @param canopyShare share of all years in which the first layer lasts until the canopy closes:
   *     it needs no other
   * @param stillToComePct emergence still to come when the first ends, median
   */
  public record LayerOverlap(
      int firstPass,
      int nextPass,
      double medianDays,
      double negativeShare,
      double canopyShare,
      double stillToComePct) {}

  public WeedOutcome {
    overlaps = List.copyOf(overlaps);
    unknownActives = List.copyOf(unknownActives);
  }
}
