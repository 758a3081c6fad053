package org.swathbook.cli.html;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.swathbook.audit.LeaningAcres;
import org.swathbook.audit.RankedSites;
import org.swathbook.audit.SeasonSites;
import org.swathbook.audit.SiteAudit;
import org.swathbook.audit.SprayedPass;
import org.swathbook.book.Book;
import org.swathbook.cli.report.ReportHead;
import org.swathbook.cli.text.AuditWords;

/** The page of {@code audit}: fields and seasons by sites of action, those that lean most first. */
public final class AuditHtml {
  private final Book book;
  private final List<Block> blocks = new ArrayList<>();

  private AuditHtml(Book book) {
    this.book = book;
  }

  public static String of(Book book, ReportHead head, SiteAudit audit) {
    AuditHtml html = new AuditHtml(book);
    List<List<RankedSites>> ranked = AuditWords.byWeed(audit);
    html.picture(ranked, r -> at(audit, r));
    html.acres(audit);
    ranked.forEach(of -> html.weed(audit, of));
    html.findings(audit);
    html.blocks.add(new Block.Heading("How to read the figures"));
    AuditWords.READING.forEach(html::small);
    return Pages.fill(
        "blocks.jte",
        new BlockPage(SheetHead.of("Which fields lean on one chemistry", head), html.blocks));
  }

  private void small(String words) {
    blocks.add(new Block.Line("small", words));
  }

  private void picture(List<List<RankedSites>> ranked, Function<RankedSites, String> at) {
    SortedSet<Integer> seasons = new TreeSet<>();
    ranked.forEach(of -> of.forEach(r -> seasons.add(r.sites().season())));
    if (seasons.isEmpty()) {
      return;
    }
    blocks.add(
        new Block.Picture(
            AuditChart.of(ranked, seasons, at, AuditChart.WIDE),
            AuditChart.of(ranked, seasons, at, AuditChart.NARROW),
            "A row a field and driver weed, the one that leans most on top; a column a season. In"
                + " each cell the effective sites of action, and below them the share of the"
                + " season's emergence that met fewer than two: the bar at its foot is that"
                + " share. A heavy edge: one effective site or none. A blank cell: nothing is known"
                + " of that season."));
  }

  private void acres(SiteAudit audit) {
    blocks.add(
        new Block.Heading(
            "Acres by effective sites on the driver weed that met fewest, last season"));
    List<List<Marked>> rows = new ArrayList<>();
    audit
        .growers()
        .forEach((grower, acres) -> rows.add(acres(grower, acres, "/growers/" + rows.size())));
    rows.add(acres("all", audit.acres(), ""));
    blocks.add(new Block.Grid(List.of("grower", "acres", "on none", "on one"), rows));
    audit.notAudited().forEach(this::small);
  }

  private static List<Marked> acres(String name, LeaningAcres acres, String at) {
    List<String> row = AuditWords.acres(name, acres);
    return List.of(
        Marked.plain(row.get(0)),
        Marked.of(row.get(1), at + "/acresAudited:1"),
        Marked.of(row.get(2), at + "/acresOnNoEffectiveSitePct"),
        Marked.of(row.get(3), at + "/acresOnOneEffectiveSitePct"));
  }

  private void weed(SiteAudit audit, List<RankedSites> seasons) {
    RankedSites any = seasons.get(0);
    blocks.add(new Block.Heading(AuditWords.title(any)));
    blocks.add(new Block.Line("", Marked.of(any.reason(), at(audit, any) + "/reason")));
    blocks.add(
        new Block.Grid(
            List.of(
                "season",
                "crop",
                "applied",
                "effective",
                "sites' number",
                "met fewer than two",
                "most kill",
                "streak, seasons",
                "turnover"),
            seasons.stream().map(r -> row(r, at(audit, r))).toList()));
    for (RankedSites r : seasons) {
      passes(r.sites(), at(audit, r) + "/passes/");
    }
    AuditWords.notes(seasons).forEach(this::small);
  }

  private static String at(SiteAudit audit, RankedSites r) {
    return "/fields/" + audit.ranked().indexOf(r);
  }

  private List<Marked> row(RankedSites r, String at) {
    List<String> row = AuditWords.row(book, r);
    SeasonSites s = r.sites();
    String met = at + "/emergenceMetPct";
    return List.of(
        Marked.of(row.get(0), at + "/season"),
        Marked.plain(row.get(1)),
        Marked.of(row.get(2), each(at + "/sitesApplied/", s.applied().size())),
        Marked.of(row.get(3), each(at + "/effectiveSites/", s.effective().size())),
        Marked.of(row.get(4), at + "/effectiveSiteNumber:1"),
        Marked.of(row.get(5), s.met().isPresent() ? met + "/none+" + met + "/one" : ""),
        s.dominant().isPresent()
            ? Marked.of(row.get(6), at + "/dominantSite", at + "/dominantShare*100")
            : Marked.plain(row.get(6)),
        Marked.of(row.get(7), at + "/streakYears"),
        Marked.of(row.get(8), r.turnover().isPresent() ? at + "/siteTurnover:2" : ""));
  }

  private void passes(SeasonSites s, String at) {
    List<String> lines = AuditWords.passes(s);
    for (int i = 0; i < lines.size(); i++) {
      SprayedPass p = s.passes().get(i);
      blocks.add(
          new Block.Line(
              "small",
              Marked.of(
                  lines.get(i),
                  at + i + "/date",
                  p.weedStood() ? each(at + i + "/foliarSites/", p.effectiveFoliar().size()) : "",
                  each(at + i + "/soilSites/", p.effectiveSoil().size()))));
    }
  }

  private static String each(String at, int n) {
    return IntStream.range(0, n).mapToObj(i -> at + i).collect(Collectors.joining(" "));
  }

  private void findings(SiteAudit audit) {
    blocks.add(new Block.Heading("What the rules of a plan say of the journal"));
    List<String> lines = AuditWords.findings(audit);
    int first = lines.size() - audit.findings().size();
    for (int i = 0; i < lines.size(); i++) {
      blocks.add(
          new Block.Line(
              "fact",
              i < first
                  ? Marked.plain(lines.get(i))
                  : Marked.of(
                      lines.get(i),
                      "/findings/" + (i - first) + "/date",
                      "/findings/" + (i - first) + "/message")));
    }
  }
}
