package org.swathbook.cli.text;

import org.swathbook.cli.report.Cautions;
import org.swathbook.cli.report.ReportHead;

/** How every report begins and ends. */
final class HeadText {
  private HeadText() {}

  static void on(Page page, String title, ReportHead head) {
    page.apart("Swathbook · " + title, "today " + Figures.date(head.today()));
    page.line(head.book());
    for (ReportHead.Station s : head.stations()) {
      page.wrapped(
          0,
          2,
          "Weather of "
              + s.id()
              + ": "
              + Figures.counted(s.years().size(), "year", "years")
              + ", "
              + Figures.years(s.years()));
    }
    head.notes().forEach(n -> page.wrapped(0, 2, "Note: " + n));
    page.blank();
  }

  /** Explains the figures of a program, where there are any, and ends with the cautions. */
  static void foot(Page page, boolean figures) {
    page.rule('=');
    if (figures) {
      page.line("How to read the figures");
      for (String line : FIGURES) {
        page.wrapped(2, 4, line);
      }
      page.blank();
    }
    page.line("Cautions");
    Cautions.ALL.forEach(c -> page.wrapped(2, 4, c));
  }

  private static final String[] FIGURES = {
    "Every program is walked day by day through every weather year; each year counts the same.",
    "Dates are those of the season; a pass goes on the first day fit to spray at or after its date.",
    "* driver weed: one that decides the program.",
    "Control: what an eye would rate at canopy closure or 60 days after planting, late seedlings"
        + " counting little. Survivors stand beside it by number, at harvest: those up in time to"
        + " matter, and all.",
    "Exposed: share of the season's emergence that comes up between planting and the day control is"
        + " no longer needed, while no residual holds it.",
    "Weakest site: the site of action that would be missed most, with the mean control left"
        + " without it.",
    "Effective sites: each alone controls enough of the weed by the house rules; half-effective and"
        + " resisted ones are shown and not counted. Foliar and soil sites are never added.",
  };
}
