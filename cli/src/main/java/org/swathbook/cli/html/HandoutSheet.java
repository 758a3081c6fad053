package org.swathbook.cli.html;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.book.WeedPressure;
import org.swathbook.cli.report.PlanVersion;
import org.swathbook.cli.report.PlannedField;
import org.swathbook.cli.report.SeasonCalendar;
import org.swathbook.cli.text.ProgramWords;
import org.swathbook.measure.Numbers;
import org.swathbook.plan.PlannedProgram;
import org.swathbook.program.Program;
import org.swathbook.rules.Say;
import org.swathbook.season.outcome.PassOutcome;
import org.swathbook.season.outcome.PassWeed;
import org.swathbook.season.outcome.SeasonOutcome;

/** One field of the grower's handout. */
final class HandoutSheet {
  private final Book book;
  private final Field field;
  private final PlannedProgram program;
  private final SeasonOutcome outcome;

  /** Where the field stands in the JSON of the plan, and its first program. */
  private final String of;

  private final String at;

  private HandoutSheet(Book book, Field field, PlannedProgram program, String of) {
    this.book = book;
    this.field = field;
    this.program = program;
    this.outcome = program.outcome();
    this.of = of;
    this.at = of + "/programs/0";
  }

  /**
   * @param earlier the version that the book keeps
   * @param at where the field stands in the JSON of the plan
   */
  static HandoutPage.Sheet of(
      Book book,
      PlannedField plan,
      Optional<SeasonCalendar> calendar,
      Optional<Program> earlier,
      String at) {
    Field field = plan.field();
    String line = ProgramWords.fieldLine(book, field);
    if (plan.isRefused()) {
      return new HandoutPage.Sheet(
          line,
          "NOTHING IS PLANNED: nothing legal was found for this field; ask your adviser why.",
          fight(book, field),
          lost(book, field),
          List.of(),
          List.of(),
          List.of(),
          List.of(),
          "none",
          List.of());
    }
    PlannedProgram first = plan.programs().get(0);
    HandoutSheet sheet = new HandoutSheet(book, field, first, at);
    return new HandoutPage.Sheet(
        line,
        (first.recommended() ? "Recommended" : "NOT recommended, the least bad that was found")
            + "; what rules say of it: "
            + first.judgement().verdict().word()
            + ".",
        fight(book, field),
        lost(book, field),
        sheet.passes(),
        new HandoutBinds(book, field, first.outcome(), first.judgement(), calendar).lines(),
        new HandoutSpoils(book, field, first, at + "/programs/0").lines(),
        sheet.marks().money(),
        PlanVersion.of(first.outcome().program()),
        changes(earlier, first.outcome().program()));
  }

  private static List<String> changes(Optional<Program> earlier, Program now) {
    if (earlier.isEmpty()) {
      return List.of("The book keeps no earlier version of this field's program.");
    }
    List<String> out = PlanVersion.changes(earlier.get(), now);
    return out.isEmpty() ? List.of("None: it is the version that the book keeps.") : out;
  }

  private static List<String> fight(Book book, Field field) {
    List<String> out = new ArrayList<>();
    for (List<String> row : ProgramWords.weedsOf(book, field)) {
      out.add(
          row.get(0)
              + ", "
              + row.get(2)
              + (row.get(3).isEmpty()
                  ? ""
                  : row.get(3).equals("driver") ? ", the plan is made for it" : ", " + row.get(3)));
    }
    return out;
  }

  private static List<String> lost(Book book, Field field) {
    List<String> out = new ArrayList<>();
    for (List<String> row : ProgramWords.weedsOf(book, field)) {
      if (row.get(4).startsWith("resists") || row.get(4).contains(Say.SUSPECTED)) {
        out.add(row.get(0) + " " + row.get(4));
      }
    }
    return out.isEmpty() ? List.of("The book lists no resistance in this field.") : out;
  }

  private ProgramMarks marks() {
    return new ProgramMarks(
        book, outcome, new ProgramWords(book, field, outcome, program.judgement()), at, of);
  }

  private String pass(PassOutcome p, String key) {
    return at + "/passes/" + p.index() + "/" + key;
  }

  private List<HandoutPage.Going> passes() {
    List<PassPart> words = marks().passes();
    List<HandoutPage.Going> out = new ArrayList<>();
    for (PassOutcome p : outcome.passes()) {
      out.add(new HandoutPage.Going(words.get(p.index()), date(p), signs(p)));
    }
    return out;
  }

  private Marked date(PassOutcome p) {
    if (p.made()) {
      return Marked.of(ProgramWords.date(p.planned()) + ": made", pass(p, "date"));
    }
    return Marked.of(
        "From "
            + ProgramWords.date(p.planned())
            + ", on the first day fit to spray: by past weather "
            + ProgramWords.day(p.earliest())
            + " to "
            + ProgramWords.day(p.latest()),
        pass(p, "date"),
        pass(p, "dateRange/0"),
        pass(p, "dateRange/1"));
  }

  private List<Marked> signs(PassOutcome p) {
    List<Marked> out = new ArrayList<>();
    if (p.made()) {
      return out;
    }
    String crop = book.catalog().crop(field.crop()).name();
    out.add(
        Marked.of(
            p.cropStage().endsWith("planted")
                ? "The crop: " + p.cropStage() + "."
                : "The crop: " + crop + " at about " + p.cropStage() + ".",
            pass(p, "cropStage")));
    for (PassWeed w : p.weeds()) {
      WeedPressure pressure = outcome.weed(w.weed()).pressure();
      if (pressure.driver().isDriver() && w.stands()) {
        String size = pass(p, "weedHeightIn/" + w.weed().value());
        out.add(
            Marked.of(
                pressure.weed().name()
                    + ": the plan counts on "
                    + Numbers.decimals(100 * book.house().sizePercentile(), 0)
                    + " % of the plants not above "
                    + ProgramWords.inches(w.p90Cm())
                    + " in (over the years "
                    + ProgramWords.inches(w.p90LowCm())
                    + " to "
                    + ProgramWords.inches(w.p90HighCm())
                    + "). When they grow ahead of that, call before the date.",
                "-",
                size + "/p90",
                size + "/p90Low",
                size + "/p90High"));
      }
    }
    return out;
  }
}
