package org.swathbook.cli.text;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.swathbook.cli.report.ReportHead;
import org.swathbook.escapes.DueLook;
import org.swathbook.measure.Numbers;

/** Passes that somebody should look at. */
public final class DueText {
  private DueText() {}

  private static String scouted(DueLook d) {
    return d.field().id()
        + ", scouted "
        + Figures.date(d.scouted().get(0).date())
        + ": "
        + d.scouted().stream()
            .map(
                s ->
                    s.weed().orElseThrow()
                        + " "
                        + Numbers.decimals(s.count().orElseThrow().perM2(), 2)
                        + " plants/m²")
            .collect(Collectors.joining(", "))
        + "; an observation tells what they mean";
  }

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
      for (DueLook d : looks) {
        if (!d.scouted().isEmpty()) {
          page.wrapped(2, 4, scouted(d));
        }
      }
    }
    page.blank();
    page.wrapped(
        0,
        2,
        "From: contact sites are judged from day 7, systemic ones from day 14. To: a look after three"
            + " weeks leaves little time to act. Both common practice, no source. A pass of which the"
            + " book has an observation that came late enough is left out, and one after which"
            + " scouting.csv, late enough, counts no plant. Cool days at the field's station, where"
            + " its record has them, count less, down to a half at a mean of 50 °F (from memory; the"
            + " temperatures are ours), and move the first day.");
    page.blank();
    HeadText.foot(page, false);
    return page.toString();
  }
}
