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
import org.swathbook.cli.report.ReportHead;
import org.swathbook.measure.Numbers;

/** Which fields lean on one chemistry, the worst first, and what rules say of what was sprayed. */
public final class AuditText {
  private static final String[] READING = {
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
    "Sites' number: as many sites as equal parts of the kill would be (Hill number of order 1,"
        + " after Hill 1973; Simpson's, of order 2, in JSON), without resisted ones. Most kill: the"
        + " site that did most of the killing, resisted ones among them, and its share.",
    "Turnover: sites gained and lost since the season before over all of both. It is no merit: in"
        + " Evans et al. 2016 more of it went with more resistance, and more sites in one tank with"
        + " less. Mixing delays resistance; it does not prevent it.",
  };

  private final Book book;
  private final Page page = new Page();

  private AuditText(Book book) {
    this.book = book;
  }

  public static String of(Book book, ReportHead head, SiteAudit audit) {
    AuditText text = new AuditText(book);
    HeadText.on(text.page, "Audit", head);
    text.acres(audit);
    text.weeds(audit);
    text.findings(audit);
    text.page.rule('=');
    text.page.line("How to read the figures");
    for (String line : READING) {
      text.page.wrapped(2, 4, line);
    }
    text.page.blank();
    HeadText.foot(text.page, false);
    return text.page.toString();
  }

  private void acres(SiteAudit audit) {
    page.line("Acres by effective sites on the driver weed that met fewest, last season");
    Table table = new Table(2, "lrrr");
    table.row("grower", "acres", "on none", "on one");
    audit.growers().forEach((grower, acres) -> row(table, grower, acres));
    row(table, "all", audit.acres());
    table.on(page);
    audit.notAudited().forEach(n -> page.wrapped(2, 4, n));
    page.blank();
  }

  private static void row(Table table, String name, LeaningAcres acres) {
    table.row(
        name,
        Numbers.decimals(acres.acres(), 1),
        percent(acres.onNonePct()),
        percent(acres.onOnePct()));
  }

  private static String percent(double pct) {
    return Numbers.decimals(pct, 0) + " %";
  }

  private void weeds(SiteAudit audit) {
    Map<Integer, List<RankedSites>> byRank = new LinkedHashMap<>();
    audit.ranked().forEach(r -> byRank.computeIfAbsent(r.rank(), k -> new ArrayList<>()).add(r));
    byRank.values().forEach(this::weed);
  }

  private void weed(List<RankedSites> seasons) {
    SeasonSites any = seasons.get(0).sites();
    page.rule('-');
    page.line(
        seasons.get(0).rank()
            + ". "
            + any.field().id()
            + ", "
            + any.field().name()
            + ", "
            + Numbers.decimals(any.field().acres(), 1)
            + " acres: "
            + any.weed().weed().name());
    page.wrapped(2, 4, seasons.get(0).reason());
    Table table = new Table(2, "rlllrrlrr");
    table.row(
        "season",
        "crop",
        "applied",
        "effective",
        "number",
        "met <2",
        "most kill",
        "streak",
        "turnover");
    seasons.forEach(r -> row(table, r));
    table.on(page);
    for (RankedSites r : seasons) {
      passes(r.sites());
    }
    Set<String> notes = new LinkedHashSet<>();
    seasons.forEach(r -> r.sites().notes().forEach(n -> notes.add(r.sites().season() + ": " + n)));
    notes.forEach(n -> page.wrapped(2, 4, n));
    page.blank();
  }

  private void row(Table table, RankedSites r) {
    SeasonSites s = r.sites();
    table.row(
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

  private void passes(SeasonSites s) {
    for (SprayedPass p : s.passes()) {
      page.wrapped(
          2,
          4,
          Figures.date(p.date())
              + ": leaves "
              + (p.weedStood() ? sites(p.effectiveFoliar()) : "(no plants up)")
              + "; soil "
              + sites(p.effectiveSoil())
              + (p.byTable() ? "; by the response table" : ""));
    }
  }

  private static String sites(Collection<Site> sites) {
    return sites.isEmpty()
        ? "none"
        : sites.stream().map(Site::toString).collect(Collectors.joining(" "));
  }

  private void findings(SiteAudit audit) {
    page.rule('-');
    page.line("What the rules of a plan say of the journal");
    page.wrapped(
        2,
        4,
        "Rates, windows, caps, counts, intervals, next crops and pairs in a tank, by today's"
            + " catalog. Crop stages are the journal's, or the model's where it has none; heights"
            + " are the model's at that stage. Wind, where it blew to and the air's temperature are"
            + " judged where the row has them; the hour, water, nozzles and what the catalog does"
            + " not say are not.");
    audit.notAudited().forEach(n -> page.wrapped(2, 4, "NOT JUDGED: " + n));
    if (audit.findings().isEmpty()) {
      page.line(
          audit.notAudited().isEmpty()
              ? "  No block and no warning."
              : "  No block and no warning in what was judged.");
    }
    for (JournalFinding f : audit.findings()) {
      page.wrapped(
          2,
          4,
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
    page.blank();
  }
}
