package org.swathbook.cli.html;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.swathbook.book.Book;
import org.swathbook.cli.report.FarmOrder;
import org.swathbook.cli.report.PlannedField;
import org.swathbook.cli.report.ReportHead;
import org.swathbook.cli.report.SeasonCalendar;
import org.swathbook.cli.text.ProgramWords;
import org.swathbook.measure.Money;
import org.swathbook.measure.Numbers;
import org.swathbook.program.FieldId;
import org.swathbook.program.Program;
import org.swathbook.season.PassOutcome;

/** What the grower takes home: a page of the farm with the order, then a page a field. */
public final class HandoutHtml {
  private final Book book;
  private final Map<FieldId, SeasonCalendar> calendars;
  private final Map<FieldId, Program> earlier;

  private HandoutHtml(
      Book book, Map<FieldId, SeasonCalendar> calendars, Map<FieldId, Program> earlier) {
    this.book = book;
    this.calendars = calendars;
    this.earlier = earlier;
  }

  private record Row(LocalDate date, List<String> cells) {}

  /**
   * @param calendars of the first program of each field that has one
   * @param earlier versions that the book keeps, by field
   */
  public static String of(
      Book book,
      ReportHead head,
      List<PlannedField> plans,
      Map<FieldId, SeasonCalendar> calendars,
      Map<FieldId, Program> earlier) {
    HandoutHtml html = new HandoutHtml(book, calendars, earlier);
    Map<String, List<PlannedField>> byGrower = new LinkedHashMap<>();
    plans.forEach(p -> byGrower.computeIfAbsent(p.field().grower(), g -> new ArrayList<>()).add(p));
    List<HandoutPage.Farm> farms = new ArrayList<>();
    byGrower.forEach((grower, of) -> farms.add(html.farm(grower, of)));
    return Pages.fill(
        "handout.jte",
        new HandoutPage(
            SheetHead.of("Weed control " + head.season() + ": the grower's copy", head), farms));
  }

  private HandoutPage.Farm farm(String grower, List<PlannedField> plans) {
    List<Row> rows = new ArrayList<>();
    Optional<Money> sum = Optional.of(Money.ZERO);
    for (PlannedField plan : plans) {
      if (plan.isRefused()) {
        continue;
      }
      double acres = plan.field().acres();
      for (PassOutcome p : plan.programs().get(0).outcome().passes()) {
        if (!p.made()) {
          rows.add(row(plan, p));
          sum =
              sum.flatMap(
                  s ->
                      p.cost()
                          .map(c -> c.plus(book.passCost()))
                          .map(c -> s.plus(Money.ofDollars(c.dollars() * acres))));
        }
      }
    }
    rows.sort(Comparator.comparing(Row::date));
    return new HandoutPage.Farm(
        grower,
        rows.stream().map(Row::cells).toList(),
        FarmOrder.of(book, plans).stream().map(this::order).toList(),
        sum.map(m -> "$" + ProgramWords.money(m)).orElse("not known, a price is missing"),
        plans.stream()
            .map(
                p ->
                    HandoutSheet.of(
                        book,
                        p,
                        Optional.ofNullable(calendars.get(p.field().id())),
                        Optional.ofNullable(earlier.get(p.field().id()))))
            .toList());
  }

  private static Row row(PlannedField plan, PassOutcome p) {
    return new Row(
        p.planned(),
        List.of(
            ProgramWords.date(p.planned()),
            plan.field().id() + ", " + plan.field().name(),
            Numbers.decimals(plan.field().acres(), 1),
            p.mix().doses().stream()
                .map(d -> d.product().name())
                .collect(Collectors.joining(", "))));
  }

  private List<String> order(FarmOrder o) {
    return List.of(
        o.product().name(),
        Numbers.decimals(o.amount(), 1) + " " + o.unit().symbol(),
        Optional.ofNullable(book.prices().stock().get(o.product().id()))
            .flatMap(s -> s.onHand())
            .map(Object::toString)
            .orElse("not said"),
        o.cost().map(m -> "$" + ProgramWords.money(m)).orElse("no price"));
  }
}
