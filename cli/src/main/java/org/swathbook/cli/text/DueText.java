package org.swathbook.cli.text;

import java.util.ArrayList;
import java.util.List;
import org.swathbook.cli.report.ReportHead;
import org.swathbook.escapes.DueLook;

/** Passes that somebody should look at. */
public final class DueText {
  private DueText() {}

  public static String of(ReportHead head, List<DueLook> looks) {
    Page page = new Page();
    HeadText.on(page, "Looks that are due", head);
    if (looks.isEmpty()) {
      page.line("No pass of the last six weeks waits for a look.");
    } else {
      Table table = new Table(0, "llllll");
      table.row("field", "sprayed", "look from", "to", "", "actives");
      for (DueLook d : looks) {
        table.row(
            d.field().id().value(),
            Figures.date(d.sprayed()),
            Figures.date(d.from()),
            Figures.date(d.to()),
            d.when().word(),
            Figures.list(new ArrayList<>(d.actives())));
      }
      table.on(page);
    }
    page.blank();
    page.wrapped(
        0,
        2,
        "From: contact sites are judged from day 7, systemic ones from day 14. To: a look after three"
            + " weeks leaves little time to act. Both common practice, no source. A pass of which the"
            + " book has an observation that came late enough is left out.");
    page.blank();
    HeadText.foot(page, false);
    return page.toString();
  }
}
