package org.swathbook.season.outcome;

import java.util.List;
import java.util.Map;
import org.swathbook.catalog.WeedId;

/**
 * One weather year of a walked program. Shares are 0 to 1.
 *
 * @param passDays spray day of each pass, -1 when missed
 * @param sizes weeds standing at each pass that was made: by pass, then in the order of the field's
 *     list; one that does not stand (see {@link PassWeed#stands}) has no row
 * @param controlPct by weed: 100 (1 - weighted survivors / weighted untreated), percent
 * @param exposedShare share of the season's emergence exposed between planting and needed-until
 * @param exposedToNothing the part of it met by nothing, not even a post in size
 * @param survivorsPerM2 alive at harvest of those up before needed-until
 * @param allSurvivorsPerM2 alive at harvest
 * @param lossShare yield lost, all weeds
 */
public record YearOutcome(
    int year,
    List<Integer> passDays,
    List<PassSize> sizes,
    List<LayerSpan> layers,
    List<GapSpan> gaps,
    Map<WeedId, Double> controlPct,
    Map<WeedId, Double> exposedShare,
    Map<WeedId, Double> exposedToNothing,
    Map<WeedId, Double> survivorsPerM2,
    Map<WeedId, Double> allSurvivorsPerM2,
    double lossShare) {

  public YearOutcome {
    passDays = List.copyOf(passDays);
    sizes = List.copyOf(sizes);
    layers = List.copyOf(layers);
    gaps = List.copyOf(gaps);
  }
}
