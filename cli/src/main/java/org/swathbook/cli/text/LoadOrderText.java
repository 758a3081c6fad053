package org.swathbook.cli.text;

import java.util.List;
import java.util.Optional;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.check.DayLoads;
import org.swathbook.cli.report.LoadOfDay;
import org.swathbook.cli.report.LoadWords;
import org.swathbook.cli.report.ReportHead;
import org.swathbook.tank.LoadSequence;
import org.swathbook.tank.LoadSequence.Demand;

/** The order of a day's loads, with what stands between them. */
public final class LoadOrderText {
  private LoadOrderText() {}

  /**
   * @param loads of the day, in the order of its jobs
   */
  public static String of(Book book, ReportHead head, List<LoadOfDay> loads, DayLoads day) {
    Page page = new Page();
    HeadText.on(page, "Order of loads", head);
    page.line(
        Figures.date(day.jobs().get(0).date())
            + ", "
            + Figures.counted(loads.size(), "mix", "mixes")
            + ", one sprayer, in the order that takes least clean-out");
    page.blank();
    int n = 0;
    for (LoadSequence.Stop stop : day.sequence().stops()) {
      n++;
      LoadOfDay load = loads.get(stop.load());
      Field field = load.field();
      before(page, book, field, stop, n == 1 && day.held().isEmpty());
      page.line(
          n
              + "  "
              + load.name()
              + ": "
              + field.id()
              + ", "
              + field.name()
              + ", "
              + book.catalog().crop(field.crop()).name());
      page.wrapped(
          5,
          7,
          Figures.list(
              day.jobs().get(stop.load()).mix().actives().stream()
                  .map(a -> a.ingredient().name())
                  .distinct()
                  .toList()));
      if (load.isBlocked()) {
        page.wrapped(
            5,
            7,
            "BLOCKED by "
                + Figures.list(load.blockedBy())
                + ": it gets no load; 'load "
                + load.name()
                + "' says why. Leave it out of the call for the order of the others.");
      }
    }
    page.blank();
    page.wrapped(
        0,
        2,
        day.sequence().fillings() == 0
            ? "No label is known to ask for a clean-out between these in this order."
            : "No other order takes less water for clean-outs, counting a rinse as one filling, a"
                + " triple rinse as three and a tank cleaner as four (default, ours).");
    for (String note : NOTES) {
      page.wrapped(0, 2, note);
    }
    page.blank();
    HeadText.foot(page, false);
    return page.toString();
  }

  private static void before(
      Page page, Book book, Field field, LoadSequence.Stop stop, boolean unknown) {
    if (unknown) {
      page.wrapped(3, 5, "What the sprayer held before is NOT KNOWN; ask before loading.");
    }
    Optional<String> rinse = stop.before().map(LoadWords::rinse);
    if (rinse.isEmpty()) {
      return;
    }
    page.wrapped(3, 5, "CLEAN OUT by " + rinse.get() + " of tank, lines, screens and boom ends:");
    String crop = book.catalog().crop(field.crop()).name();
    for (LoadSequence.Because b : stop.because()) {
      page.wrapped(
          5,
          7,
          b.demand() == Demand.UNKNOWN
              ? b.active() + ": NOT KNOWN before " + crop + ", read it on its label"
              : b.active() + ": traces injure " + crop);
    }
  }

  private static final String[] NOTES = {
    "A mix that is not marked as blocked has its own verdict, and its own sheet, by"
        + " 'load MIX'. Where a mix names another last load than this order gives it, write the one of"
        + " this order into it first.",
    "Weather, growth and the hours of the day may ask for another order; then clean out by the"
        + " labels of what was sprayed before. After the last load the sprayer is cleaned too.",
  };
}
