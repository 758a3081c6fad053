package org.swathbook.cli.html;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.check.Judgement;
import org.swathbook.cli.report.LossByYear;
import org.swathbook.cli.report.SeasonCalendar;
import org.swathbook.cli.report.YearPass;
import org.swathbook.cli.text.FindingText;
import org.swathbook.cli.text.PassWords;
import org.swathbook.cli.text.ProgramWords;
import org.swathbook.season.SeasonOutcome;
import org.swathbook.season.WeedOutcome;
import org.swathbook.season.YearOutcome;

/**
 * One program in full, as the templates show it. All words are plain text; the templates escape
 * them.
 *
 * @param verdict in one word, in capitals
 * @param money net return, cost and loss
 * @param charts the season drawn for a wide and for a narrow page
 * @param weeds rows of the results
 * @param costs rows of money
 * @param years one row a weather year, below {@code yearHead}
 */
public record ProgramPart(
    String name,
    String verdict,
    String money,
    String drivers,
    List<Drawing> charts,
    List<PassWords> passes,
    List<List<String>> weeds,
    List<String> notes,
    List<List<String>> costs,
    String confidence,
    List<String> yearHead,
    List<List<String>> years,
    FindingText.Shown findings,
    String houseRules,
    List<String> broken) {

  /** Pixels of a page on paper or a screen, and of a phone 400 pixels wide less its margins. */
  private static final double WIDE = 760;

  private static final double NARROW = 368;

  public ProgramPart {
    charts = List.copyOf(charts);
    passes = List.copyOf(passes);
    weeds = List.copyOf(weeds);
    notes = List.copyOf(notes);
    costs = List.copyOf(costs);
    yearHead = List.copyOf(yearHead);
    years = List.copyOf(years);
    broken = List.copyOf(broken);
  }

  /**
   * @param calendar empty for no chart
   */
  static ProgramPart of(
      Book book,
      Field field,
      SeasonOutcome outcome,
      Judgement judgement,
      Optional<SeasonCalendar> calendar) {
    ProgramWords words = new ProgramWords(book, field, outcome, judgement);
    return new ProgramPart(
        outcome.program().name(),
        judgement.verdict().word().toUpperCase(Locale.ROOT),
        words.inMoney(),
        words.drivers(),
        calendar
            .map(
                c ->
                    List.of(
                        SeasonChart.of(book, outcome, c, WIDE),
                        SeasonChart.of(book, outcome, c, NARROW)))
            .orElse(List.of()),
        words.passes(),
        words.weeds(),
        words.notes(),
        words.money(),
        words.confidence(),
        yearHead(outcome),
        years(book, field, outcome),
        new FindingText(book.catalog()).shown(judgement, f -> true),
        words.houseRules(),
        words.brokenHouseRules());
  }

  private static List<String> yearHead(SeasonOutcome outcome) {
    List<String> out = new ArrayList<>(List.of("Year"));
    outcome.passes().forEach(p -> out.add("pass " + (p.index() + 1)));
    outcome.weeds().forEach(w -> out.add(w.pressure().weed().name() + ", control %"));
    out.add("loss, $/acre");
    return out;
  }

  private static List<List<String>> years(Book book, Field field, SeasonOutcome outcome) {
    LossByYear loss = LossByYear.of(book, field);
    List<List<String>> out = new ArrayList<>();
    for (YearOutcome y : outcome.years()) {
      List<String> row = new ArrayList<>(List.of(Integer.toString(y.year())));
      for (YearPass p : YearPass.of(outcome, y, field, book.catalog().crop(field.crop()))) {
        row.add(
            p.missed()
                ? "MISSED"
                : ProgramWords.day(p.date().orElseThrow()) + ", " + p.cropStage().orElseThrow());
      }
      for (WeedOutcome w : outcome.weeds()) {
        Double pct = y.controlPct().get(w.pressure().weed().id());
        row.add(pct == null ? "unknown" : ProgramWords.percent(pct));
      }
      row.add(ProgramWords.money(loss.in(y)));
      out.add(row);
    }
    return out;
  }
}
