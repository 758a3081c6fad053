package org.swathbook.cli.html;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.cli.report.PlannedField;
import org.swathbook.cli.report.ReportHead;
import org.swathbook.cli.report.SeasonCalendar;
import org.swathbook.cli.text.FindingText;
import org.swathbook.cli.text.PlanText;
import org.swathbook.cli.text.ProgramWords;
import org.swathbook.cli.text.WarningsText;
import org.swathbook.measure.Money;
import org.swathbook.plan.FrontProgram;
import org.swathbook.plan.PlannedProgram;
import org.swathbook.plan.Refusal;
import org.swathbook.plan.SearchNote;
import org.swathbook.plan.WhyNot;
import org.swathbook.plan.WithoutPart;
import org.swathbook.program.FieldId;

/** The page of {@code plan}: each field with its program, what else could be done, and why. */
public final class PlanHtml {
  private static final double WIDE = 760;
  private static final double NARROW = 368;
  private static final String FIELDS = "/fields/";
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
            plans.size() == 1
                ? List.of()
                : IntStream.range(0, plans.size())
                    .mapToObj(i -> html.row(plans.get(i), FIELDS + i))
                    .toList(),
            IntStream.range(0, plans.size())
                .mapToObj(i -> html.field(plans.get(i), FIELDS + i))
                .toList()));
  }

  private List<Marked> row(PlannedField p, String at) {
    String id = p.field().id().value();
    String crop = ProgramWords.crop(book, p.field());
    if (p.isRefused()) {
      return Marked.plain(List.of(id, crop, "REFUSED", "", "", "see the reasons below"));
    }
    PlannedProgram best = p.programs().get(0);
    String first = at + "/programs/0";
    return List.of(
        Marked.plain(id),
        Marked.plain(crop),
        Marked.plain(
            (best.recommended() ? "recommended, " : "NOT recommended, ")
                + best.judgement().verdict().word()),
        money(best.outcome().cost(), first + "/costPerAcre"),
        money(best.outcome().net(), first + "/netPerAcre"),
        marks(p.field(), best, first, at).drivers(""));
  }

  private static Marked money(Optional<Money> money, String at) {
    return money.map(m -> Marked.of(ProgramWords.money(m), at)).orElse(Marked.plain("unknown"));
  }

  private ProgramMarks marks(Field field, PlannedProgram p, String at, String of) {
    return new ProgramMarks(book, p.outcome(), words(field, p), at, of);
  }

  private ProgramWords words(Field field, PlannedProgram p) {
    return new ProgramWords(book, field, p.outcome(), p.judgement());
  }

  private PlanPage.FieldPart field(PlannedField plan, String at) {
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
        ProgramWords.weedNotes(book, field),
        standing(plan),
        Stream.concat(
                plan.refusal().stream()
                    .flatMap(r -> ProgramWords.refusal(book.catalog(), r, plan).stream()),
                WarningsText.of(plan).stream())
            .toList(),
        plan.refusal()
            .map(Refusal::because)
            .map(new FindingText(book.catalog())::said)
            .orElse(NONE),
        plan.houseRulesCost()
            .map(m -> Marked.of(ProgramWords.money(m), at + "/houseRulesCostPerAcre")),
        first.map(
            p ->
                ProgramPart.of(
                    book,
                    field,
                    p.outcome(),
                    p.judgement(),
                    Optional.ofNullable(calendars.get(field.id())),
                    at + "/programs/0",
                    at,
                    null,
                    null)),
        first.map(p -> without(words(field, p), plan.without(), at)).orElse(List.of()),
        IntStream.range(1, Math.max(1, plan.programs().size()))
            .mapToObj(i -> card(field, plan.programs().get(i), at + "/programs/" + i, at))
            .toList(),
        drawn
            ? List.of(
                FrontChart.of(plan.front(), steps, first.get().outcome(), at + "/front/", WIDE),
                FrontChart.of(plan.front(), steps, first.get().outcome(), at + "/front/", NARROW))
            : List.of(),
        drawn ? steps(plan.front(), steps, at + "/front/") : List.of(),
        IntStream.range(0, plan.whyNot().size())
            .mapToObj(i -> answer(plan, plan.whyNot().get(i), at + "/whyNot/" + i, at))
            .toList(),
        search(plan, at + "/search"));
  }

  private static String standing(PlannedField plan) {
    if (plan.isRefused()) {
      return "REFUSED: " + PlanText.refused(plan);
    }
    PlannedProgram first = plan.programs().get(0);
    return (first.recommended() ? "Recommended: " : "NOT recommended, the least bad: ")
        + first.name();
  }

  private PlanPage.Card card(Field field, PlannedProgram p, String at, String of) {
    ProgramWords words = words(field, p);
    ProgramMarks marks = marks(field, p, at, of);
    return new PlanPage.Card(
        p.name(),
        List.of(
            Marked.plain("Verdict: " + p.judgement().verdict().word() + "; " + words.houseRules()),
            marks.inMoney(),
            marks.drivers("control, mean (worst year): ")),
        marks.passRows(),
        p.givesUp().isBlank()
            ? List.of()
            : List.of(Marked.of("Against the first: " + p.givesUp(), at + "/givesUp")),
        NONE);
  }

  private PlanPage.Card answer(PlannedField plan, WhyNot why, String at, String of) {
    String title = "Why not " + why.active().name() + "?";
    if (why.inFirst()) {
      return new PlanPage.Card(
          title, List.of(Marked.plain("The first program uses it.")), List.of(), List.of(), NONE);
    }
    if (why.with().isPresent()) {
      PlanPage.Card with = card(plan.field(), why.with().get(), at + "/with", of);
      List<Marked> lines =
          new ArrayList<>(List.of(Marked.plain("The best program found with it:")));
      lines.addAll(with.lines());
      List<Marked> givesUp = new ArrayList<>();
      if (!why.givesUp().isEmpty()) {
        givesUp.add(Marked.of("Against the first: " + why.givesUp(), at + "/givesUp"));
      }
      if (why.missed()) {
        givesUp.add(
            Marked.plain("It is better: the first search, which is heuristic, had missed it."));
      }
      givesUp.addAll(Marked.plain(ProgramWords.limits(plan, why)));
      return new PlanPage.Card(title, lines, with.passes(), givesUp, NONE);
    }
    return new PlanPage.Card(
        title,
        List.of(Marked.plain("No legal program with it was found.")),
        List.of(),
        Marked.plain(
            Stream.concat(ProgramWords.limits(plan, why).stream(), why.leftOut().stream())
                .toList()),
        new FindingText(book.catalog()).said(why.blocks()));
  }

  private static List<List<Marked>> without(
      ProgramWords words, List<WithoutPart> parts, String at) {
    List<List<String>> rows = words.without(parts);
    List<List<Marked>> out = new ArrayList<>();
    for (int i = 0; i < rows.size(); i++) {
      List<String> row = rows.get(i);
      WithoutPart p = parts.get(i);
      String one = at + "/without/" + i;
      out.add(
          List.of(
              p.dose().isPresent()
                  ? Marked.of(row.get(0), one + "/product")
                  : Marked.of(
                      row.get(0), one + "/pass", at + "/programs/0/passes/" + p.pass() + "/date"),
              Marked.of(row.get(1), p.net().isPresent() ? one + "/netChangePerAcre" : ""),
              p.worstHit().isPresent()
                  ? Marked.of(row.get(2), one + "/controlPct", one + "/controlPctWithout")
                  : Marked.plain(row.get(2)),
              Marked.plain(row.get(3))));
    }
    return out;
  }

  private static List<List<Marked>> steps(
      List<FrontProgram> front, List<FrontProgram> steps, String at) {
    List<List<String>> rows = ProgramWords.frontRows(steps);
    List<List<Marked>> out = new ArrayList<>();
    for (int i = 0; i < rows.size(); i++) {
      List<String> row = rows.get(i);
      String one = at + front.indexOf(steps.get(i));
      out.add(
          List.of(
              Marked.plain(Integer.toString(i + 1)),
              Marked.of(row.get(0), one + "/costPerAcre"),
              Marked.of(row.get(1), one + "/lossPerAcre"),
              Marked.of(row.get(2), steps.get(i).net().isPresent() ? one + "/netPerAcre" : ""),
              Marked.of(row.get(3), one + "/controlPctWithoutWeakest"),
              Marked.of(row.get(4), one + "/passes"),
              Marked.plain(row.get(5))));
    }
    return out;
  }

  /**
   * Of the sentences the first has figures of the document, and the next where it tells a bound.
   */
  private static List<Marked> search(PlannedField plan, String at) {
    List<String> all = ProgramWords.search(plan);
    List<Marked> out = new ArrayList<>(Marked.plain(all));
    SearchNote note = plan.search();
    boolean searched = note.labels() > 0;
    boolean proved = searched && note.gap().isPresent();
    out.set(
        0,
        Marked.of(
            all.get(0),
            at + "/options",
            at + "/dates",
            searched ? at + "/labels" : "",
            proved ? at + "/combined" : "",
            proved && !note.exact() ? at + "/gap" : ""));
    if (note.gapOfAll().isPresent()) {
      out.set(1, Marked.of(all.get(1), at + "/gapOfAll"));
    }
    return out;
  }
}
