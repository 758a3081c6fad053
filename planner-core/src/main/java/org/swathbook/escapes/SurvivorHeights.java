package org.swathbook.escapes;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Position;
import org.swathbook.catalog.WeedId;
import org.swathbook.growth.Timings;
import org.swathbook.measure.Quantity;
import org.swathbook.program.Dose;
import org.swathbook.program.SeenWeed;
import org.swathbook.rules.LabelUses;
import org.swathbook.rules.PassPositions;
import org.swathbook.rules.Rated;
import org.swathbook.rules.Say;
import org.swathbook.season.outcome.PassWeed;
import org.swathbook.season.outcome.SeasonOutcome;

/**
 * How tall the plants that lived through a pass stand when they are sprayed again, and whether
 * labels go that far.
 *
 * @param survivors weeds of which plants live
 * @param standing what each of them had when it was sprayed and has grown since, cm, where both
 *     were seen
 */
record SurvivorHeights(FieldAfterPass scene, Set<WeedId> survivors, Map<WeedId, Double> standing) {

  static SurvivorHeights of(FieldAfterPass scene, Set<WeedId> survivors, List<SeenWeed> seen) {
    return new SurvivorHeights(scene, survivors, standing(seen));
  }

  private static Map<WeedId, Double> standing(List<SeenWeed> seen) {
    Map<WeedId, Double> out = new TreeMap<>();
    for (SeenWeed s : seen) {
      if (s.sprayedAtCm().isPresent()) {
        out.put(s.weed(), s.sprayedAtCm().getAsDouble() + s.newGrowthCm().orElse(0));
      }
    }
    return out;
  }

  /** The tallest of the survivors' weeds on a day; 0 where none stands. */
  double tallestCm(SeasonOutcome again, LocalDate day) {
    double out = 0;
    for (WeedId w : survivors) {
      out = Math.max(out, heightCm(again, day, w));
    }
    return out;
  }

  /**
   * What a label says of plants that tall, product for product. Stems that were sprayed and grew
   * again branch and are no seedlings: they may stand at what they had and have grown since.
   */
  List<String> tooTall(List<Dose> tank, SeasonOutcome again, LocalDate day) {
    List<String> out = new ArrayList<>();
    Set<Position> positions = PassPositions.of(scene.traces(), Timings.at(scene.traces(), day));
    for (Dose dose : tank) {
      Ingredient active = dose.actives().get(0).ingredient();
      for (WeedId id : survivors) {
        WeedPressure weed = again.weed(id).pressure();
        double cm = Math.max(heightCm(again, day, id), standing.getOrDefault(id, 0.0));
        LabelUses.fitting(active, scene.field(), positions, dose.product().formulation()).stream()
            .flatMap(u -> u.weedHeights().find().stream())
            .flatMapToDouble(h -> Rated.tallestCm(h, weed).stream())
            .max()
            .ifPresent(
                limit -> {
                  if (Quantity.exceeds(cm, limit)) {
                    out.add(
                        dose.product().name()
                            + " up to "
                            + Say.inches(limit)
                            + ", "
                            + weed.weed().name()
                            + " may stand at "
                            + Say.inches(cm));
                  }
                });
      }
    }
    return out;
  }

  private static double heightCm(SeasonOutcome again, LocalDate day, WeedId weed) {
    return again.passes().stream()
        .filter(p -> p.planned().equals(day))
        .flatMap(p -> p.weeds().stream())
        .filter(w -> w.weed().equals(weed) && w.standsInAnyYear())
        .mapToDouble(PassWeed::p90Cm)
        .max()
        .orElse(0);
  }
}
