package org.swathbook.cli.text;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.swathbook.book.Book;
import org.swathbook.catalog.WeedId;
import org.swathbook.cli.report.ComparedField;
import org.swathbook.cli.report.LossByYear;
import org.swathbook.cli.report.ReportHead;
import org.swathbook.measure.Numbers;
import org.swathbook.plan.compare.ComparedProgram;
import org.swathbook.rules.Finding;
import org.swathbook.rules.Severity;
import org.swathbook.season.outcome.PassOutcome;
import org.swathbook.season.outcome.PassWeed;
import org.swathbook.season.outcome.SeasonOutcome;
import org.swathbook.season.outcome.WeedOutcome;

/** The report of {@code plan --compare}. */
public final class CompareText {
  /** So many programs stand side by side on a page; more of them stand below. */
  private static final int ABREAST = 3;

  private static final int HEAD_WIDTH = 18;

  private final Book book;
  private final ComparedField compared;
  private final Page page;

  CompareText(Book book, ComparedField compared, Page page) {
    this.book = book;
    this.compared = compared;
    this.page = page;
  }

  public static String of(Book book, ReportHead head, ComparedField compared) {
    Page page = new Page();
    HeadText.on(
        page,
        "Comparison of " + Figures.counted(compared.programs().size(), "program", "programs"),
        head);
    FieldText.head(book, compared.field(), page);
    FieldText.weeds(book, compared.field(), page);
    new CompareText(book, compared, page).all();
    HeadText.foot(page, true);
    return page.toString();
  }

  private void all() {
    compared.notes().forEach(n -> page.wrapped(0, 2, n));
    programs();
    int n = compared.programs().size();
    for (int from = 0; from < n; from += ABREAST) {
      table(from, Math.min(n, from + ABREAST));
    }
    against();
    blocks();
  }

  private void programs() {
    page.line("The programs");
    for (int i = 0; i < compared.programs().size(); i++) {
      ComparedProgram p = compared.programs().get(i);
      String name = outcome(p).program().name();
      page.line("  " + (i + 1) + "  " + p.asked() + (name.equals(p.asked()) ? "" : ": " + name));
      AlternativeText.passes(page, 5, outcome(p));
      p.notes().forEach(note -> page.wrapped(5, note));
      page.blank();
    }
  }

  private static SeasonOutcome outcome(ComparedProgram p) {
    return p.judged().outcome();
  }

  private void table(int from, int to) {
    Table table = new Table(0, "l" + "r".repeat(to - from));
    rows(from, to).forEach(table::row);
    table.on(page);
    page.blank();
  }

  /** The names of the programs, then their figures: what, and a cell each. */
  List<List<String>> rows(int from, int to) {
    List<ComparedProgram> shown = compared.programs().subList(from, to);
    List<List<String>> table = new ArrayList<>();
    List<String> heads = new ArrayList<>(List.of("Side by side"));
    for (int i = from; i < to; i++) {
      heads.add(head(i));
    }
    table.add(heads);
    row(table, "cost, $/acre", shown, p -> outcome(p).cost().map(Figures::money).orElse("unknown"));
    row(table, "yield loss, $/acre, mean (worst year)", shown, this::loss);
    row(table, "net return, $/acre, mean (worst year)", shown, CompareText::net);
    for (WeedOutcome w : weeds()) {
      weed(table, w, shown);
    }
    row(
        table,
        "years with every pass in its windows, %",
        shown,
        p -> Numbers.decimals(outcome(p).windowConfidencePct(), 1));
    row(
        table,
        "house rules broken",
        shown,
        p -> Integer.toString(p.judged().judgement().brokenNames().size()));
    row(table, "blocks", shown, p -> Integer.toString(blocks(p).size()));
    row(table, "verdict", shown, p -> p.judged().judgement().verdict().word());
    return table;
  }

  String head(int i) {
    String head = (i + 1) + " " + compared.programs().get(i).asked();
    return head.length() <= HEAD_WIDTH ? head : head.substring(0, HEAD_WIDTH - 1) + "…";
  }

  private static void row(
      List<List<String>> table,
      String what,
      List<ComparedProgram> of,
      Function<ComparedProgram, String> cell) {
    List<String> cells = new ArrayList<>(List.of(what));
    of.forEach(p -> cells.add(cell.apply(p)));
    table.add(cells);
  }

  private String loss(ComparedProgram p) {
    return Figures.money(outcome(p).loss())
        + " ("
        + Figures.money(LossByYear.of(book, compared.field()).in(LossByYear.worst(outcome(p))))
        + ")";
  }

  private static String net(ComparedProgram p) {
    return outcome(p).net().map(Figures::money).orElse("unknown")
        + p.judged().worstYearNet().map(m -> " (" + Figures.money(m) + ")").orElse("");
  }

  /** The weeds that decide; all of them where none does. */
  List<WeedOutcome> weeds() {
    List<WeedOutcome> all =
        compared.programs().isEmpty() ? List.of() : outcome(compared.programs().get(0)).weeds();
    List<WeedOutcome> drivers = all.stream().filter(w -> w.pressure().driver().isDriver()).toList();
    return drivers.isEmpty() ? all : drivers;
  }

  private static void weed(
      List<List<String>> table, WeedOutcome weed, List<ComparedProgram> shown) {
    WeedId id = weed.pressure().weed().id();
    row(table, weed.pressure().weed().name(), shown, p -> "");
    row(
        table,
        "  control %, mean (worst year)",
        shown,
        p ->
            Figures.percent(of(p, id).controlPct())
                + " ("
                + Figures.percent(of(p, id).worstYearControlPct())
                + ")");
    row(
        table,
        "  survivors/acre, in time / all",
        shown,
        p ->
            Figures.count(of(p, id).survivorsPerAcre())
                + " / "
                + Figures.count(of(p, id).allSurvivorsPerAcre()));
    row(table, "  emergence exposed, %", shown, p -> Figures.percent(of(p, id).exposedPct()));
    row(
        table,
        "  weakest site: control % without it",
        shown,
        p ->
            of(p, id)
                .weakestSite()
                .map(s -> s + ": " + Figures.percent(of(p, id).controlPctWithoutWeakest()))
                .orElse("no site works"));
    row(table, "  effective foliar sites by pass", shown, p -> sites(p, id, true));
    row(table, "  effective soil sites by pass", shown, p -> sites(p, id, false));
  }

  private static WeedOutcome of(ComparedProgram p, WeedId id) {
    return outcome(p).weed(id);
  }

  /** A pass at which none stands asks for no foliar site and has a dash. */
  private static String sites(ComparedProgram p, WeedId id, boolean foliar) {
    List<String> out = new ArrayList<>();
    for (PassOutcome pass : outcome(p).passes()) {
      for (PassWeed w : pass.weeds()) {
        if (w.weed().equals(id)) {
          out.add(
              !foliar
                  ? Integer.toString(w.effectiveSoilSites())
                  : w.stands() ? Integer.toString(w.effectiveFoliarSites()) : "-");
        }
      }
    }
    return out.isEmpty() ? "no pass" : String.join(", ", out);
  }

  private void against() {
    for (int i = 1; i < compared.programs().size(); i++) {
      ComparedProgram p = compared.programs().get(i);
      page.line((i + 1) + " " + p.asked() + " against 1 " + compared.programs().get(0).asked());
      if (p.against().isNothing()) {
        page.line("  No difference in any of these figures.");
      } else {
        said("gives up: ", p.against().givesUp());
        said("gains: ", p.against().gains());
      }
      page.blank();
    }
    page.line("House rules broken");
    for (int i = 0; i < compared.programs().size(); i++) {
      List<String> names = compared.programs().get(i).judged().judgement().brokenNames();
      page.wrapped(2, 4, head(i) + ": " + (names.isEmpty() ? "none" : String.join(", ", names)));
    }
    page.blank();
  }

  private void said(String what, List<String> parts) {
    page.wrapped(2, 4, what + (parts.isEmpty() ? "nothing" : String.join("; ", parts)));
  }

  static List<Finding> blocks(ComparedProgram p) {
    return p.judged().judgement().findings().stream()
        .filter(f -> f.severity() == Severity.BLOCK)
        .toList();
  }

  private void blocks() {
    for (int i = 0; i < compared.programs().size(); i++) {
      List<Finding> blocks = blocks(compared.programs().get(i));
      if (!blocks.isEmpty()) {
        page.line("What blocks " + head(i));
        new FindingText(book.catalog()).findings(page, blocks);
        page.blank();
      }
    }
    page.wrapped(
        0,
        2,
        "Warnings and what is still to be looked up stand in the full report of a program:"
            + " swathbook season PROGRAM.");
    page.blank();
  }
}
