package org.swathbook.cli.html;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.swathbook.catalog.WeedId;
import org.swathbook.cli.report.SeasonDays;
import org.swathbook.cli.text.ProgramWords;
import org.swathbook.season.outcome.GapSpan;
import org.swathbook.season.outcome.LayerSpan;
import org.swathbook.season.outcome.PassOutcome;
import org.swathbook.season.outcome.SeasonOutcome;
import org.swathbook.season.outcome.YearOutcome;

/**
 * The line of one weather year in a season's chart: layers that hold against a weed, gaps between
 * them with the share of the emergence that they let up, and the passes of the year.
 */
final class YearLine {
  /** By how much the layer of each later pass begins lower. */
  private static final double STEP = 2.2;

  /** Layers are told apart by fill and pattern; a fifth pass begins again. */
  private static final int FILLS = 4;

  /** Pixels that a digit of a share takes, on the wide side. */
  private static final double DIGIT = 4.8;

  /** Pixels that a number keeps from the end of its gap, from a pass and from another number. */
  private static final double CLEAR = 2;

  private final Drawing.Pen pen;
  private final SeasonOutcome outcome;
  private final int season;
  private final DaysAcross days;
  private final double height;

  /**
   * @param season year of harvest that the calendar shows
   * @param height of the line, CSS pixels
   */
  YearLine(Drawing.Pen pen, SeasonOutcome outcome, int season, DaysAcross days, double height) {
    this.pen = pen;
    this.outcome = outcome;
    this.season = season;
    this.days = days;
    this.height = height;
  }

  static String fill(int pass) {
    return "layer" + pass % FILLS;
  }

  /** Where something begins and ends. */
  private record Span(double from, double to) {}

  /** The share of a gap and the room for it. */
  private record Share(double share, Span room, Marked words) {}

  /**
   * @param at pointer of the year in the JSON document, a slash behind it; null where it has none
   * @param y upper end of the line
   */
  void draw(YearOutcome year, WeedId weed, @Nullable String at, double y) {
    pen.label(
        days.left() - 4,
        y + height - 2.5,
        "end",
        "year",
        Marked.under(at, Integer.toString(year.year()), "year"));
    pen.line(days.left(), y + height, days.right(), y + height, "faint");
    layers(year, weed, at, y);
    List<Share> shares = gaps(year, weed, at, y);
    Double exposed = year.exposedShare().get(weed);
    pen.label(
        days.right() + SeasonChart.RIGHT,
        y + height - 2.5,
        "end",
        "year",
        exposed == null
            ? Marked.plain("unknown")
            : Marked.under(at, ProgramWords.percent(100 * exposed), "exposedPct/" + weed.value()));
    List<Double> went = passes(year, y);
    numbers(shares, went, y);
  }

  private void layers(YearOutcome year, WeedId weed, @Nullable String at, double y) {
    int row = 0;
    for (LayerSpan l : year.layers()) {
      if (l.weed().equals(weed)) {
        // A later layer lies lower, so that one under it is seen.
        double lower = STEP * (l.pass() % FILLS);
        String layer = "layers/" + row + "/";
        Marked tip =
            tip(
                year,
                l.fromDay(),
                l.toDay(),
                "layer of pass " + (l.pass() + 1),
                at,
                layer + "from",
                layer + "to",
                layer + "pass");
        box(span(year, l.fromDay(), l.toDay()), y, lower, fill(l.pass()), tip);
      }
      // The document has a row for each active of a layer.
      row += l.ingredients().size();
    }
  }

  private List<Share> gaps(YearOutcome year, WeedId weed, @Nullable String at, double y) {
    List<Share> out = new ArrayList<>();
    for (int i = 0; i < year.gaps().size(); i++) {
      GapSpan g = year.gaps().get(i);
      if (g.weed().equals(weed)) {
        String share = ProgramWords.percent(100 * g.emergenceShare());
        String gap = "gaps/" + i + "/";
        Marked tip =
            tip(
                year,
                g.fromDay(),
                g.toDay(),
                "gap: " + share + " % of the emergence",
                at,
                gap + "from",
                gap + "to",
                gap + "emergencePct");
        Span span = span(year, g.fromDay(), g.toDay());
        box(span, y, 0, "gap", tip);
        out.add(new Share(g.emergenceShare(), span, Marked.under(at, share, gap + "emergencePct")));
      }
    }
    return out;
  }

  /**
   * @return where the passes of the year stand
   */
  private List<Double> passes(YearOutcome year, double y) {
    List<Double> out = new ArrayList<>();
    for (PassOutcome p : outcome.passes()) {
      int day = year.passDays().get(p.index());
      if (day < 0) {
        double missed = days.x(p.planned());
        pen.label(missed, y + 9, "middle", "cross", "\u00d7");
        out.add(missed);
      } else {
        double went = days.x(SeasonDays.inSeason(season, year.year(), day));
        pen.line(went, y + 1, went, y + height - 1, "went");
        out.add(went);
      }
    }
    return out;
  }

  /**
   * The shares of the gaps, the largest first: one that finds no room beside passes in its gap, or
   * would touch another number, is told by the tip of its gap and by the tables alone.
   */
  private void numbers(List<Share> shares, List<Double> passes, double y) {
    List<Span> taken = new ArrayList<>();
    passes.forEach(p -> taken.add(new Span(p, p)));
    for (Share s :
        shares.stream().sorted(Comparator.comparingDouble(Share::share).reversed()).toList()) {
      double half = s.words().words().length() * DIGIT / 2 + CLEAR;
      double middle = (s.room().from() + s.room().to()) / 2;
      double best = Double.NaN;
      for (double at = s.room().from() + half; at <= s.room().to() - half; at += 0.5) {
        double here = at;
        boolean free =
            taken.stream().noneMatch(t -> t.to() > here - half && t.from() < here + half);
        if (free && !(Math.abs(at - middle) >= Math.abs(best - middle))) {
          best = at;
        }
      }
      if (!Double.isNaN(best)) {
        taken.add(new Span(best - half + CLEAR, best + half - CLEAR));
        pen.label(best, y + height - 3, "middle", "share", s.words());
      }
    }
  }

  private Marked tip(
      YearOutcome year, int fromDay, int toDay, String what, @Nullable String at, String... keys) {
    List<String> all = new ArrayList<>(List.of("year"));
    all.addAll(List.of(keys));
    return Marked.under(
        at,
        year.year()
            + ", "
            + ProgramWords.day(SeasonDays.inSeason(season, year.year(), fromDay))
            + " - "
            + ProgramWords.day(SeasonDays.inSeason(season, year.year(), toDay))
            + ": "
            + what,
        all.toArray(String[]::new));
  }

  private Span span(YearOutcome year, int fromDay, int toDay) {
    LocalDate from = SeasonDays.inSeason(season, year.year(), fromDay);
    LocalDate to = SeasonDays.inSeason(season, year.year(), toDay);
    return new Span(days.x(from), days.x(to.plusDays(1)));
  }

  private void box(Span span, double y, double lower, String css, Marked tip) {
    pen.box(span.from(), y + 1.5 + lower, span.to() - span.from(), height - 3 - lower, css, tip);
  }
}
