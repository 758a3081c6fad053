package org.swathbook.cli.text;

import java.util.List;
import java.util.function.Function;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.check.Judgement;
import org.swathbook.season.outcome.SeasonOutcome;
import org.swathbook.season.outcome.WeedOutcome;

/** A program in full, and its figures on one line. */
final class ProgramText {
  private final Book book;
  private final Field field;

  ProgramText(Book book, Field field) {
    this.book = book;
    this.field = field;
  }

  /** Passes and results; the verdict stands apart. */
  void full(Page page, SeasonOutcome outcome, Judgement judgement) {
    PassText passes = new PassText(book, field, outcome);
    outcome.passes().forEach(p -> passes.on(page, p, judgement.tanks().get(p.index())));
    ResultText results = new ResultText(book, field, outcome);
    results.weeds(page);
    results.money(page);
  }

  static String money(SeasonOutcome outcome) {
    return "net "
        + outcome.net().map(Figures::money).orElse("unknown")
        + ", cost "
        + outcome.cost().map(Figures::money).orElse("unknown")
        + ", loss "
        + Figures.money(outcome.loss())
        + " $/acre";
  }

  /**
   * Control of the driver weeds with what lives of them: where seedlings are many a control near
   * 100 % still leaves thousands on an acre.
   */
  static String drivers(SeasonOutcome outcome) {
    return ofDrivers(
        outcome, w -> control(w) + ", " + Figures.count(w.survivorsPerAcre()) + " survivors/acre");
  }

  /** The same where what lives of them is said beside it. */
  static String driversAlone(SeasonOutcome outcome) {
    return ofDrivers(outcome, ProgramText::control);
  }

  private static String ofDrivers(SeasonOutcome outcome, Function<WeedOutcome, String> said) {
    List<String> parts =
        outcome.weeds().stream().filter(w -> w.pressure().driver().isDriver()).map(said).toList();
    return parts.isEmpty() ? "no driver weed" : String.join("; ", parts);
  }

  private static String control(WeedOutcome w) {
    return w.pressure().weed().name()
        + " "
        + Figures.percent(w.controlPct())
        + " ("
        + Figures.percent(w.worstYearControlPct())
        + ") %";
  }

  static String broken(Judgement judgement) {
    List<String> names = judgement.brokenNames();
    return names.isEmpty() ? "breaks no house rule" : "breaks " + String.join(", ", names);
  }
}
