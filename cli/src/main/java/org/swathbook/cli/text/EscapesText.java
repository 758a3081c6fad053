package org.swathbook.cli.text;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.book.file.WatchFile;
import org.swathbook.catalog.Site;
import org.swathbook.catalog.Weed;
import org.swathbook.cli.report.ReportHead;
import org.swathbook.escapes.Action;
import org.swathbook.escapes.EscapeReport;
import org.swathbook.escapes.RefusedRespray;
import org.swathbook.escapes.ResprayOption;
import org.swathbook.escapes.Suspicion;
import org.swathbook.escapes.WeedReading;
import org.swathbook.measure.Numbers;

/** What was seen after a pass and what to do about it: the action first. */
public final class EscapesText {
  private final Book book;
  private final EscapeReport report;
  private final Page page = new Page();

  private EscapesText(Book book, EscapeReport report) {
    this.book = book;
    this.report = report;
  }

  /**
   * @param watch rows that a suspicion is worth in watch.csv
   */
  public static String of(
      Book book, ReportHead head, Field field, EscapeReport report, List<WatchFile.Entry> watch) {
    EscapesText text = new EscapesText(book, report);
    HeadText.on(text.page, "After a pass", head);
    text.page.line(
        field.id()
            + ", "
            + field.name()
            + ", "
            + Numbers.decimals(field.acres(), 1)
            + " acres of "
            + book.catalog().crop(field.crop()).name()
            + ", sprayed "
            + Figures.date(report.seen().sprayed())
            + ", seen "
            + Figures.date(report.seen().seen()));
    text.page.wrapped(
        0,
        2,
        "Sprayed, "
            + (report.seen().inJournal() ? "by the journal: " : "not in the journal yet: ")
            + report.seen().mix().doses().stream()
                .map(
                    d ->
                        d.product().name()
                            + " "
                            + Numbers.decimals(d.rate().amount(), 2)
                            + " "
                            + d.rate().unitText())
                .collect(Collectors.joining(", ")));
    text.page.blank();
    text.action();
    report.weeds().forEach(text::weed);
    text.cost();
    text.respray();
    text.beside();
    text.watch(watch);
    HeadText.foot(text.page, false);
    return text.page.toString();
  }

  private Weed weedOf(WeedReading w) {
    return book.catalog().weed(w.weed());
  }

  private void action() {
    page.line(
        switch (report.action()) {
          case DONE -> "Done: nothing more for these weeds now";
          case WAIT -> "Wait, and look again";
          case RESPRAY -> "Spray again";
          case STOP_SEED -> "Stop the seed: no spray that may go on now would help";
        });
    report.why().forEach(r -> page.wrapped(2, 4, "- " + r));
    report
        .lookAgain()
        .ifPresent(
            d -> {
              page.line("  Look again on " + Figures.date(d) + " for:");
              report.weeds().stream()
                  .filter(w -> w.tooEarly() || w.undecided() > 0)
                  .flatMap(w -> w.yetToTell().stream())
                  .distinct()
                  .forEach(s -> page.wrapped(4, 6, s));
            });
    page.blank();
  }

  private void weed(WeedReading w) {
    page.rule('-');
    page.line(weedOf(w).name() + " (" + w.weed() + ")");
    page.wrapped(
        2,
        4,
        w.dead()
            + " dead, "
            + w.dying()
            + " dying, "
            + w.undecided()
            + " undecided, "
            + w.recovering()
            + " living on, "
            + w.missed()
            + " untouched; "
            + Figures.percent(100 * w.controlled().share())
            + " % controlled (95 % interval "
            + Figures.percent(100 * w.controlled().low())
            + " to "
            + Figures.percent(100 * w.controlled().high())
            + " %, for plants picked at random; the undecided count as alive)");
    page.wrapped(
        2,
        4,
        (w.sites().isEmpty()
                ? "No partner is known to work on it through leaves"
                : "Working on it through leaves: "
                    + (w.sites().size() == 1 ? "site " : "sites ")
                    + Figures.list(w.sites().stream().map(Site::toString).toList()))
            + "; to be judged from "
            + Figures.date(w.judgedFrom())
            + (w.tooEarly() ? ", too early now" : "")
            + ", dead by "
            + Figures.date(w.deadBy())
            + " in warm growing weather, later in cool");
    suspicion(w);
    page.blank();
  }

  private void suspicion(WeedReading w) {
    Suspicion s = w.suspicion();
    page.line("  Suspicion of resistance: " + s.level().word());
    s.evidenceFor().forEach(e -> page.wrapped(4, 8, "for: " + e));
    s.evidenceAgainst().forEach(e -> page.wrapped(4, 8, "against: " + e));
    s.unknown().forEach(e -> page.wrapped(4, 8, "not written down: " + e));
    if (s.isWorthATest()) {
      page.wrapped(
          4,
          6,
          "Only a test can tell. Leaves: of up to five survivors the top 1 to 2 in of young healthy"
              + " leaf, in a sealed bag (University of Illinois Plant Clinic 2016). Seed: ripe heads of"
              + " 20 to 40 plants, one to a paper bag, dry (University of Guelph). Send to the plant"
              + " clinic or weed science group of the state's land-grant university; ask before you"
              + " sample.");
    }
  }

  private void cost() {
    page.rule('-');
    page.line("What the survivors cost when nothing more is done");
    page.wrapped(
        2,
        4,
        "Yield: "
            + Figures.money(report.cost().lossPerAcre())
            + " $/acre, mean of the weather years; the undecided counted as alive");
    page.wrapped(
        2,
        4,
        "Seed, orders of magnitude, seeds/m²: "
            + report.weeds().stream()
                .map(
                    w ->
                        weedOf(w).name()
                            + " "
                            + Figures.rough(
                                report.cost().seedsPerM2().getOrDefault(w.weed(), 0.0), 1))
                .collect(Collectors.joining(", ")));
    page.blank();
  }

  private void respray() {
    if (!report.respray().isEmpty()) {
      page.line(
          report.action() == Action.RESPRAY
              ? "What may go on the survivors, the best first"
              : "What might go on the survivors, though it is not advised");
      Table table = new Table(2, "lllrrr");
      table.row("product", "site", "days", "control %", "cost $", "saves $");
      for (ResprayOption o : report.respray()) {
        table.row(
            o.dose().product().name()
                + " "
                + Numbers.decimals(o.dose().rate().amount(), 2)
                + " "
                + o.dose().rate().unitText(),
            o.dose().actives().get(0).ingredient().site() + (o.failedSite() ? " again" : ""),
            Figures.day(o.earliest()) + " to " + Figures.day(o.latest()),
            Figures.percent(o.controlPct()),
            Figures.money(o.costPerAcre()),
            Figures.money(o.savesPerAcre()));
      }
      table.on(page);
      for (ResprayOption o : report.respray()) {
        o.published()
            .ifPresent(p -> page.wrapped(2, 4, o.dose().product().name() + ": in trials " + p));
        if (o.controlPct() < 100 * book.house().effectiveSite()) {
          page.wrapped(
              2,
              4,
              o.dose().product().name() + ": less than the house rules call effective on its own");
        }
      }
      page.wrapped(
          2,
          4,
          "Dollars on one acre. Each product alone, at a rate that label and journal leave; days are legal ones, not fit"
              + " ones. Saves: yield loss spared, before the cost. Check the tank before it is loaded.");
      page.blank();
    }
    if (!report.refused().isEmpty()) {
      page.line("Not offered, and why");
      for (RefusedRespray r : report.refused()) {
        String name = r.active().name();
        String why = r.why();
        boolean named = why.toLowerCase(Locale.ROOT).startsWith(name.toLowerCase(Locale.ROOT));
        page.wrapped(2, 4, named ? why : name + ": " + why);
      }
      page.blank();
    }
  }

  private void beside() {
    if (!report.beside().isEmpty()) {
      page.line("Without a sprayer");
      report.beside().forEach(b -> page.wrapped(2, 4, b));
      page.blank();
    }
  }

  private void watch(List<WatchFile.Entry> entries) {
    if (!entries.isEmpty()) {
      page.line("For watch.csv; --watch adds it");
      entries.forEach(
          e ->
              page.wrapped(
                  2,
                  4,
                  e.field() + ", " + e.weed() + ", site " + e.site() + ", since " + e.since()));
      page.blank();
    }
  }
}
