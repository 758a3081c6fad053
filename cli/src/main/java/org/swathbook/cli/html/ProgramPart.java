package org.swathbook.cli.html;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.catalog.WeedId;
import org.swathbook.check.Judgement;
import org.swathbook.cli.report.LossByYear;
import org.swathbook.cli.report.SeasonCalendar;
import org.swathbook.cli.report.YearPass;
import org.swathbook.cli.text.FindingText;
import org.swathbook.cli.text.ProgramWords;
import org.swathbook.season.outcome.SeasonOutcome;
import org.swathbook.season.outcome.WeedOutcome;
import org.swathbook.season.outcome.YearOutcome;

/**
 * One program in full, as the templates show it. All words are plain text; the templates escape
 * them.
 *
 * @param verdict in one word, in capitals
 * @param drivers control of the driver weeds, and {@code left} what of them lives and seeds
 * @param charts the season drawn for a wide and for a narrow page
 * @param weeds rows of the results
 * @param costs rows of money
 * @param years one row a weather year, below {@code yearHead}
 */
public record ProgramPart(
    String name,
    String verdict,
    Marked drivers,
    Marked left,
    List<Drawing> charts,
    List<PassPart> passes,
    List<List<Marked>> weeds,
    List<Marked> notes,
    List<List<Marked>> costs,
    Marked confidence,
    List<String> yearHead,
    List<List<Marked>> years,
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
   * @param at where the program stands in the JSON document
   * @param of where its field stands there
   * @param years where its years stand there, and {@code days} its calendar; null when the document
   *     has none
   */
  static ProgramPart of(
      Book book,
      Field field,
      SeasonOutcome outcome,
      Judgement judgement,
      Optional<SeasonCalendar> calendar,
      String at,
      String of,
      @Nullable String years,
      @Nullable String days) {
    SeasonChart.Places places = new SeasonChart.Places(at, years, days);
    ProgramWords words = new ProgramWords(book, field, outcome, judgement);
    ProgramMarks marks = new ProgramMarks(book, outcome, words, at, of);
    return new ProgramPart(
        outcome.program().name(),
        judgement.verdict().word().toUpperCase(Locale.ROOT),
        marks.control(),
        marks.left(),
        calendar
            .map(
                c ->
                    List.of(
                        SeasonChart.of(book, outcome, c, places, WIDE),
                        SeasonChart.of(book, outcome, c, places, NARROW)))
            .orElse(List.of()),
        marks.passes(),
        marks.weeds(),
        marks.notes(),
        marks.money(),
        marks.confidence(),
        yearHead(outcome),
        years(book, field, outcome, years),
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

  private static List<List<Marked>> years(
      Book book, Field field, SeasonOutcome outcome, @Nullable String at) {
    LossByYear loss = LossByYear.of(book, field);
    List<List<Marked>> out = new ArrayList<>();
    for (YearOutcome y : outcome.years()) {
      String year = at == null ? null : at + "/" + out.size() + "/";
      List<Marked> row = new ArrayList<>();
      row.add(Marked.under(year, Integer.toString(y.year()), "year"));
      for (YearPass p : YearPass.of(outcome, y, field, book.catalog().crop(field.crop()))) {
        String pass = "passes/" + (row.size() - 1);
        row.add(
            p.missed()
                ? Marked.plain("MISSED")
                : Marked.under(
                    year,
                    ProgramWords.day(p.date().orElseThrow()) + ", " + p.cropStage().orElseThrow(),
                    pass + "/cropStage",
                    pass + "/date"));
      }
      for (WeedOutcome w : outcome.weeds()) {
        WeedId weed = w.pressure().weed().id();
        Double pct = y.controlPct().get(weed);
        row.add(
            pct == null
                ? Marked.plain("unknown")
                : Marked.under(year, ProgramWords.percent(pct), "controlPct/" + weed.value()));
      }
      row.add(Marked.under(year, ProgramWords.money(loss.in(y)), "lossPerAcre"));
      out.add(row);
    }
    return out;
  }
}
