package org.swathbook.cli.report;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import org.swathbook.book.Book;
import org.swathbook.catalog.WeedId;
import org.swathbook.growth.CohortSet;
import org.swathbook.growth.SeasonTrace;
import org.swathbook.growth.TraceSet;
import org.swathbook.rules.timing.PlantingWait;
import org.swathbook.season.WindowDays;
import org.swathbook.season.outcome.PassOutcome;
import org.swathbook.season.outcome.SeasonOutcome;

/**
 * What the years outdoors look like on a calendar of the book's season, for a chart: small enough
 * to keep when the trace behind it is gone.
 *
 * @param from first and {@code to} last day worth showing
 * @param stages that the crop reaches in every year, by date
 * @param weeds in the order of the field's list
 * @param windows of the passes still to be made, in their order
 */
public record SeasonCalendar(
    LocalDate from,
    LocalDate to,
    LocalDate planting,
    List<Stage> stages,
    List<Emergence> weeds,
    List<Window> windows) {

  /** Days shown before planting or the first pass, and after the last thing of interest. */
  private static final int MARGIN_DAYS = 14;

  private static final int WEEK = 7;

  /** Earliest, median (the lower one of two) and latest date over the years. */
  public record Dates(LocalDate earliest, LocalDate median, LocalDate latest) {
    static Dates of(List<LocalDate> dates) {
      List<LocalDate> sorted = dates.stream().sorted().toList();
      return new Dates(
          sorted.get(0), sorted.get((sorted.size() - 1) / 2), sorted.get(sorted.size() - 1));
    }
  }

  /** A crop stage and when it is reached. */
  public record Stage(String name, Dates reached) {}

  /**
   * Emergence of a weed by weeks, untreated.
   *
   * @param neededUntil when soil control is no longer needed
   */
  public record Emergence(WeedId weed, List<Week> weeks, Dates neededUntil) {
    public Emergence {
      weeks = List.copyOf(weeks);
    }
  }

  /**
   * Share of the season's emergence that comes up in the seven days from a date, in percent.
   *
   * @param meanPct mean of the years, {@code lowPct} lowest and {@code highPct} highest year
   */
  public record Week(LocalDate from, double meanPct, double lowPct, double highPct) {}

  /**
   * When labels let a tank be sprayed, by their windows and the days to planting.
   *
   * @param pass place of the pass in the program, from 0
   * @param waits days to planting that labels ask for when it goes on its planned date
   */
  public record Window(int pass, List<Stretch> open, List<PlantingWait.Wait> waits) {
    public Window {
      open = List.copyOf(open);
      waits = List.copyOf(waits);
    }
  }

  /** Days, first to last, that are open in the same number of years. */
  public record Stretch(LocalDate from, LocalDate to, int years) {}

  public SeasonCalendar {
    stages = List.copyOf(stages);
    weeds = List.copyOf(weeds);
    windows = List.copyOf(windows);
  }

  public Optional<Emergence> weed(WeedId id) {
    return weeds.stream().filter(w -> w.weed().equals(id)).findFirst();
  }

  public static SeasonCalendar of(Book book, TraceSet traces, SeasonOutcome outcome) {
    List<Emergence> weeds = new ArrayList<>();
    for (int w = 0; w < traces.weeds().size(); w++) {
      weeds.add(emergence(book.season(), traces, w));
    }
    LocalDate planting = traces.field().plantDate();
    LocalDate from = planting.minusDays(MARGIN_DAYS);
    LocalDate to = planting.plusDays(MARGIN_DAYS);
    for (Emergence e : weeds) {
      to = later(to, e.neededUntil().latest());
    }
    for (PassOutcome p : outcome.passes()) {
      from = earlier(from, earlier(p.planned(), p.earliest()).minusDays(MARGIN_DAYS));
      to = later(to, later(p.planned(), p.latest()));
    }
    LocalDate first = LocalDate.of(book.season() - 1, 9, 1);
    LocalDate last = LocalDate.of(book.season(), 10, 31);
    from = later(from, first);
    to = earlier(to.plusDays(MARGIN_DAYS), last);
    List<Window> windows = new ArrayList<>();
    for (PassOutcome p : outcome.passes()) {
      if (!p.made()) {
        PlantingWait wait = new PlantingWait(p.mix(), traces.field());
        SeasonTrace any = traces.years().get(0);
        windows.add(
            new Window(
                p.index(),
                open(book, traces, p, wait, from, to),
                wait.on(any, any.dayOf(p.planned()))));
      }
    }
    return new SeasonCalendar(from, to, planting, stages(traces), weeds, windows);
  }

  private static LocalDate earlier(LocalDate a, LocalDate b) {
    return a.isBefore(b) ? a : b;
  }

  private static LocalDate later(LocalDate a, LocalDate b) {
    return a.isAfter(b) ? a : b;
  }

  private static List<Stage> stages(TraceSet traces) {
    List<Stage> out = new ArrayList<>();
    for (int s = 0; s < traces.crop().stages().size(); s++) {
      List<LocalDate> dates = new ArrayList<>();
      for (SeasonTrace t : traces.years()) {
        int day = t.dayOfStage(s);
        if (day < t.days()) {
          dates.add(t.bookDateOf(day));
        }
      }
      if (dates.size() == traces.years().size()) {
        out.add(new Stage(traces.crop().stages().get(s).name(), Dates.of(dates)));
      }
    }
    return out;
  }

  private static Emergence emergence(int season, TraceSet traces, int weed) {
    LocalDate first = LocalDate.of(season - 1, 9, 1);
    int weeks = (int) ChronoUnit.DAYS.between(first, LocalDate.of(season, 10, 31)) / WEEK + 1;
    double[] sum = new double[weeks];
    double[] low = new double[weeks];
    double[] high = new double[weeks];
    Arrays.fill(low, 100);
    List<LocalDate> needed = new ArrayList<>();
    for (SeasonTrace t : traces.years()) {
      CohortSet cohorts = t.cohorts(weed);
      double[] year = new double[weeks];
      double total = cohorts.totalPerM2();
      for (int c = 0; c < cohorts.count() && total > 0; c++) {
        LocalDate up = t.bookDateOf(Math.min(cohorts.emergedOn(c), t.days() - 1));
        int week = (int) ChronoUnit.DAYS.between(first, up) / WEEK;
        year[Math.min(week, weeks - 1)] += 100 * cohorts.perM2(c) / total;
      }
      for (int i = 0; i < weeks; i++) {
        sum[i] += year[i];
        low[i] = Math.min(low[i], year[i]);
        high[i] = Math.max(high[i], year[i]);
      }
      needed.add(t.bookDateOf(Math.min(t.neededUntil(weed), t.days() - 1)));
    }
    List<Week> out = new ArrayList<>();
    for (int i = 0; i < weeks; i++) {
      out.add(
          new Week(
              first.plusDays((long) WEEK * i), sum[i] / traces.years().size(), low[i], high[i]));
    }
    return new Emergence(traces.weeds().get(weed).weed().id(), out, Dates.of(needed));
  }

  /**
   * Counts years by day; days that are open in no year are left out. A day that is inside the
   * windows and too near to planting for a label is not open.
   */
  private static List<Stretch> open(
      Book book,
      TraceSet traces,
      PassOutcome pass,
      PlantingWait wait,
      LocalDate from,
      LocalDate to) {
    SeasonTrace any = traces.years().get(0);
    int days = (int) ChronoUnit.DAYS.between(from, to) + 1;
    int[] years = new int[days];
    List<WindowDays> spans =
        WindowDays.of(book.house(), traces, pass.mix(), any.dayOf(from) - 1, any.dayOf(to) + 1);
    Map<Integer, SeasonTrace> byYear =
        traces.years().stream().collect(Collectors.toMap(SeasonTrace::year, t -> t));
    for (WindowDays w : spans) {
      SeasonTrace trace = Objects.requireNonNull(byYear.get(w.year()));
      LocalDate start = SeasonDays.inSeason(book.season(), w.year(), w.fromDay());
      LocalDate end = SeasonDays.inSeason(book.season(), w.year(), w.toDay());
      for (int d = 0; d < days; d++) {
        LocalDate day = from.plusDays(d);
        if (!day.isBefore(start) && !day.isAfter(end) && wait.isMet(trace, trace.dayOf(day))) {
          years[d]++;
        }
      }
    }
    List<Stretch> out = new ArrayList<>();
    int begin = 0;
    for (int d = 1; d <= days; d++) {
      if (d == days || years[d] != years[begin]) {
        if (years[begin] > 0) {
          out.add(new Stretch(from.plusDays(begin), from.plusDays(d - 1L), years[begin]));
        }
        begin = d;
      }
    }
    return out;
  }
}
