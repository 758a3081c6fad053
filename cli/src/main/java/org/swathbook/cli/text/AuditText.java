package org.swathbook.cli.text;

import java.util.List;
import org.swathbook.audit.RankedSites;
import org.swathbook.audit.SiteAudit;
import org.swathbook.book.Book;
import org.swathbook.cli.report.ReportHead;

/** Which fields lean on one chemistry, the worst first, and what rules say of what was sprayed. */
public final class AuditText {

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
    for (String line : AuditWords.READING) {
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
    audit.growers().forEach((grower, acres) -> table.row(AuditWords.acres(grower, acres)));
    table.row(AuditWords.acres("all", audit.acres()));
    table.on(page);
    audit.notAudited().forEach(n -> page.wrapped(2, 4, n));
    page.blank();
  }

  /** Of a long book thousands of seasons are told, and what is said of one rests on no other. */
  private void weeds(SiteAudit audit) {
    AuditWords.byWeed(audit).parallelStream().map(this::weed).toList().forEach(page::add);
  }

  private Page weed(List<RankedSites> seasons) {
    Page own = new Page();
    own.rule('-');
    own.line(AuditWords.title(seasons.get(0)));
    own.wrapped(2, 4, seasons.get(0).reason());
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
    seasons.forEach(r -> table.row(AuditWords.row(book, r)));
    table.on(own);
    for (RankedSites r : seasons) {
      AuditWords.passes(r.sites()).forEach(p -> own.wrapped(2, 4, p));
    }
    AuditWords.notes(seasons).forEach(n -> own.wrapped(2, 4, n));
    return own.blank();
  }

  private void findings(SiteAudit audit) {
    page.rule('-');
    page.line("What the rules of a plan say of the journal");
    AuditWords.findings(audit).forEach(l -> page.wrapped(2, 4, l));
    page.blank();
  }
}
