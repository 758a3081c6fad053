package org.swathbook.cli.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.swathbook.book.Book;
import org.swathbook.catalog.Catalog;
import org.swathbook.catalog.WeedId;
import org.swathbook.cli.report.HouseRuleWords;
import org.swathbook.cli.report.PlannedField;
import org.swathbook.cli.report.ReportHead;
import org.swathbook.measure.Money;
import org.swathbook.plan.Effort;
import org.swathbook.plan.PlannedProgram;
import org.swathbook.plan.Refusal;
import org.swathbook.plan.Relaxation;
import org.swathbook.plan.SearchNote;
import org.swathbook.plan.WhyNot;

/** The report of {@code plan}. */
public final class PlanText {
  private PlanText() {}

  public static String of(Book book, ReportHead head, List<PlannedField> plans) {
    Page page = new Page();
    HeadText.on(page, "Plan of " + Figures.counted(plans.size(), "field", "fields"), head);
    if (plans.size() > 1) {
      overview(book, page, plans);
    }
    plans.forEach(p -> field(book, page, p));
    HeadText.foot(page, true);
    return page.toString();
  }

  private static void overview(Book book, Page page, List<PlannedField> plans) {
    Table table = new Table(0, "lllrrl");
    table.row("Field", "Crop", "Program", "cost", "net", "driver weeds: control (worst year)");
    for (PlannedField p : plans) {
      String crop = FieldText.cropName(book, p.field());
      if (p.isRefused()) {
        table.row(p.field().id().value(), crop, "REFUSED", "", "", "see the reasons below");
      } else {
        PlannedProgram best = p.programs().get(0);
        table.row(
            p.field().id().value(),
            crop,
            (best.recommended() ? "recommended" : "NOT recommended")
                + ", "
                + best.judgement().verdict().word(),
            best.outcome().cost().map(Figures::money).orElse("unknown"),
            best.outcome().net().map(Figures::money).orElse("unknown"),
            ProgramText.drivers(best.outcome()));
      }
    }
    table.on(page);
    page.blank();
  }

  private static void field(Book book, Page page, PlannedField plan) {
    FieldText.head(book, plan.field(), page);
    FieldText.weeds(book, plan.field(), page);
    plan.refusal().ifPresent(r -> refusal(book.catalog(), page, r, plan));
    ProgramText text = new ProgramText(book, plan.field());
    for (int i = 0; i < plan.programs().size(); i++) {
      PlannedProgram program = plan.programs().get(i);
      if (i == 0) {
        page.apart(
            (program.recommended() ? "RECOMMENDED: " : "NOT RECOMMENDED, the least bad: ")
                + program.name(),
            ProgramText.money(program.outcome()));
        plan.houseRulesCost()
            .ifPresent(
                m ->
                    page.wrapped(
                        0,
                        2,
                        "The house rules cost "
                            + Figures.money(m)
                            + " $/acre of net return here: see 'house rules aside' below."));
        WarningsText.withNumbers(plan).ifPresent(s -> page.wrapped(0, 2, s));
        page.blank();
        text.full(page, program.outcome(), program.judgement());
        WithoutText.on(page, book.catalog(), program.outcome(), plan.without());
        new FindingText(book.catalog()).verdict(page, program.judgement());
      } else {
        if (i == 1) {
          page.line("Other programs");
        }
        AlternativeText.on(page, program);
      }
    }
    FrontText.on(page, plan.front());
    plan.whyNot().forEach(w -> whyNot(book.catalog(), page, plan, w));
    search(page, plan);
  }

  private static void whyNot(Catalog catalog, Page page, PlannedField plan, WhyNot why) {
    page.line("Why not " + why.active().name() + "?");
    if (why.inFirst()) {
      page.line("  The first program uses it.");
    } else if (why.with().isPresent()) {
      page.wrapped(2, "The best program found with it:");
      AlternativeText.on(page, why.with().get(), why.givesUp());
      if (why.missed()) {
        page.wrapped(4, 6, "It is better: the first search, which is heuristic, had missed it.");
      }
      limits(page, plan, why);
    } else {
      page.line("  No legal program with it was found.");
      limits(page, plan, why);
      why.leftOut().forEach(l -> page.wrapped(2, 4, l));
      new FindingText(catalog).findings(page, why.blocks());
    }
    page.blank();
  }

  private static void limits(Page page, PlannedField plan, WhyNot why) {
    LimitText.headOfActive(plan, why).ifPresent(h -> page.wrapped(4, 6, h));
    why.limits().forEach(l -> page.wrapped(6, 8, LimitText.of(l)));
  }

  private static void refusal(Catalog catalog, Page page, Refusal refusal, PlannedField plan) {
    page.line(plan.isRefused() ? "REFUSED: " + refused(plan) : "No program meets every house rule");
    new FindingText(catalog).findings(page, refusal.because());
    refusal
        .broken()
        .forEach(
            b ->
                page.wrapped(
                    2,
                    4,
                    b.name()
                        + ", "
                        + HouseRuleWords.of(catalog, plan.programs().get(0).outcome(), b)));
    looseningHead(refusal, plan).ifPresent(page::line);
    refusal.relaxations().forEach(r -> page.wrapped(2, 4, relaxation(catalog, plan.programs(), r)));
    noHelp(refusal).ifPresent(s -> page.wrapped(0, 2, s));
    LimitText.head(refusal, plan.isRefused(), plan.limits()).forEach(page::line);
    plan.limits().forEach(l -> page.wrapped(2, 4, LimitText.of(l)));
    page.blank();
  }

  /** Before the house rules of which one could be loosened; empty where no program is shown. */
  static Optional<String> looseningHead(Refusal refusal, PlannedField plan) {
    if (!refusal.relaxations().isEmpty()) {
      return Optional.of("Loosening one house rule would allow a program:");
    }
    return plan.isRefused()
        ? Optional.empty()
        : Optional.of(
            "No single house rule that judges a program was found whose loosening would help.");
  }

  /** Which house rules are proved not to help; empty where none is. */
  static Optional<String> noHelp(Refusal refusal) {
    return refusal.noHelp().isEmpty()
        ? Optional.empty()
        : Optional.of(
            "Proved over the passes that were combined (see the foot of this plan): no program"
                + " breaks "
                + String.join(" or ", refusal.noHelp())
                + " alone.");
  }

  /** Why a field has no program at all. */
  public static String refused(PlannedField plan) {
    return plan.refusal().map(Refusal::isOfAsked).orElse(true)
        ? "no legal program was found that meets what was asked"
        : "nothing legal can be planned for this field";
  }

  static String relaxation(Catalog catalog, List<PlannedProgram> programs, Relaxation r) {
    return r.rule()
        + " from "
        + r.from()
        + " to "
        + r.to()
        + ": net "
        + Figures.money(r.netPerAcre())
        + " $/acre"
        + against(programs, r)
        + ", control "
        + control(catalog, r.controlPct());
  }

  /** What loosening a rule buys beside the least bad program. */
  private static String against(List<PlannedProgram> programs, Relaxation r) {
    return programs.get(0).outcome().net().stream()
        .map(net -> r.netPerAcre().minus(net))
        .map(
            d ->
                d.cents() == 0
                    ? " (as the program below)"
                    : " ("
                        + Figures.money(new Money(Math.abs(d.cents())))
                        + (d.cents() > 0 ? " more" : " less")
                        + " than the program below)")
        .collect(Collectors.joining());
  }

  private static String control(Catalog catalog, Map<WeedId, Double> pct) {
    return pct.entrySet().stream()
        .map(e -> catalog.weed(e.getKey()).name() + " " + Figures.percent(e.getValue()) + " %")
        .collect(Collectors.joining(", "));
  }

  private static void search(Page page, PlannedField plan) {
    search(plan).forEach(p -> page.wrapped(0, 2, p));
    page.blank();
  }

  /** How the programs were found, one sentence each. */
  static List<String> search(PlannedField plan) {
    SearchNote note = plan.search();
    List<String> parts = new ArrayList<>();
    String scope =
        Figures.counted(note.options(), "dose", "doses")
            + " on "
            + Figures.counted(note.dates(), "date", "dates");
    parts.add(
        note.labels() == 0
            ? "Nothing was searched of " + scope
            : "Searched "
                + scope
                + ", "
                + Figures.count(note.labels())
                + " programs scored; exact: "
                + exact(note, recommends(plan)));
    ceiling(plan).ifPresent(parts::add);
    front(note).ifPresent(parts::add);
    if (note.effort() == Effort.QUICK && note.labels() > 0) {
      parts.add(
          "This was a quick look: without --effort quick, better programs may be found, and some that"
              + " meet the house rules where none is shown");
    }
    plan.millis().ifPresent(ms -> parts.add("It took " + Figures.count((double) ms) + " ms"));
    if (!note.leftOut().isEmpty()) {
      parts.add("Left out before the search: " + String.join("; ", note.leftOut()));
    }
    return parts.stream().map(p -> p + ".").toList();
  }

  private static boolean recommends(PlannedField plan) {
    return !plan.programs().isEmpty() && plan.programs().get(0).recommended();
  }

  /** What no program at all nets more; empty where it was not asked for. */
  private static Optional<String> ceiling(PlannedField plan) {
    return plan.search()
        .gapOfAll()
        .map(
            most ->
                "Of all legal programs of these doses and dates, in any tanks and of no more passes than"
                    + " are asked for, none nets more than "
                    + Figures.money(most)
                    + " $/acre above the first"
                    + (recommends(plan)
                        ? " and meets the house rules"
                        : ", whatever house rules it breaks")
                    + ": that is proved, by a bound that lets programs be sprayed in parts and so gives"
                    + " much away");
  }

  /** How far the front is proved; empty without a program. */
  private static Optional<String> front(SearchNote note) {
    if (note.gap().isEmpty()) {
      return Optional.empty();
    }
    String front = "The front of cost, loss and control with the worst site gone is ";
    if (note.frontPasses() == 0) {
      return Optional.of(front + "over the programs met, and not proved");
    }
    String proved =
        "every program made of them is on it, or one that is on it costs no more, loses no more and"
            + " holds as well with the worst site gone";
    return Optional.of(
        note.frontExact()
            ? front + "proved over all " + note.combined() + " passes: " + proved
            : front
                + "proved over "
                + note.frontPasses()
                + " of the "
                + note.combined()
                + " passes, those that its programs hold most: "
                + proved
                + "; with the others the proof was given up");
  }

  private static String exact(SearchNote note, boolean recommended) {
    if (note.gap().isEmpty()) {
      return "no, a heuristic search: a better program may exist";
    }
    String passes =
        "over the " + note.combined() + " passes of the best programs that a heuristic search met";
    String proof;
    if (note.exact()) {
      proof =
          "yes, "
              + passes
              + ": of all programs made of them none "
              + (recommended
                  ? "that meets the house rules, and so holds with any one site of action gone as they"
                      + " ask, nets more"
                  : "breaks fewer house rules, or as few for a higher net");
    } else {
      proof =
          "no, the proof "
              + passes
              + " was given up: a program made of them that was not looked at "
              + (recommended ? "nets" : "may come nearer to the house rules, and nets")
              + " at most "
              + Figures.money(note.gap().get())
              + " $/acre more";
    }
    return proof
        + "; a better one with other passes may exist"
        + (note.gapOfAll().isPresent() ? "" : " (--effort thorough proves by how much at most)")
        + (note.proved().isEmpty()
            ? ""
            : ". Proved over the same passes to be what they are called: " + names(note.proved()));
  }

  private static String names(List<String> names) {
    return names.stream().map(n -> "'" + n + "'").collect(Collectors.joining(", "));
  }
}
