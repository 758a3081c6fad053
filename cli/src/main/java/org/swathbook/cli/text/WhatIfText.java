package org.swathbook.cli.text;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.swathbook.audit.FieldChange;
import org.swathbook.audit.FieldChange.Outcome;
import org.swathbook.audit.WhatIfResult;
import org.swathbook.book.Book;
import org.swathbook.cli.report.ReportHead;
import org.swathbook.measure.Numbers;

/** What changes of the last season's passes would have done, field by field. */
public final class WhatIfText {
  private static final String[] READING = {
    "Each field is walked again in the weather of the last season of its journal, with that one"
        + " change and nothing else. Met <2: share of the season's emergence that met no effective"
        + " site or one only. Without: control with the weakest site gone.",
    "Improved: for some driver weed one of the three figures is better by a point or more, and"
        + " control of none is worse by as much. Acres and costs are those of improved fields.",
    "Forbidden: the rules of a plan block every product that would work, or the new day. Blocks"
        + " that the pass had before the change do not count against it. Water, nozzles and"
        + " adjuvants are not judged, nor the wind of another day: they are for the day.",
    "Of products that bring equally much the cheapest is taken, by prices.csv of today, a product"
        + " of one active at a time, at the low or the high end of its label's rates for the soil.",
  };

  private final Book book;
  private final Page page = new Page();

  private WhatIfText(Book book) {
    this.book = book;
  }

  public static String of(Book book, ReportHead head, List<WhatIfResult> results) {
    WhatIfText text = new WhatIfText(book);
    HeadText.on(text.page, "What if", head);
    text.summary(results);
    results.forEach(text::change);
    text.page.rule('=');
    text.page.line("How to read the figures");
    for (String line : READING) {
      text.page.wrapped(2, 4, line);
    }
    text.page.blank();
    HeadText.foot(text.page, false);
    return text.page.toString();
  }

  private void summary(List<WhatIfResult> results) {
    Table table = new Table(0, "lrrrrrrr");
    table.row(
        "change", "improved", "acres", "$/acre", "total $", "no better", "forbidden", "had it");
    for (WhatIfResult r : results) {
      boolean any = r.count(Outcome.IMPROVED) > 0;
      table.row(
          r.change().spelling(),
          Integer.toString(r.count(Outcome.IMPROVED)),
          Numbers.decimals(r.acresImproved(), 1),
          any ? Figures.money(r.costPerAcreImproved()) : "-",
          any ? Figures.money(r.cost()) : "-",
          Integer.toString(r.count(Outcome.NO_BETTER)),
          Integer.toString(r.count(Outcome.FORBIDDEN)),
          Integer.toString(r.count(Outcome.NOT_NEEDED)));
    }
    table.on(page);
    if (results.size() > 1) {
      results.stream()
          .filter(r -> r.acresImproved() > 0)
          .max(
              Comparator.comparingDouble(WhatIfResult::acresImproved)
                  .thenComparing(r -> -r.cost().cents()))
          .ifPresent(
              r ->
                  page.wrapped(
                      0,
                      2,
                      "Most acres are improved by "
                          + r.change().spelling()
                          + "; by how much stands with each field."));
    }
    page.blank();
  }

  private void change(WhatIfResult result) {
    page.rule('=');
    page.wrapped(0, 2, "What if: " + result.change().words());
    page.blank();
    result.fields().forEach(this::field);
    page.blank();
  }

  private void field(FieldChange f) {
    page.wrapped(
        0,
        2,
        f.outcome().word().toUpperCase(Locale.ROOT)
            + " "
            + f.field().id()
            + ", "
            + f.field().name()
            + ", "
            + Numbers.decimals(f.field().acres(), 1)
            + " acres"
            + (f.season() == 0
                ? ""
                : ", " + book.catalog().crop(f.field().crop()).name() + " of " + f.season())
            + f.costPerAcre()
                .map(
                    c ->
                        ": $"
                            + Figures.money(c)
                            + "/acre, $"
                            + Figures.money(f.costOfField().orElseThrow()))
                .orElse(""));
    f.changes().forEach(c -> page.wrapped(4, 6, c));
    f.why().forEach(w -> page.wrapped(4, 6, w));
    if (!f.weeds().isEmpty()) {
      Table table = new Table(4, "lrrr");
      table.row("driver weed", "met <2 %", "control %", "without %");
      for (FieldChange.WeedEffect e : f.weeds()) {
        table.row(
            e.weed().weed().name(),
            both(e.before().fewerThanTwoPct(), e.after().fewerThanTwoPct()),
            both(e.before().controlPct(), e.after().controlPct()),
            both(e.before().withoutPct(), e.after().withoutPct()));
      }
      table.on(page);
    }
    if (!f.notKnown().isEmpty()) {
      page.wrapped(
          4,
          6,
          "NOT VERIFIED, to be looked up on the label: "
              + f.notKnown().stream().collect(Collectors.joining("; ")));
    }
  }

  private static String both(double before, double after) {
    return Numbers.decimals(before, 0) + " to " + Numbers.decimals(after, 0);
  }
}
