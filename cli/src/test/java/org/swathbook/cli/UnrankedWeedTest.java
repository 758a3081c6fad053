package org.swathbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.swathbook.audit.RankedSites;
import org.swathbook.audit.SiteAudit;
import org.swathbook.book.Book;
import org.swathbook.book.file.BookLoader;
import org.swathbook.cli.html.AuditHtml;
import org.swathbook.cli.json.AuditJson;
import org.swathbook.cli.report.ReportHead;
import org.swathbook.cli.text.AuditText;

/**
 * A driver weed of a told field that has no place is told all the same, and no place is made up.
 */
class UnrankedWeedTest {
  private static final Book DEMO = new BookLoader().load(Path.of("../demo-data"));

  @Test
  void isToldWithoutAPlace() {
    SiteAudit all = SiteAudit.of(DEMO, DEMO.fields().subList(0, 1));
    List<RankedSites> unranked =
        all.ranked().stream()
            .map(
                r ->
                    new RankedSites(
                        r.sites(), r.streakYears(), r.turnover(), OptionalInt.empty(), r.reason()))
            .toList();
    SiteAudit audit =
        new SiteAudit(
            unranked, all.acres(), all.growers(), all.findings(), all.notAudited(), all.notes());
    ReportHead head = ReportHead.of(DEMO, List.of(), LocalDate.of(2027, 11, 20));
    String title = DEMO.fields().get(0).id() + ", " + DEMO.fields().get(0).name();
    assertThat(AuditText.of(DEMO, head, all)).contains("1. " + title);
    assertThat(AuditText.of(DEMO, head, audit))
        .contains("\n" + title)
        .doesNotContain("1. " + title);
    assertThat(AuditJson.of(DEMO.catalog(), head, audit))
        .containsPattern("\"rank\"\\s*:\\s*null")
        .doesNotContainPattern("\"rank\"\\s*:\\s*[0-9]");
    assertThat(AuditHtml.of(DEMO, head, audit)).contains(title).doesNotContain("1. " + title);
  }
}
