package org.swathbook.cli.html;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.swathbook.book.Book;
import org.swathbook.catalog.WeedId;
import org.swathbook.cli.report.LayerSummary;
import org.swathbook.cli.report.SeasonCalendar;
import org.swathbook.cli.text.ProgramWords;
import org.swathbook.season.outcome.PassOutcome;
import org.swathbook.season.outcome.PassWeed;
import org.swathbook.season.outcome.SeasonOutcome;
import org.swathbook.season.outcome.WeedOutcome;

/**
 * The season of a program on a calendar. Below months, crop stages and passes each driver weed has
 * its emergence by weeks, the median layer of each pass, and one line a weather year with the
 * layers that hold in it and the gaps between them; below all are the days that labels leave open.
 */
final class SeasonChart {
  /** Pixels that a letter of the small print takes, on the wide side. */
  private static final double LETTER = 5.8;

  private static final double LEFT = 38;

  /** Pixels right of the days. */
  static final double RIGHT = 44;

  private final Book book;
  private final SeasonOutcome outcome;
  private final SeasonCalendar calendar;
  private final Places places;
  private final double width;
  private final DaysAcross days;

  /** Height of the line of a year, and of the tallest column of emergence. */
  private final double yearRow;

  private final double hump;
  private final Drawing.Pen pen = new Drawing.Pen();
  private final YearLine yearLine;
  private double y;

  /**
   * Where the figures stand in the JSON document.
   *
   * @param program pointer of the program
   * @param years of its years, and {@code calendar} of its calendar; null where the document has
   *     none
   */
  record Places(String program, @Nullable String years, @Nullable String calendar) {

    String pass(PassOutcome p, String keys) {
      return program + "/passes/" + p.index() + "/" + keys;
    }
  }

  private SeasonChart(
      Book book, SeasonOutcome outcome, SeasonCalendar calendar, Places places, double width) {
    this.book = book;
    this.outcome = outcome;
    this.calendar = calendar;
    this.places = places;
    this.width = width;
    this.days = new DaysAcross(calendar.from(), calendar.to(), LEFT, width - RIGHT);
    this.yearRow = width < 500 ? 11 : 12;
    this.hump = width < 500 ? 50 : 70;
    this.yearLine = new YearLine(pen, outcome, book.season(), days, yearRow);
  }

  static Drawing of(
      Book book, SeasonOutcome outcome, SeasonCalendar calendar, Places places, double width) {
    return new SeasonChart(book, outcome, calendar, places, width).drawn();
  }

  private Drawing drawn() {
    months();
    stages();
    passes();
    double top = y;
    List<WeedOutcome> drivers =
        outcome.weeds().stream().filter(w -> w.pressure().driver().isDriver()).toList();
    drivers.forEach(this::weed);
    windows();
    for (PassOutcome p : outcome.passes()) {
      if (!neverMade(p)) {
        double at = x(p.timing().medianDate());
        pen.under(at, top - 6, at, y, "pass");
      }
    }
    return pen.drawing(
        "Season of "
            + outcome.program().name()
            + ": crop stages, passes, emergence of "
            + String.join(", ", drivers.stream().map(w -> w.pressure().weed().name()).toList())
            + ", soil layers and gaps by year. The same figures stand in the tables below.",
        width,
        y + 4);
  }

  private double x(LocalDate date) {
    return days.x(date);
  }

  private boolean shows(LocalDate date) {
    return days.shows(date);
  }

  private void months() {
    LocalDate first = calendar.from().withDayOfMonth(1);
    for (LocalDate m = first; !m.isAfter(calendar.to()); m = m.plusMonths(1)) {
      if (shows(m)) {
        pen.line(x(m), 4, x(m), 18, "grid");
      }
      double room = x(m.plusMonths(1)) - x(m);
      if (room > 4 * LETTER) {
        pen.label(x(m) + 3, 13, "start", "month", ProgramWords.day(m).substring(2));
      }
    }
    y = 18;
  }

  /** Names that would run into each other are left out, planting never. */
  private void stages() {
    double line = y + 18;
    pen.line(LEFT, line, width - RIGHT, line, "axis");
    double free = Double.NEGATIVE_INFINITY;
    List<SeasonCalendar.Stage> all = new ArrayList<>();
    all.add(
        new SeasonCalendar.Stage(
            "planting",
            new SeasonCalendar.Dates(
                calendar.planting(), calendar.planting(), calendar.planting())));
    all.addAll(calendar.stages());
    for (SeasonCalendar.Stage s : all) {
      if (!shows(s.reached().median())) {
        continue;
      }
      double at = x(s.reached().median());
      double half = s.name().length() * LETTER / 2;
      if (at - half < free) {
        continue;
      }
      pen.line(x(s.reached().earliest()), line, x(s.reached().latest()), line, "spread");
      pen.line(at, line - 3, at, line + 3, "tick");
      pen.label(at, line - 6, "middle", "stage", s.name());
      free = at + half + 4;
    }
    y = line + 6;
  }

  private boolean neverMade(PassOutcome p) {
    return p.missedYears().size() == outcome.years().size();
  }

  /** A number on the median day and a bar from the earliest to the latest. */
  private void passes() {
    double line = y + 12;
    for (PassOutcome p : outcome.passes()) {
      String number = Integer.toString(p.index() + 1);
      boolean never = neverMade(p);
      double at = x(never ? p.planned() : p.timing().medianDate());
      if (!never) {
        double from = x(p.earliest());
        pen.box(from, line - 3, x(p.latest()) - from, 6, "reach");
      }
      pen.dot(
          at,
          line,
          8,
          never ? "missed" : "number",
          Marked.of("pass " + number, places.pass(p, "pass")));
      pen.label(
          at,
          line + 3.5,
          "middle",
          never ? "missedNo" : "no",
          Marked.of(number, places.pass(p, "pass")));
    }
    y = line + 16;
  }

  private void weed(WeedOutcome w) {
    WeedId id = w.pressure().weed().id();
    pen.label(0, y + 12, "start", "weed", w.pressure().weed().name());
    pen.label(width - 2, y + 12, "end", "small", "exposed %");
    y += 18;
    calendar.weed(id).ifPresent(e -> emergence(e, id));
    layers(id);
    y += 3;
    for (int i = 0; i < outcome.years().size(); i++) {
      String at = places.years() == null ? null : places.years() + "/" + i + "/";
      yearLine.draw(outcome.years().get(i), id, at, y);
      y += yearRow;
    }
    y += 10;
  }

  private void emergence(SeasonCalendar.Emergence e, WeedId id) {
    double most = e.weeks().stream().mapToDouble(SeasonCalendar.Week::highPct).max().orElse(0);
    double base = y + hump;
    int weed = calendar.weeds().indexOf(e);
    String weeks =
        places.calendar() == null ? null : places.calendar() + "/emergence/" + weed + "/weeks/";
    for (int i = 0; i < e.weeks().size(); i++) {
      SeasonCalendar.Week w = e.weeks().get(i);
      LocalDate end = w.from().plusDays(7);
      if (most <= 0 || !shows(w.from()) || !shows(end)) {
        continue;
      }
      double from = x(w.from());
      double wide = x(end) - from - 1;
      double mean = hump * w.meanPct() / most;
      pen.box(
          from,
          base - mean,
          wide,
          mean,
          "hump",
          Marked.under(
              weeks,
              "week from "
                  + ProgramWords.day(w.from())
                  + ": "
                  + ProgramWords.percent(w.meanPct())
                  + " % of the emergence (years "
                  + ProgramWords.percent(w.lowPct())
                  + " to "
                  + ProgramWords.percent(w.highPct())
                  + " %)",
              i + "/from",
              i + "/meanPct",
              i + "/lowPct",
              i + "/highPct"));
      double middle = from + wide / 2;
      pen.line(
          middle,
          base - hump * w.lowPct() / most,
          middle,
          base - hump * w.highPct() / most,
          "spread");
    }
    pen.line(LEFT, base, width - RIGHT, base, "axis");
    double need = x(e.neededUntil().median());
    pen.line(need, y, need, base, "need");
    pen.label(need + 3, y + 8, "start", "small", "needed until");
    sizes(id);
    y = base + 4;
  }

  /** How tall the weed is at each pass; one that does not stand has no size. */
  private void sizes(WeedId id) {
    int row = 0;
    for (PassOutcome p : outcome.passes()) {
      for (PassWeed w : p.weeds()) {
        if (w.weed().equals(id) && w.stands() && !neverMade(p)) {
          double at = x(p.timing().medianDate());
          boolean left = at > width * 0.7;
          pen.label(
              left ? at - 4 : at + 4,
              y + 8 + 11 * (row % 3),
              left ? "end" : "start",
              "size",
              Marked.of(
                  "to " + ProgramWords.inches(w.p90Cm()) + " in",
                  places.pass(p, "weedHeightIn/" + id.value() + "/p90")));
          row++;
        }
      }
    }
  }

  private void layers(WeedId id) {
    for (PassOutcome p : outcome.passes()) {
      Optional<LayerSummary> found = LayerSummary.of(outcome, book.season(), p.index(), id);
      if (found.isEmpty()) {
        continue;
      }
      LayerSummary l = found.get();
      double from = x(l.from());
      double to = x(l.to());
      pen.box(from, y + 2, to - from, 8, YearLine.fill(p.index()));
      String text =
          "layer of pass "
              + (p.index() + 1)
              + ": "
              + ProgramWords.day(l.from())
              + " - "
              + ProgramWords.day(l.to());
      String layer = places.pass(p, "layers/" + id.value());
      Marked words = Marked.of(text, places.pass(p, "pass"), layer + "/from", layer + "/to");
      double room = text.length() * LETTER * 0.86;
      if (to + 4 + room < width) {
        pen.label(to + 4, y + 9, "start", "small", words);
      } else if (from - 4 - room > 0) {
        pen.label(from - 4, y + 9, "end", "small", words);
      } else {
        y += 11;
        pen.label(LEFT, y + 9, "start", "small", words);
      }
      y += 12;
    }
  }

  private Marked open(String words, @Nullable String at, String stretch) {
    return at == null || places.years() == null
        ? Marked.plain(words)
        : Marked.of(
            words,
            at + stretch + "from",
            at + stretch + "to",
            at + stretch + "years",
            places.years());
  }

  private void windows() {
    if (calendar.windows().isEmpty()) {
      return;
    }
    pen.label(0, y + 10, "start", "weed", "Days that labels leave open");
    y += 16;
    for (int i = 0; i < calendar.windows().size(); i++) {
      SeasonCalendar.Window w = calendar.windows().get(i);
      String at = places.calendar() == null ? null : places.calendar() + "/windows/" + i + "/";
      String number = places.program() + "/passes/" + w.pass() + "/pass";
      pen.label(LEFT - 4, y + 9, "end", "year", Marked.of("pass " + (w.pass() + 1), number));
      pen.line(LEFT, y + 11, width - RIGHT, y + 11, "faint");
      for (int j = 0; j < w.open().size(); j++) {
        SeasonCalendar.Stretch s = w.open().get(j);
        String stretch = "open/" + j + "/";
        double from = x(s.from());
        double share = (double) s.years() / outcome.years().size();
        pen.box(
            from,
            y + 11 - 9 * share,
            x(s.to().plusDays(1)) - from,
            9 * share,
            share == 1 ? "open" : "some",
            open(
                ProgramWords.day(s.from())
                    + " - "
                    + ProgramWords.day(s.to())
                    + ": open in "
                    + s.years()
                    + " of "
                    + outcome.years().size()
                    + " years",
                at,
                stretch));
      }
      if (w.open().isEmpty()) {
        pen.label(LEFT + 4, y + 9, "start", "small", "no day in any year");
      }
      y += 14;
    }
  }
}
