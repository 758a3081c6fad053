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
      Comparator.comparing((Leaning l) -> l, Leaning::byFigures)
          .thenComparingLong(l -> -l.hanging)
          .thenComparing(l -> l.field.value())
          .thenComparing(l -> l.weed.value());

  /** All that comes before the control that hangs on one site, which takes longest to know. */
  static int byFigures(Leaning a, Leaning b) {
    int c = Long.compare(b.leaning, a.leaning);
    if (c == 0) {
      c = Double.compare(b.acres, a.acres);
    }
    if (c == 0) {
      c = Long.compare(b.onOne, a.onOne);
    }
    return c != 0 ? c : Integer.compare(b.streak, a.streak);
  }

  /**
   * @param seasons of a weed on a field, in order; at least one
   */
  static Leaning of(List<SeasonSites> seasons) {
    SeasonSites last = seasons.get(seasons.size() - 1);
    return of(
        last.field().id(),
        last.weed().weed().id(),
        last.field().acres(),
        seasons.stream().map(SeasonFigures::of).toList(),
        hanging(last),
        last.season());
  }

  static Leaning of(
      FieldId field,
      WeedId weed,
      double acres,
      List<SeasonFigures> seasons,
      long hanging,
      int lastSeason) {
    return new Leaning(
        field,
        weed,
        Math.round(seasons.stream().mapToDouble(SeasonFigures::leaningPct).average().orElse(0)),
        acres,
        Math.round(seasons.stream().mapToDouble(SeasonFigures::onePct).average().orElse(0)),
        streak(seasons.stream().map(SeasonFigures::dominant).toList()),
        hanging,
        lastSeason,
        seasons.get(seasons.size() - 1).effective());
  }

  /** The same when it is known what hangs on one site. */
  Leaning hanging(long points) {
    return new Leaning(
        field, weed, leaning, acres, onOne, streak, points, lastSeason, lastEffective);
  }

  /** Points of control that hang on one site, of the last season of a weed. */
  static long hanging(SeasonSites last) {
    return Math.round(last.dependence().map(d -> d.controlPct() - d.withoutPct()).orElse(0.0));
  }

  LastSites last() {
    return new LastSites(field, acres, lastSeason, lastEffective);
  }

  /** Seasons running with the same dominant site; one without the weed has no row and ends none. */
  static int streak(List<SeasonSites> seasons, int at) {
    return streak(seasons.subList(0, at + 1).stream().map(SeasonSites::dominant).toList());
  }

  /** Of the last of them. */
  private static int streak(List<Optional<Site>> dominant) {
    int last = dominant.size() - 1;
    Optional<Site> site = dominant.get(last);
    int n = 0;
    for (int i = last; i >= 0 && site.isPresent() && dominant.get(i).equals(site); i--) {
      n++;
    }
    return n;
  }
}
