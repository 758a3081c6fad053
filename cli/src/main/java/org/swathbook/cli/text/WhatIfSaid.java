package org.swathbook.cli.text;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.swathbook.audit.FieldChange;
import org.swathbook.audit.FieldChange.Outcome;
import org.swathbook.audit.WhatIfResult;
import org.swathbook.book.Book;
import org.swathbook.measure.Numbers;

/** What is said of changes of the last season's passes, on a page and as text. */
public final class WhatIfSaid {
  public static final String TITLE = "What if";

  public static final List<String> SUMMARY_HEAD =
      List.of(
          "change", "improved", "acres", "$/acre", "total $", "no better", "forbidden", "had it");

  public static final List<String> WEED_HEAD =
      List.of("driver weed", "met <2 %", "control %", "without %");

  public static final List<String> READING =
      List.of(
          "Each field is walked again in the weather of the last season of its journal, with that one"
              + " change and nothing else. Met <2: share of the season's emergence that met no effective"
              + " site or one only. Without: control with the weakest site gone.",
          "Improved: for some driver weed one of the three figures is better by a point or more, and"
              + " control of none is worse by as much. Acres and costs are those of improved fields.",
          "Forbidden: the rules of a plan block every product that would work, or the new day. Blocks"
              + " that the pass had before the change do not count against it. Water, nozzles and"
              + " adjuvants are not judged, nor the wind of another day: they are for the day.",
          "Of products that bring equally much the cheapest is taken, by prices.csv of today, a product"
              + " of one active at a time, at the low or the high end of its label's rates for the soil.");

  private WhatIfSaid() {}

  /** Fields improved, their acres and costs, then fields that are not. */
  public static List<String> summary(WhatIfResult r) {
    boolean any = r.count(Outcome.IMPROVED) > 0;
    return List.of(
        r.change().spelling(),
        Integer.toString(r.count(Outcome.IMPROVED)),
        Numbers.grouped(r.acresImproved(), 1),
        any ? Figures.money(r.costPerAcreImproved()) : "-",
        any ? Figures.money(r.cost()) : "-",
        Integer.toString(r.count(Outcome.NO_BETTER)),
        Integer.toString(r.count(Outcome.FORBIDDEN)),
        Integer.toString(r.count(Outcome.NOT_NEEDED)));
  }

  /** The change that improves most acres, of several. */
  public static Optional<String> best(List<WhatIfResult> results) {
    if (results.size() < 2) {
      return Optional.empty();
    }
    return results.stream()
        .filter(r -> r.acresImproved() > 0)
        .max(
            Comparator.comparingDouble(WhatIfResult::acresImproved)
                .thenComparing(r -> -r.cost().cents()))
        .map(
            r ->
                "Most acres are improved by "
                    + r.change().spelling()
                    + "; by how much stands with each field.");
  }

  public static String heading(WhatIfResult result) {
    return "What if: " + result.change().words();
  }

  /** What came of it on a field, and what it costs there. */
  public static String field(Book book, FieldChange f) {
    return f.outcome().word().toUpperCase(Locale.ROOT)
        + " "
        + f.field().id()
        + ", "
        + f.field().name()
        + ", "
        + Numbers.grouped(f.field().acres(), 1)
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
            .orElse("");
  }

  /** Of each driver weed the three figures, before and after. */
  public static List<List<String>> weeds(FieldChange f) {
    List<List<String>> out = new ArrayList<>();
    for (FieldChange.WeedEffect e : f.weeds()) {
      out.add(
          List.of(
              e.weed().weed().name(),
              both(e.before().fewerThanTwoPct(), e.after().fewerThanTwoPct()),
              both(e.before().controlPct(), e.after().controlPct()),
              both(e.before().withoutPct(), e.after().withoutPct())));
    }
    return out;
  }

  /** Empty when nothing is to be looked up. */
  public static Optional<String> notKnown(FieldChange f) {
    return f.notKnown().isEmpty()
        ? Optional.empty()
        : Optional.of(
            "NOT VERIFIED, to be looked up on the label: " + String.join("; ", f.notKnown()));
  }

  private static String both(double before, double after) {
    return Numbers.decimals(before, 0) + " to " + Numbers.decimals(after, 0);
  }
}
