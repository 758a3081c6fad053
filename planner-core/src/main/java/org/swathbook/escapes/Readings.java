package org.swathbook.escapes;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.swathbook.book.Book;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Response;
import org.swathbook.catalog.Site;
import org.swathbook.catalog.WeedId;
import org.swathbook.control.Setback;
import org.swathbook.program.ActiveDose;
import org.swathbook.program.Mix;
import org.swathbook.program.Observation;
import org.swathbook.program.PlantCounts;
import org.swathbook.program.SeenWeed;

/** Reads what the plants of each weed mean on the day they were seen. */
final class Readings {
  /** An active that controls less of a weed than this, percent, was not sprayed against it. */
  private static final double WORKS_PCT = 50;

  private Readings() {}

  static List<WeedReading> of(Book book, Observation seen) {
    return seen.weeds().stream().map(w -> of(book, seen, w)).toList();
  }

  /**
   * The actives of a mix that should control a weed through its leaves; where the catalog knows of
   * none, all that work through leaves, so that nothing is judged early for want of data.
   */
  static List<Ingredient> working(Book book, Mix mix, WeedId weed) {
    List<Ingredient> foliar =
        mix.actives().stream()
            .map(ActiveDose::ingredient)
            .filter(Ingredient::hasFoliarActivity)
            .distinct()
            .toList();
    List<Ingredient> known = foliar.stream().filter(i -> works(book, i, weed)).toList();
    return known.isEmpty() ? foliar : known;
  }

  static boolean works(Book book, Ingredient active, WeedId weed) {
    return book.catalog()
        .response(weed, active.id(), Response.Timing.POST)
        .find()
        .filter(r -> r.emaxPct() >= WORKS_PCT)
        .isPresent();
  }

  private static WeedReading of(Book book, Observation seen, SeenWeed weed) {
    List<Ingredient> working = working(book, seen.mix(), weed.weed());
    List<Site> sites = working.stream().map(Ingredient::site).distinct().sorted().toList();
    List<SiteTimeline> times = sites.stream().map(SiteTimeline::of).toList();
    int judgedFrom =
        times.stream().mapToInt(SiteTimeline::judgedFrom).max().orElse(SiteTimeline.SYSTEMIC_FROM);
    int deadBy = times.stream().mapToInt(SiteTimeline::deadTo).max().orElse(21);
    PlantCounts p = weed.plants();
    WarmDays clock =
        WarmDays.since(seen.sprayed(), book, book.findField(seen.field().value()).orElseThrow());
    LocalDate judged = clock.worth(judgedFrom);
    LocalDate dead = clock.worth(deadBy);
    WeatherSince since = clock.until(seen.seen());
    boolean tooEarly = seen.seen().isBefore(judged);
    boolean overdue = seen.seen().isAfter(dead);
    int undecided = overdue ? 0 : p.stalled();
    int recovering = p.regrowing() + (overdue ? p.stalled() : 0);
    int living = undecided + recovering + p.untouched();
    return new WeedReading(
        weed.weed(),
        p.dead(),
        p.collapsed(),
        undecided,
        recovering,
        p.untouched(),
        ShareInterval.of(p.dead() + p.collapsed(), p.all()),
        sites,
        judged,
        dead,
        since,
        tooEarly,
        living / p.areaM2(),
        height(weed, working),
        suspicion(book, seen, weed, working, since, tooEarly, recovering + p.untouched()),
        yetToTell(times));
  }

  private static Suspicion suspicion(
      Book book,
      Observation seen,
      SeenWeed weed,
      List<Ingredient> working,
      WeatherSince since,
      boolean tooEarly,
      int surviving) {
    if (tooEarly || surviving == 0) {
      Suspicion.Level level = tooEarly ? Suspicion.Level.NOT_JUDGED : Suspicion.Level.NONE;
      return new Suspicion(level, List.of(), List.of(), List.of(), List.of(), List.of());
    }
    return Evidence.of(book, seen, weed, working, since);
  }

  /** What a survivor kept of its height, and what it has grown since. */
  private static Optional<Double> height(SeenWeed weed, List<Ingredient> working) {
    if (weed.sprayedAtCm().isEmpty()) {
      return Optional.empty();
    }
    Setback setback =
        working.stream().anyMatch(Ingredient::isContact)
            ? Setback.CONTACT
            : working.isEmpty() ? Setback.NONE : Setback.SYSTEMIC;
    double cm =
        setback.heightKept() * weed.sprayedAtCm().getAsDouble() + weed.newGrowthCm().orElse(0);
    return cm > 0 ? Optional.of(cm) : Optional.empty();
  }

  private static List<String> yetToTell(List<SiteTimeline> times) {
    List<String> out = new ArrayList<>();
    out.add("dying: stem soft and brown at the soil line, brown inside when scraped, no new roots");
    out.add("living: green at the nodes, upright new growth, white root tips");
    times.stream()
        .sorted(Comparator.comparing(SiteTimeline::site))
        .forEach(t -> out.add("dying of site " + t.site() + ": " + t.signs()));
    return out;
  }
}
