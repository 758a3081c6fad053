package org.swathbook.cli.text;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.swathbook.audit.JournalFinding;
import org.swathbook.audit.LeaningAcres;
import org.swathbook.audit.RankedSites;
import org.swathbook.audit.SeasonSites;
import org.swathbook.audit.SiteAudit;
import org.swathbook.audit.SprayedPass;
import org.swathbook.book.Book;
import org.swathbook.catalog.Site;
import org.swathbook.measure.Numbers;

/** An audit in words, whatever it is printed on. */
public final class AuditWords {
  /** How to read the figures. */
  public static final List<String> READING =
      List.of(
          "Effective sites are counted pass by pass, through leaves and through the soil apart, each by"
              + " itself against the house rules, in the weather of that season. A site that the weed"
              + " resists, as weeds.csv lists it today, is struck out.",
          "Met <2: share of the season's emergence that met no effective site or one only. The order goes"
              + " by its mean over the seasons, to whole percent. Of equal ones the larger field comes"
              + " first; then the one of whose emergence more met one site alone, which selects, where"
              + " plants that met none were not selected; then the longer streak; then the one whose"
              + " control falls more without one site.",
          "weeds.csv writes no year to a resistance: what is listed today counts for all seasons, so that"
              + " a site may have been effective in a season before it failed. The catalog is today's"
              + " too.",
          "Sites' number: as many sites as equal parts of the kill would be (Hill number of order 1, after"
              + " Hill 1973; Simpson's, of order 2, in JSON), without resisted ones. Most kill: the site"
              + " that did most of the killing, resisted ones among them, and its share.",
          "Turnover: sites gained and lost since the season before over all of both. It is no merit: in"
              + " Evans et al. 2016 more of it went with more resistance, and more sites in one tank with"
              + " less. Mixing delays resistance; it does not prevent it.");

  private AuditWords() {}

  /** Grower, acres, share on no and on one effective site. */
  public static List<String> acres(String name, LeaningAcres acres) {
    return List.of(
        name,
        Numbers.grouped(acres.acres(), 1),
        percent(acres.onNonePct()),
        percent(acres.onOnePct()));
  }

  public static String percent(double pct) {
    return Numbers.decimals(pct, 0) + " %";
  }

  /** Seasons of each field and weed, in the order in which they are told. */
  public static List<List<RankedSites>> byWeed(SiteAudit audit) {
    Map<List<Object>, List<RankedSites>> out = new LinkedHashMap<>();
    for (RankedSites r : audit.ranked()) {
      out.computeIfAbsent(
              List.of(r.sites().field().id(), r.sites().weed().weed().id()), k -> new ArrayList<>())
          .add(r);
    }
    return List.copyOf(out.values());
  }

  /** Its place among all, with a point; nothing for one that has none. */
  public static String place(RankedSites r) {
    return r.rank().isPresent() ? r.rank().getAsInt() + ". " : "";
  }

  /** Place, field and weed. */
  public static String title(RankedSites r) {
    SeasonSites any = r.sites();
    return place(r)
        + any.field().id()
        + ", "
        + any.field().name()
        + ", "
        + Numbers.grouped(any.field().acres(), 1)
        + " acres: "
        + any.weed().weed().name();
  }

  /** One season: sites applied and effective, their number, dependence, streak and turnover. */
  public static List<String> row(Book book, RankedSites r) {
    SeasonSites s = r.sites();
    return List.of(
        Integer.toString(s.season()),
        book.catalog().crop(s.field().crop()).name(),
        sites(s.applied()),
        sites(s.effective()),
        Numbers.decimals(s.effectiveNumber(), 1),
        s.met().map(m -> percent(m.nonePct() + m.onePct())).orElse("?"),
        s.dominant().map(d -> d + ", " + percent(100 * s.dominantShare())).orElse("none"),
        Integer.toString(r.streakYears()),
        r.turnover().map(t -> Numbers.decimals(t, 2)).orElse("-"));
  }

  /** What each pass of a season had that works. */
  public static List<String> passes(SeasonSites s) {
    List<String> out = new ArrayList<>();
    for (SprayedPass p : s.passes()) {
      out.add(
          Figures.date(p.date())
              + ": leaves "
              + (p.weedStood() ? sites(p.effectiveFoliar()) : "(no plants up)")
              + "; soil "
              + sites(p.effectiveSoil())
              + (p.byTable() ? "; by the response table" : ""));
    }
    return out;
  }

  public static List<String> notes(List<RankedSites> seasons) {
    Set<String> notes = new LinkedHashSet<>();
    seasons.forEach(r -> r.sites().notes().forEach(n -> notes.add(r.sites().season() + ": " + n)));
    return new ArrayList<>(notes);
  }

  public static String sites(Collection<Site> sites) {
    return sites.isEmpty()
        ? "none"
        : sites.stream().map(Site::toString).collect(Collectors.joining(" "));
  }

  /** What the rules say of what was sprayed, and of what they could say nothing. */
  public static List<String> findings(SiteAudit audit) {
    List<String> out = new ArrayList<>();
    out.add(
        "Rates, windows, caps, counts, intervals, next crops and pairs in a tank, by today's catalog."
            + " Crop stages are the journal's, or the model's where it has none; heights are the"
            + " model's at that stage. Wind, where it blew to and the air's temperature are judged"
            + " where the row has them; the hour, water, nozzles and what the catalog does not say are"
            + " not.");
    audit.notAudited().forEach(n -> out.add("NOT JUDGED: " + n));
    if (audit.findings().isEmpty()) {
      out.add(
          audit.notAudited().isEmpty()
              ? "No block and no warning."
              : "No block and no warning in what was judged.");
    }
    for (JournalFinding f : audit.findings()) {
      out.add(
          f.finding().severity().word().toUpperCase(Locale.ROOT)
              + " "
              + f.field().id()
              + " "
              + Figures.date(f.date())
              + " "
              + f.application()
              + " "
              + f.finding().rule().value()
              + ": "
              + f.finding().message());
    }
    return out;
  }
}
