package org.swathbook.escapes;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.swathbook.catalog.Site;
import org.swathbook.catalog.WeedId;

/**
 * What the plants of one weed mean on the day they were seen. Counts are plants.
 *
 * @param undecided neither dead nor growing again, and not past the day by which they should be
 *     dead
 * @param recovering growing again, or alive past the day by which they should be dead
 * @param missed without a sign of injury
 * @param controlled dead and dying of all, the undecided counted as alive
 * @param sites of the pass that work on this weed through its leaves
 * @param judgedFrom day before which it is too early to tell
 * @param deadBy day by which the slowest of those sites should have killed
 * @param since the weather between pass and look, which moved those two days
 * @param survivorsPerM2 recovering, missed and undecided
 * @param heightCm nine survivors in ten are no taller; empty when it is not known
 * @param yetToTell what to look for next time
 */
public record WeedReading(
    WeedId weed,
    int dead,
    int dying,
    int undecided,
    int recovering,
    int missed,
    ShareInterval controlled,
    List<Site> sites,
    LocalDate judgedFrom,
    LocalDate deadBy,
    WeatherSince since,
    boolean tooEarly,
    double survivorsPerM2,
    Optional<Double> heightCm,
    Suspicion suspicion,
    List<String> yetToTell) {

  public WeedReading {
    sites = List.copyOf(sites);
    yetToTell = List.copyOf(yetToTell);
  }

  /** Plants that certainly live on. */
  public int surviving() {
    return recovering + missed;
  }
}
