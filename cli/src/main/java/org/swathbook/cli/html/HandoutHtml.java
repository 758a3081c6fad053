package org.swathbook.cli.html;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.swathbook.book.Book;
import org.swathbook.cli.report.AdjuvantNeed;
import org.swathbook.cli.report.FarmOrder;
import org.swathbook.cli.report.PlannedField;
import org.swathbook.cli.report.ReportHead;
import org.swathbook.cli.report.SeasonCalendar;
import org.swathbook.cli.text.ProgramWords;
import org.swathbook.measure.Numbers;
import org.swathbook.program.FieldId;
import org.swathbook.program.Program;
import org.swathbook.season.outcome.PassOutcome;

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

  private record Row(LocalDate date, List<Marked> cells) {}

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
    IdentityHashMap<PlannedField, String> at = new IdentityHashMap<>();
    plans.forEach(p -> at.put(p, "/fields/" + at.size()));
    byGrower.forEach(
        (grower, of) -> farms.add(html.farm(grower, of, at, "/growers/" + farms.size())));
    return Pages.fill(
        "handout.jte",
        new HandoutPage(
            SheetHead.of("Weed control " + head.season() + ": the grower's copy", head), farms));
  }

  private HandoutPage.Farm farm(
      String grower, List<PlannedField> plans, Map<PlannedField, String> of, String at) {
    List<Row> rows = new ArrayList<>();
    for (PlannedField plan : plans) {
      if (!plan.isRefused()) {
        plan.programs().get(0).outcome().passes().stream()
            .filter(p -> !p.made())
            .forEach(p -> rows.add(row(plan, p, of.getOrDefault(plan, ""))));
      }
    }
    rows.sort(Comparator.comparing(Row::date));
    List<FarmOrder> order = FarmOrder.of(book, plans);
    List<AdjuvantNeed> adjuvants = AdjuvantNeed.ofPlans(plans);
    return new HandoutPage.Farm(
        grower,
        rows.stream().map(Row::cells).toList(),
        Stream.concat(
                IntStream.range(0, order.size())
                    .mapToObj(i -> order(order.get(i), at + "/order/" + i)),
                IntStream.range(0, adjuvants.size())
                    .mapToObj(i -> adjuvant(adjuvants.get(i), at + "/adjuvants/" + i)))
            .toList(),
        FarmOrder.cost(book, plans)
            .map(m -> Marked.of("$" + ProgramWords.money(m), at + "/cost"))
            .orElse(Marked.plain("not known, a price is missing")),
        plans.stream()
            .map(
                p ->
                    HandoutSheet.of(
                        book,
                        p,
                        Optional.ofNullable(calendars.get(p.field().id())),
                        Optional.ofNullable(earlier.get(p.field().id())),
                        of.getOrDefault(p, "")))
            .toList());
  }

  private static Row row(PlannedField plan, PassOutcome p, String of) {
    return new Row(
        p.planned(),
        List.of(
            Marked.of(
                ProgramWords.date(p.planned()), of + "/programs/0/passes/" + p.index() + "/date"),
            Marked.plain(plan.field().id() + ", " + plan.field().name()),
            Marked.of(Numbers.grouped(plan.field().acres(), 1), of + "/acres:1"),
            Marked.plain(
                p.mix().doses().stream()
                    .map(d -> d.product().name())
                    .collect(Collectors.joining(", ")))));
  }

  private static List<Marked> adjuvant(AdjuvantNeed a, String at) {
    return List.of(
        Marked.plain(a.kind()),
        a.amount()
            .map(
                q ->
                    Marked.of(
                        Numbers.decimals(q.value(), 1) + " " + q.unit().symbol(), at + "/needed:1"))
            .orElse(Marked.plain("amount not known")),
        Marked.plain("not said"),
        Marked.plain("no price, not counted"));
  }

  private List<Marked> order(FarmOrder o, String at) {
    return List.of(
        Marked.plain(o.product().name()),
        Marked.of(Numbers.decimals(o.amount(), 1) + " " + o.unit().symbol(), at + "/needed:1"),
        Marked.plain(
            Optional.ofNullable(book.prices().stock().get(o.product().id()))
                .flatMap(s -> s.onHand())
                .map(Object::toString)
                .orElse("not said")),
        o.cost()
            .map(m -> Marked.of("$" + ProgramWords.money(m), at + "/cost"))
            .orElse(Marked.plain("no price")));
  }
}
