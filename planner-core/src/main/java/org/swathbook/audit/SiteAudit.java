package org.swathbook.audit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import org.swathbook.book.Application;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.book.PastSeason;
import org.swathbook.catalog.Site;
import org.swathbook.catalog.WeedId;
import org.swathbook.program.FieldId;

/**
 * Which fields lean on one chemistry: every driver weed of every field through the seasons of the
 * journal.
 *
 * @param ranked the field and weed that leans most first, its seasons in order
 * @param acres leaning acres of all fields
 * @param growers the same by grower, in the order of the fields
 * @param findings of the rules on what was sprayed, by field and season
 * @param notAudited fields of which nothing can be said, with the reason
 */
public record SiteAudit(
    List<RankedSites> ranked,
    LeaningAcres acres,
    Map<String, LeaningAcres> growers,
    List<JournalFinding> findings,
    List<String> notAudited) {

  public SiteAudit {
    ranked = List.copyOf(ranked);
    growers = org.swathbook.catalog.Ordered.map(growers);
    findings = List.copyOf(findings);
    notAudited = List.copyOf(notAudited);
  }

  private record Key(FieldId field, WeedId weed) {}

  public static SiteAudit of(Book book, List<Field> fields) {
    Map<Key, List<SeasonSites>> byWeed = new LinkedHashMap<>();
    List<JournalFinding> findings = new ArrayList<>();
    List<String> silent = new ArrayList<>();
    FieldBooks books = new FieldBooks(book);
    SharedTraces shared = new SharedTraces(book.catalog());
    // Fields do not know of each other; the results keep their order.
    List<Walked> walked =
        fields.parallelStream().map(f -> Walked.of(f, books.of(f), shared)).toList();
    for (Walked field : walked) {
      Field f = field.today();
      Book own = field.own();
      List<SeasonSites> all = new ArrayList<>();
      for (SeasonAudit.Result r : field.seasons()) {
        all.addAll(r.sites());
        findings.addAll(r.findings());
        r.unjudged().forEach(why -> silent.add(f.id() + ": " + why));
      }
      withoutRow(own, f)
          .forEach(
              season ->
                  silent.add(
                      f.id()
                          + ": "
                          + season
                          + " has rows in applications.csv and none in seasons.csv, so nothing is"
                          + " said of it."));
      if (all.isEmpty()) {
        silent.add(
            f.id()
                + ": no season that both seasons.csv and applications.csv have, or no driver weed"
                + " in it.");
      }
      all.forEach(
          s ->
              byWeed
                  .computeIfAbsent(new Key(f.id(), s.weed().weed().id()), k -> new ArrayList<>())
                  .add(s));
    }
    List<List<SeasonSites>> order = new ArrayList<>(byWeed.values());
    order.sort(WORST_FIRST);
    List<RankedSites> ranked = new ArrayList<>();
    for (int i = 0; i < order.size(); i++) {
      ranked.addAll(ranked(order.get(i), i + 1));
    }
    Map<FieldId, List<List<SeasonSites>>> byField = new LinkedHashMap<>();
    order.forEach(
        o -> byField.computeIfAbsent(last(o).field().id(), k -> new ArrayList<>()).add(o));
    Map<String, List<List<SeasonSites>>> byGrower = new LinkedHashMap<>();
    for (Field f : fields) {
      byGrower
          .computeIfAbsent(f.grower(), g -> new ArrayList<>())
          .addAll(byField.getOrDefault(f.id(), List.of()));
    }
    Map<String, LeaningAcres> growers = new LinkedHashMap<>();
    byGrower.forEach((g, of) -> growers.put(g, LeaningAcres.of(of)));
    return new SiteAudit(ranked, LeaningAcres.of(order), growers, findings, silent);
  }

  /** Past seasons in which the journal has passes and nobody wrote down what grew. */
  private static List<Integer> withoutRow(Book book, Field field) {
    return book.journal().of(field.id()).stream()
        .map(Application::season)
        .filter(s -> s < book.season())
        .distinct()
        .filter(
            s ->
                book.pastSeasons().stream()
                    .noneMatch(p -> p.field().equals(field.id()) && p.season() == s))
        .sorted()
        .toList();
  }

  /** A field with its own book and the seasons that can be looked at. */
  private record Walked(Field today, Book own, List<SeasonAudit.Result> seasons) {
    static Walked of(Field field, Book own, SharedTraces shared) {
      return new Walked(field, own, SiteAudit.seasons(own, field, shared));
    }
  }

  private static List<SeasonAudit.Result> seasons(Book book, Field field, SharedTraces shared) {
    return book.pastSeasons().stream()
        .filter(p -> p.field().equals(field.id()) && p.season() < book.season())
        .filter(p -> book.journal().of(field.id()).stream().anyMatch(a -> a.season() == p.season()))
        .sorted(Comparator.comparing(PastSeason::season))
        .map(p -> SeasonAudit.of(book, field, p, shared))
        .toList();
  }

  /**
   * By the share of emergence that met fewer than two effective sites, mean of the seasons, to
   * whole percent as it is printed. Of equal ones, which are many at 100 %, first the larger field,
   * for more ground is lost with it; then by the emergence that met one site alone, for that is
   * what selects, where none kills and nothing is selected; then the longer streak and the control
   * that hangs on one site.
   */
  private static final Comparator<List<SeasonSites>> WORST_FIRST =
      Comparator.<List<SeasonSites>>comparingLong(s -> -Math.round(leaning(s)))
          .thenComparingDouble(s -> -last(s).field().acres())
          .thenComparingLong(s -> -Math.round(onOne(s)))
          .thenComparingInt(s -> -streak(s, s.size() - 1))
          .thenComparingLong(s -> -Math.round(hanging(last(s))))
          .thenComparing(s -> last(s).field().id().value())
          .thenComparing(s -> last(s).weed().weed().id().value());

  private static double leaning(List<SeasonSites> seasons) {
    return seasons.stream().mapToDouble(SeasonSites::leaningPct).average().orElse(0);
  }

  /** Share of the emergence that met one effective site alone, mean of the seasons. */
  private static double onOne(List<SeasonSites> seasons) {
    return seasons.stream()
        .mapToDouble(
            s ->
                s.met()
                    .map(SeasonSites.Met::onePct)
                    .orElse(s.effective().size() == 1 ? 100.0 : 0.0))
        .average()
        .orElse(0);
  }

  /** Points of control that the site takes along which would be missed most. */
  private static double hanging(SeasonSites s) {
    return s.dependence().map(d -> d.controlPct() - d.withoutPct()).orElse(0.0);
  }

  private static SeasonSites last(List<SeasonSites> seasons) {
    return seasons.get(seasons.size() - 1);
  }

  private static List<RankedSites> ranked(List<SeasonSites> seasons, int rank) {
    String reason = LeaningWords.of(seasons, streak(seasons, seasons.size() - 1));
    List<RankedSites> out = new ArrayList<>();
    for (int i = 0; i < seasons.size(); i++) {
      Optional<Double> turnover =
          i == 0 ? Optional.empty() : turnover(seasons.get(i - 1), seasons.get(i));
      out.add(new RankedSites(seasons.get(i), streak(seasons, i), turnover, rank, reason));
    }
    return out;
  }

  /** Seasons running with the same dominant site; one without the weed has no row and ends none. */
  private static int streak(List<SeasonSites> seasons, int at) {
    Optional<Site> site = seasons.get(at).dominant();
    int n = 0;
    for (int i = at; i >= 0 && site.isPresent() && seasons.get(i).dominant().equals(site); i--) {
      n++;
    }
    return n;
  }

  /** (gained + lost) / (distinct of both · years between): Evans et al. 2016, the study's code. */
  static Optional<Double> turnover(SeasonSites a, SeasonSites b) {
    SortedSet<Site> both = new TreeSet<>(a.applied());
    both.addAll(b.applied());
    SortedSet<Site> kept = new TreeSet<>(a.applied());
    kept.retainAll(b.applied());
    return both.isEmpty()
        ? Optional.empty()
        : Optional.of(
            (both.size() - kept.size()) / (double) (both.size() * (b.season() - a.season())));
  }
}
