package org.swathbook.cli.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.catalog.Crop;
import org.swathbook.catalog.WeedId;
import org.swathbook.cli.report.LossByYear;
import org.swathbook.cli.report.SeasonDays;
import org.swathbook.cli.report.YearPass;
import org.swathbook.measure.Numbers;
import org.swathbook.season.outcome.PassSize;
import org.swathbook.season.outcome.SeasonOutcome;
import org.swathbook.season.outcome.WeedOutcome;
import org.swathbook.season.outcome.YearOutcome;

/** A walked program year by year, as tables with a row a year. */
final class YearText {
  private final Book book;
  private final Field field;
  private final Crop crop;
  private final SeasonOutcome outcome;

  YearText(Book book, Field field, SeasonOutcome outcome) {
    this.book = book;
    this.field = field;
    this.crop = book.catalog().crop(field.crop());
    this.outcome = outcome;
  }

  void on(Page page) {
    page.line("Year by year");
    page.blank();
    passes(page);
    for (WeedOutcome w : outcome.weeds()) {
      if (w.pressure().driver().isDriver()) {
        heights(page, w);
        layers(page, w);
      }
    }
    control(page);
  }

  private void passes(Page page) {
    Table table = new Table(2, "r" + "l".repeat(outcome.passes().size()) + "l");
    List<String> head = new ArrayList<>(List.of("Year"));
    outcome.passes().forEach(p -> head.add("pass " + (p.index() + 1) + ", crop"));
    head.add("");
    table.row(head);
    for (YearOutcome y : outcome.years()) {
      List<String> row = new ArrayList<>(List.of(Integer.toString(y.year())));
      for (YearPass p : YearPass.of(outcome, y, field, crop)) {
        row.add(
            p.missed()
                ? "MISSED"
                : Figures.day(p.date().orElseThrow()) + "  " + p.cropStage().orElseThrow());
      }
      row.add("");
      table.row(row);
    }
    table.on(page);
    page.blank();
  }

  private void heights(Page page, WeedOutcome w) {
    WeedId id = w.pressure().weed().id();
    page.line(
        "  "
            + w.pressure().weed().name()
            + ": height in inches that half / "
            + Numbers.decimals(100 * book.house().sizePercentile(), 0)
            + " % of the plants standing do not exceed");
    Table table = new Table(2, "r" + "r".repeat(outcome.passes().size()) + "l");
    List<String> head = new ArrayList<>(List.of("Year"));
    outcome.passes().forEach(p -> head.add("pass " + (p.index() + 1)));
    head.add("");
    table.row(head);
    for (YearOutcome y : outcome.years()) {
      List<String> row = new ArrayList<>(List.of(Integer.toString(y.year())));
      for (YearPass p : YearPass.of(outcome, y, field, crop)) {
        Optional<PassSize> size = p.sizes().stream().filter(s -> s.weed().equals(id)).findFirst();
        row.add(
            p.missed()
                ? "MISSED"
                : size.map(s -> Figures.inches(s.p50Cm()) + " / " + Figures.inches(s.p90Cm()))
                    .orElse("none up"));
      }
      row.add("");
      table.row(row);
    }
    table.on(page);
    page.blank();
  }

  private void layers(Page page, WeedOutcome w) {
    WeedId id = w.pressure().weed().id();
    page.line(
        "  "
            + w.pressure().weed().name()
            + ": residual layers, and gaps with their share of the season's emergence");
    Table table = new Table(2, "rll");
    table.row("Year", "layers (pass)", "gaps");
    for (YearOutcome y : outcome.years()) {
      List<String> layers =
          y.layers().stream()
              .filter(l -> l.weed().equals(id))
              .map(l -> span(y, l.fromDay(), l.toDay()) + " (" + (l.pass() + 1) + ")")
              .toList();
      List<String> gaps =
          y.gaps().stream()
              .filter(g -> g.weed().equals(id))
              .map(
                  g ->
                      span(y, g.fromDay(), g.toDay())
                          + ": "
                          + Figures.percent(100 * g.emergenceShare())
                          + " %")
              .toList();
      table.row(
          Integer.toString(y.year()),
          layers.isEmpty() ? "no layer" : String.join(", ", layers),
          gaps.isEmpty() ? "no gap" : String.join(", ", gaps));
    }
    table.on(page);
    page.blank();
  }

  private void control(Page page) {
    LossByYear loss = LossByYear.of(book, field);
    Table table = new Table(2, "r" + "r".repeat(outcome.weeds().size()) + "r");
    List<String> head = new ArrayList<>(List.of("Year"));
    outcome.weeds().forEach(w -> head.add(w.pressure().weed().name()));
    head.add("loss $/acre");
    page.line("  Control, percent, and yield loss");
    table.row(head);
    for (YearOutcome y : outcome.years()) {
      List<String> row = new ArrayList<>(List.of(Integer.toString(y.year())));
      for (WeedOutcome w : outcome.weeds()) {
        Double pct = y.controlPct().get(w.pressure().weed().id());
        row.add(pct == null ? "unknown" : Figures.percent(pct));
      }
      row.add(Figures.money(loss.in(y)));
      table.row(row);
    }
    List<String> mean = new ArrayList<>(List.of("mean"));
    outcome.weeds().forEach(w -> mean.add(Figures.percent(w.controlPct())));
    mean.add(Figures.money(outcome.loss()));
    table.row(mean);
    List<String> worst = new ArrayList<>(List.of("worst"));
    outcome.weeds().forEach(w -> worst.add(Figures.percent(w.worstYearControlPct())));
    worst.add(Figures.money(loss.in(LossByYear.worst(outcome))));
    table.row(worst);
    table.on(page);
    page.blank();
  }

  private static String span(YearOutcome year, int from, int to) {
    return Figures.day(SeasonDays.date(year.year(), from))
        + " - "
        + Figures.day(SeasonDays.date(year.year(), to));
  }
}
