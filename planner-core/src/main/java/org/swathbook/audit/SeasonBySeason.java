package org.swathbook.audit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.swathbook.book.Application;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.book.PastSeason;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.Site;
import org.swathbook.catalog.WeedId;
import org.swathbook.program.ActiveDose;
import org.swathbook.rules.Rated;

/**
 * A field whose seasons are walked one after the other, with how much it can lean at most by those
 * that are. No season leans by more than all of its emergence: so that bound never rises, and is
 * what the field leans by once all are walked. The last season comes first, for it is asked for of
 * every field; then those that are likely to lower the bound most. Belongs to one thread at a time.
 */
final class SeasonBySeason {
  /** Means of the same figures added up otherwise differ by less. */
  private static final double ROUNDING = 1e-9;

  /** By so much leans a season of which nothing is known, percent. */
  private static final double ALL = 100;

  private final Field field;
  private final List<PastSeason> seasons;

  /** By weed, then by place of the season: whether it drives the season. */
  private final Map<WeedId, boolean[]> drives = new LinkedHashMap<>();

  /** Likewise what is known; null of a season that is not walked yet. */
  private final Map<WeedId, @Nullable SeasonFigures[]> known = new LinkedHashMap<>();

  private final List<String> silent;

  /** Places of the seasons that some weed drives, in the order in which they are walked. */
  private final List<Integer> order = new ArrayList<>();

  /** So many of them are walked. */
  private int walked;

  /** Asked for far more often than it changes. */
  private long most;

  /**
   * @param own the book with nothing in it of other fields
   */
  SeasonBySeason(Book own, Field field, SharedTraces shared) {
    this.field = field;
    RecordedSeasons recorded = new RecordedSeasons(own, field);
    this.seasons = recorded.both();
    List<WeedPressure> weeds = own.weedsOf(field.id());
    List<String> unjudged = new ArrayList<>();
    for (int s = 0; s < seasons.size(); s++) {
      PastSeason season = seasons.get(s);
      for (WeedPressure w : JournalSeason.drivers(weeds, season)) {
        drives(w.weed().id())[s] = true;
      }
      Optional<String> why = JournalSeason.unjudged(own, field, season, shared);
      if (why.isPresent()) {
        unjudged.add(why.get());
      }
      if (isDriven(s)) {
        order.add(0, s);
      }
    }
    this.silent = FieldAudit.silent(field, recorded, unjudged, drives.isEmpty());
    this.most = drives.isEmpty() ? -1 : Math.round(ALL);
  }

  private boolean[] drives(WeedId weed) {
    boolean[] its = drives.get(weed);
    if (its == null) {
      its = new boolean[seasons.size()];
      drives.put(weed, its);
      known.put(weed, new SeasonFigures[seasons.size()]);
    }
    return its;
  }

  private boolean isDriven(int season) {
    for (boolean[] its : drives.values()) {
      if (its[season]) {
        return true;
      }
    }
    return false;
  }

  Field field() {
    return field;
  }

  /** Of what nothing can be said, with the reason. */
  List<String> silent() {
    return silent;
  }

  boolean isWhole() {
    return walked == order.size();
  }

  /** Walks the next of the seasons that are left. */
  void walkNext(Book own, SharedTraces shared) {
    if (walked == 1) {
      likeliestFirst(own);
    }
    int at = order.get(walked);
    walked++;
    for (SeasonSites s : SeasonAudit.figures(own, field, seasons.get(at), shared).sites()) {
      Objects.requireNonNull(known.get(s.weed().weed().id()))[at] = SeasonFigures.of(s);
    }
    most = findMost();
  }

  /**
   * Of the seasons behind the last, first those with the most sites in the journal that the weed
   * does not resist: where few were sprayed the emergence cannot have met many.
   */
  private void likeliestFirst(Book own) {
    int[] sites = new int[seasons.size()];
    List<WeedPressure> weeds = own.weedsOf(field.id());
    for (int at : order) {
      sites[at] = fewestSites(own, JournalSeason.drivers(weeds, seasons.get(at)), seasons.get(at));
    }
    order.subList(1, order.size()).sort(Comparator.comparingInt(at -> -sites[at]));
  }

  /** Sites that were sprayed in a season on the driver weed that resists most of them. */
  private int fewestSites(Book own, List<WeedPressure> driving, PastSeason season) {
    int fewest = Integer.MAX_VALUE;
    for (WeedPressure w : driving) {
      Set<Site> sites = new HashSet<>();
      for (Application a : own.journal().of(field.id())) {
        if (a.season() == season.season()) {
          for (ActiveDose active : a.dose().actives()) {
            if (!Rated.isResisted(w, active.ingredient())) {
              sites.add(active.ingredient().site());
            }
          }
        }
      }
      fewest = Math.min(fewest, sites.size());
    }
    return fewest;
  }

  /** By how much the field can lean at most, whole percent; below zero when no weed drives it. */
  long most() {
    return most;
  }

  private long findMost() {
    long out = -1;
    for (WeedId weed : drives.keySet()) {
      double mean = seasonsOf(weed).stream().mapToDouble(SeasonBySeason::most).average().orElse(0);
      out = Math.max(out, Math.round(mean + ROUNDING));
    }
    return out;
  }

  private static double most(@Nullable SeasonFigures season) {
    return season == null ? ALL : season.leaningPct();
  }

  /** In order; null of one that is not walked. */
  private List<@Nullable SeasonFigures> seasonsOf(WeedId weed) {
    boolean[] its = Objects.requireNonNull(drives.get(weed));
    @Nullable SeasonFigures[] figures = Objects.requireNonNull(known.get(weed));
    List<@Nullable SeasonFigures> out = new ArrayList<>();
    for (int s = 0; s < its.length; s++) {
      if (its[s]) {
        out.add(figures[s]);
      }
    }
    return out;
  }

  /** Of every weed that drives the last season that has any; it is walked by then. */
  List<LastSites> last() {
    List<LastSites> out = new ArrayList<>();
    for (int s = seasons.size() - 1; s >= 0 && out.isEmpty(); s--) {
      for (@Nullable SeasonFigures[] of : known.values()) {
        SeasonFigures figures = of[s];
        if (figures != null) {
          out.add(
              new LastSites(
                  field.id(), field.acres(), seasons.get(s).season(), figures.effective()));
        }
      }
    }
    return out;
  }

  /** By weed the points of control that hang on one site in its last season, which are walked. */
  Map<WeedId, Long> hanging(Book own, SharedTraces shared) {
    Map<WeedId, Long> out = new HashMap<>();
    for (int s = seasons.size() - 1; s >= 0 && out.size() < drives.size(); s--) {
      if (isLastOfAny(s)) {
        for (SeasonSites of : SeasonAudit.notJudged(own, field, seasons.get(s), shared).sites()) {
          out.putIfAbsent(of.weed().weed().id(), Leaning.hanging(of));
        }
      }
    }
    return out;
  }

  private boolean isLastOfAny(int season) {
    return drives.values().stream().anyMatch(its -> its[season] && last(its) == season);
  }

  private static int last(boolean[] its) {
    int last = its.length - 1;
    while (!its[last]) {
      last--;
    }
    return last;
  }

  /** By weed, but for the control that hangs on one site, which counts as 0: all are walked. */
  List<Leaning> leanings() {
    List<Leaning> out = new ArrayList<>();
    for (WeedId weed : drives.keySet()) {
      boolean[] its = Objects.requireNonNull(drives.get(weed));
      int last = last(its);
      List<SeasonFigures> figures =
          seasonsOf(weed).stream().map(f -> Objects.requireNonNull(f)).toList();
      out.add(Leaning.of(field.id(), weed, field.acres(), figures, 0, seasons.get(last).season()));
    }
    return out;
  }
}
