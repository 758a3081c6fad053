package org.swathbook.cli.text;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.catalog.WeedId;
import org.swathbook.cli.report.CostSplit;
import org.swathbook.cli.report.LossByYear;
import org.swathbook.measure.Money;
import org.swathbook.measure.Numbers;
import org.swathbook.season.outcome.SeasonOutcome;
import org.swathbook.season.outcome.WeedOutcome;
import org.swathbook.season.outcome.YearOutcome;

/** What a program comes to: control by weed and money. */
final class ResultText {
  private final Book book;
  private final Field field;
  private final SeasonOutcome outcome;

  ResultText(Book book, Field field, SeasonOutcome outcome) {
    this.book = book;
    this.field = field;
    this.outcome = outcome;
  }

  void weeds(Page page) {
    page.line("Results over " + Figures.counted(outcome.years().size(), "year", "years"));
    Table table = new Table(2, "lrrrll");
    table.row("", "control %", "exposed %", "survivors/acre", "weakest site", "emergence met by");
    table.row(
        "", "mean (worst)", "med. (worst)", "in time / all", "without it", "0 / 1 / 2+ sites");
    weedRows().forEach(table::row);
    table.on(page);
    notes().forEach(n -> page.wrapped(2, 4, n));
    page.blank();
  }

  /** Name, control, exposed emergence, survivors, weakest site, emergence met by sites. */
  List<List<String>> weedRows() {
    List<List<String>> out = new ArrayList<>();
    for (WeedOutcome w : outcome.weeds()) {
      WeedId id = w.pressure().weed().id();
      out.add(
          List.of(
              w.pressure().weed().name() + (w.pressure().driver().isDriver() ? " *" : ""),
              Figures.percent(w.controlPct())
                  + " ("
                  + Figures.percent(w.worstYearControlPct())
                  + ")",
              Figures.percent(w.exposedPct())
                  + " ("
                  + Figures.percent(LossByYear.worstExposedPct(outcome, id))
                  + ")",
              Figures.count(w.survivorsPerAcre()) + " / " + Figures.count(w.allSurvivorsPerAcre()),
              w.weakestSite()
                  .map(s -> s + ": " + Figures.percent(w.controlPctWithoutWeakest()))
                  .orElse("no site works"),
              Numbers.fixed(w.metNonePct(), 0)
                  + " / "
                  + Numbers.fixed(w.metOnePct(), 0)
                  + " / "
                  + Numbers.fixed(w.metTwoOrMorePct(), 0)));
    }
    return out;
  }

  /** What stands below the table: seed return, and what is not known. */
  List<String> notes() {
    List<String> out = new ArrayList<>();
    out.add(seed());
    for (WeedOutcome w : outcome.weeds()) {
      if (!w.unknownActives().isEmpty()) {
        out.add(
            "Not known, counted as nothing on "
                + w.pressure().weed().name()
                + ": "
                + Figures.list(w.unknownActives()));
      }
    }
    return out;
  }

  /** What escapes leave in the soil: one line, in round numbers. */
  private String seed() {
    return "Seed return (order of magnitude; seeds/m², and next year's seedbank beside this year's): "
        + outcome.weeds().stream()
            .map(
                w ->
                    w.pressure().weed().name()
                        + " "
                        + Figures.rough(w.seedReturnPerM2(), 2)
                        + " (x "
                        + Figures.rough(w.seedbankFactor(), 2)
                        + ")")
            .collect(Collectors.joining(", "));
  }

  void money(Page page) {
    Table table = new Table(2, "lrl");
    moneyRows().forEach(table::row);
    table.on(page);
    page.wrapped(2, confidence());
    page.blank();
  }

  /** Cost, yield loss and net return: name, money on an acre, what it is made of. */
  List<List<String>> moneyRows() {
    List<List<String>> out = new ArrayList<>();
    CostSplit cost = CostSplit.of(book, outcome);
    int passes = outcome.passes().size();
    out.add(
        List.of(
            "Cost",
            perAcre(outcome.cost().map(Figures::money).orElse("unknown")),
            cost.products()
                    .map(m -> "products " + Figures.money(m))
                    .orElse("no price for " + Figures.list(cost.unpriced()))
                + ", "
                + Figures.counted(passes, "pass", "passes")
                + " "
                + Figures.money(cost.passes())
                + missed(cost)
                + adjuvants()));
    YearOutcome worst = LossByYear.worst(outcome);
    out.add(
        List.of(
            "Yield loss",
            perAcre(Figures.money(outcome.loss())),
            "worst year "
                + Figures.money(LossByYear.of(book, field).in(worst))
                + " ("
                + worst.year()
                + "); with no pass at all "
                + Figures.money(outcome.untreatedLoss())));
    out.add(
        List.of(
            "Net return",
            perAcre(outcome.net().map(Figures::money).orElse("unknown")),
            outcome.net().map(m -> wholeField(m)).orElse("a price is missing")
                + "; yield goal times price, less loss and cost"));
    return out;
  }

  /** In how many years a sprayer, late or not, finds its windows. */
  String confidence() {
    return "In "
        + Numbers.decimals(outcome.windowConfidencePct(), 1)
        + " % of the years every pass finds a day in its windows, from its date on and when the sprayer comes "
        + Figures.counted(book.house().queueDays(), "day", "days")
        + " late";
  }

  private static String perAcre(String money) {
    return money + " $/acre";
  }

  private String wholeField(Money perAcre) {
    return "$"
        + Figures.money(Money.ofDollars(perAcre.dollars() * field.acres()))
        + " for "
        + FieldText.acres(field.acres())
        + " acres";
  }

  /** What the sum leaves out, so that nobody takes it for all that the passes cost. */
  private String adjuvants() {
    return outcome.passes().stream().allMatch(p -> p.mix().adjuvants().isEmpty())
        ? ""
        : "; adjuvants, which have no price here, not counted";
  }

  private String missed(CostSplit cost) {
    return cost.total().equals(outcome.cost())
        ? ""
        : "; mean over the years, a missed pass costs nothing";
  }
}
