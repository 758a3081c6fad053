package org.swathbook.audit;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.swathbook.catalog.Site;
import org.swathbook.catalog.WeedId;
import org.swathbook.program.FieldId;

/**
 * How much a field leans on one chemistry for a driver weed, in the figures by which it is ranked:
 * all that is kept of most fields of a long book.
 *
 * @param leaning share of the emergence that met fewer than two effective sites, mean of the
 *     seasons, whole percent as it is printed
 * @param acres of the field in the last season
 * @param onOne share that met one effective site alone, likewise
 * @param streak seasons running up to the last with the same dominant site
 * @param hanging points of control of the last season that the site takes along which would be
 *     missed most
 * @param lastSeason of the journal
 * @param lastEffective number of effective sites in it
 */
record Leaning(
    FieldId field,
    WeedId weed,
    long leaning,
    double acres,
    long onOne,
    int streak,
    long hanging,
    int lastSeason,
    int lastEffective) {

  /**
   * By the share of emergence that met fewer than two effective sites. Of equal ones, which are
   * many at 100 %, first the larger field, for more ground is lost with it; then by the emergence
   * that met one site alone, for that is what selects, where none kills and nothing is selected;
   * then the longer streak and the control that hangs on one site.
   */
  static final Comparator<Leaning> WORST_FIRST =
      Comparator.comparingLong((Leaning l) -> -l.leaning)
          .thenComparingDouble(l -> -l.acres)
          .thenComparingLong(l -> -l.onOne)
          .thenComparingInt(l -> -l.streak)
          .thenComparingLong(l -> -l.hanging)
          .thenComparing(l -> l.field.value())
          .thenComparing(l -> l.weed.value());

  /**
   * @param seasons of a weed on a field, in order; at least one
   */
  static Leaning of(List<SeasonSites> seasons) {
    SeasonSites last = seasons.get(seasons.size() - 1);
    return new Leaning(
        last.field().id(),
        last.weed().weed().id(),
        Math.round(seasons.stream().mapToDouble(SeasonSites::leaningPct).average().orElse(0)),
        last.field().acres(),
        Math.round(seasons.stream().mapToDouble(Leaning::onOne).average().orElse(0)),
        streak(seasons, seasons.size() - 1),
        Math.round(last.dependence().map(d -> d.controlPct() - d.withoutPct()).orElse(0.0)),
        last.season(),
        last.effective().size());
  }

  private static double onOne(SeasonSites s) {
    return s.met()
        .map(SeasonSites.Met::onePct)
        .orElseGet(() -> s.effective().size() == 1 ? 100.0 : 0.0);
  }

  /** Seasons running with the same dominant site; one without the weed has no row and ends none. */
  static int streak(List<SeasonSites> seasons, int at) {
    Optional<Site> site = seasons.get(at).dominant();
    int n = 0;
    for (int i = at; i >= 0 && site.isPresent() && seasons.get(i).dominant().equals(site); i--) {
      n++;
    }
    return n;
  }
}
