package org.swathbook.cli.html;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;
import org.swathbook.audit.LeaningAcres;
import org.swathbook.audit.RankedSites;
import org.swathbook.audit.SiteAudit;
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
    Map<Integer, List<RankedSites>> byRank = new LinkedHashMap<>();
    audit.ranked().forEach(r -> byRank.computeIfAbsent(r.rank(), k -> new ArrayList<>()).add(r));
    List<List<RankedSites>> ranked = new ArrayList<>(byRank.values());
    html.picture(ranked);
    html.acres(audit);
    ranked.forEach(html::weed);
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

  private void picture(List<List<RankedSites>> ranked) {
    SortedSet<Integer> seasons = new TreeSet<>();
    ranked.forEach(of -> of.forEach(r -> seasons.add(r.sites().season())));
    if (seasons.isEmpty()) {
      return;
    }
    blocks.add(
        new Block.Picture(
            AuditChart.of(ranked, seasons, AuditChart.WIDE),
            AuditChart.of(ranked, seasons, AuditChart.NARROW),
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
    List<List<String>> rows = new ArrayList<>();
    audit.growers().forEach((grower, acres) -> rows.add(AuditWords.acres(grower, acres)));
    LeaningAcres all = audit.acres();
    rows.add(AuditWords.acres("all", all));
    blocks.add(new Block.Grid(List.of("grower", "acres", "on none", "on one"), rows));
    audit.notAudited().forEach(this::small);
  }

  private void weed(List<RankedSites> seasons) {
    blocks.add(new Block.Heading(AuditWords.title(seasons.get(0))));
    blocks.add(new Block.Line("", seasons.get(0).reason()));
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
            seasons.stream().map(r -> AuditWords.row(book, r)).toList()));
    for (RankedSites r : seasons) {
      AuditWords.passes(r.sites()).forEach(this::small);
    }
    AuditWords.notes(seasons).forEach(this::small);
  }

  private void findings(SiteAudit audit) {
    blocks.add(new Block.Heading("What the rules of a plan say of the journal"));
    AuditWords.findings(audit).forEach(l -> blocks.add(new Block.Line("fact", l)));
  }
}
