package org.swathbook.cli.html;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.cli.report.PlannedField;
import org.swathbook.cli.report.ReportHead;
import org.swathbook.cli.report.SeasonCalendar;
import org.swathbook.cli.text.FindingText;
import org.swathbook.cli.text.ProgramWords;
import org.swathbook.plan.FrontProgram;
import org.swathbook.plan.PlannedProgram;
import org.swathbook.plan.Refusal;
import org.swathbook.plan.WhyNot;
import org.swathbook.program.FieldId;

/** The page of {@code plan}: each field with its program, what else could be done, and why. */
public final class PlanHtml {
  private static final double WIDE = 760;
  private static final double NARROW = 368;
  private static final FindingText.Shown NONE = new FindingText.Shown("", List.of());

  private final Book book;
  private final Map<FieldId, SeasonCalendar> calendars;

  private PlanHtml(Book book, Map<FieldId, SeasonCalendar> calendars) {
    this.book = book;
    this.calendars = calendars;
  }

  /**
   * @param calendars of the first program of each field that has one
   */
  public static String of(
      Book book,
      ReportHead head,
      List<PlannedField> plans,
      Map<FieldId, SeasonCalendar> calendars) {
    PlanHtml html = new PlanHtml(book, calendars);
    String title =
        "Weed control plan "
            + head.season()
            + (plans.size() == 1 ? ", " + plans.get(0).field().id() : "");
    return Pages.fill(
        "plan.jte",
        new PlanPage(
            SheetHead.of(title, head),
            plans.size() == 1 ? List.of() : plans.stream().map(html::row).toList(),
            plans.stream().map(html::field).toList()));
  }

  private List<String> row(PlannedField p) {
    String id = p.field().id().value();
    String crop = ProgramWords.crop(book, p.field());
    if (p.isRefused()) {
      return List.of(id, crop, "REFUSED", "", "", "see the reasons below");
    }
    PlannedProgram best = p.programs().get(0);
    return List.of(
        id,
        crop,
        (best.recommended() ? "recommended, " : "NOT recommended, ")
            + best.judgement().verdict().word(),
        best.outcome().cost().map(ProgramWords::money).orElse("unknown"),
        best.outcome().net().map(ProgramWords::money).orElse("unknown"),
        words(p.field(), best).drivers());
  }

  private ProgramWords words(Field field, PlannedProgram p) {
    return new ProgramWords(book, field, p.outcome(), p.judgement());
  }

  private PlanPage.FieldPart field(PlannedField plan) {
    Field field = plan.field();
    Optional<PlannedProgram> first = plan.programs().stream().findFirst();
    List<FrontProgram> steps = ProgramWords.frontSteps(plan.front());
    boolean drawn =
        first.isPresent()
            && steps.size() > 1
            && plan.front().stream().filter(p -> p.net().isPresent()).count() > 1;
    return new PlanPage.FieldPart(
        ProgramWords.fieldLine(book, field),
        ProgramWords.facts(book, field),
        ProgramWords.weedsOf(book, field),
        standing(plan),
        plan.refusal()
            .map(r -> ProgramWords.refusal(book.catalog(), r, plan.programs()))
            .orElse(List.of()),
        plan.refusal()
            .map(Refusal::because)
            .map(new FindingText(book.catalog())::said)
            .orElse(NONE),
        first.map(
            p ->
                ProgramPart.of(
                    book,
                    field,
                    p.outcome(),
                    p.judgement(),
                    Optional.ofNullable(calendars.get(field.id())))),
        first.map(p -> words(field, p).without(plan.without())).orElse(List.of()),
        plan.programs().stream().skip(1).map(p -> card(field, p)).toList(),
        drawn
            ? List.of(
                FrontChart.of(plan.front(), steps, first.get().outcome(), WIDE),
                FrontChart.of(plan.front(), steps, first.get().outcome(), NARROW))
            : List.of(),
        drawn ? numbered(ProgramWords.frontRows(steps)) : List.of(),
        plan.whyNot().stream().map(w -> answer(field, w)).toList(),
        ProgramWords.search(plan));
  }

  private static String standing(PlannedField plan) {
    if (plan.isRefused()) {
      return "REFUSED: "
          + (plan.refusal().map(r -> r.because().isEmpty()).orElse(true)
              ? "no legal program was found that meets what was asked"
              : "nothing legal can be planned for this field");
    }
    PlannedProgram first = plan.programs().get(0);
    return (first.recommended() ? "Recommended: " : "NOT recommended, the least bad: ")
        + first.name();
  }

  private PlanPage.Card card(Field field, PlannedProgram p) {
    ProgramWords words = words(field, p);
    return new PlanPage.Card(
        p.name(),
        List.of(
            "Verdict: " + p.judgement().verdict().word() + "; " + words.houseRules(),
            words.inMoney(),
            "control, mean (worst year): " + words.drivers()),
        words.passRows(),
        p.givesUp().isBlank() ? List.of() : List.of("Against the first: " + p.givesUp()),
        NONE);
  }

  private PlanPage.Card answer(Field field, WhyNot why) {
    String title = "Why not " + why.active().name() + "?";
    if (why.inFirst()) {
      return new PlanPage.Card(
          title, List.of("The first program uses it."), List.of(), List.of(), NONE);
    }
    if (why.with().isPresent()) {
      PlanPage.Card with = card(field, why.with().get());
      List<String> lines = new ArrayList<>(List.of("The best program found with it:"));
      lines.addAll(with.lines());
      List<String> givesUp = new ArrayList<>();
      if (!why.givesUp().isEmpty()) {
        givesUp.add("Against the first: " + why.givesUp());
      }
      if (why.givesUp().contains("higher")) {
        givesUp.add("It is better: the first search, which is heuristic, had missed it.");
      }
      return new PlanPage.Card(title, lines, with.passes(), givesUp, NONE);
    }
    return new PlanPage.Card(
        title,
        List.of("No legal program with it was found."),
        List.of(),
        why.leftOut(),
        new FindingText(book.catalog()).said(why.blocks()));
  }

  private static List<List<String>> numbered(List<List<String>> rows) {
    List<List<String>> out = new ArrayList<>();
    for (int i = 0; i < rows.size(); i++) {
      List<String> row = new ArrayList<>(List.of(Integer.toString(i + 1)));
      row.addAll(rows.get(i));
      out.add(row);
    }
    return out;
  }
}
