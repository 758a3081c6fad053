package org.swathbook.cli.html;

import java.util.ArrayList;
import java.util.List;
import org.swathbook.cli.report.Cautions;
import org.swathbook.cli.report.ReportHead;
import org.swathbook.cli.text.ProgramWords;

/**
 * What stands at the head and the foot of every page.
 *
 * @param title of the page, which a browser prints on its edge
 * @param made for whom and which day it is
 * @param notes weather behind the page, and what the reader should know of the book
 */
public record SheetHead(String title, String made, List<String> notes, List<String> cautions) {

  public SheetHead {
    notes = List.copyOf(notes);
    cautions = List.copyOf(cautions);
  }

  static SheetHead of(String title, ReportHead head) {
    List<String> notes = new ArrayList<>();
    for (ReportHead.Station s : head.stations()) {
      notes.add("Weather of " + s.id() + ": " + ProgramWords.years(s.years()) + ".");
    }
    head.notes().forEach(n -> notes.add("Note: " + n));
    return new SheetHead(
        title, head.book() + " · " + ProgramWords.date(head.today()), notes, Cautions.ALL);
  }
}
