package org.swathbook.cli.report;

import org.swathbook.catalog.Catalog;
import org.swathbook.check.BrokenHouseRule;
import org.swathbook.check.HouseRuleCheck;
import org.swathbook.measure.Numbers;
import org.swathbook.season.outcome.SeasonOutcome;

/** A broken house rule in words. */
public final class HouseRuleWords {
  private HouseRuleWords() {}

  /** {@code pass 2, Palmer amaranth: 1 effective foliar site, at least 2 asked}. */
  public static String of(Catalog catalog, SeasonOutcome outcome, BrokenHouseRule broken) {
    StringBuilder where = new StringBuilder();
    broken.pass().ifPresent(p -> where.append("pass ").append(p + 1));
    broken
        .weed()
        .ifPresent(w -> where.append(where.isEmpty() ? "" : ", ").append(catalog.weed(w).name()));
    return where + (where.isEmpty() ? "" : ": ") + comparison(outcome, broken);
  }

  private static String comparison(SeasonOutcome outcome, BrokenHouseRule b) {
    return switch (b.name()) {
      case HouseRuleCheck.MIN_FOLIAR_SITES -> sites(b, "foliar");
      case HouseRuleCheck.MIN_SOIL_SITES -> sites(b, "soil");
      case HouseRuleCheck.MIN_LAYER_OVERLAP -> overlap(outcome, b);
      case HouseRuleCheck.MAX_EXPOSED_EMERGENCE -> exposed(outcome, b);
      case HouseRuleCheck.SEASON_CONTROL -> least(b, " % control");
      case HouseRuleCheck.ONE_SITE_GONE -> least(b, " % control without the weakest site");
      case HouseRuleCheck.WINDOW_CONFIDENCE ->
          least(b, " % of the years with every pass in its windows");
      default -> number(b.actual()) + " against " + number(b.limit());
    };
  }

  private static String sites(BrokenHouseRule b, String kind) {
    return least(b, " effective " + kind + (b.actual() == 1 ? " site" : " sites"));
  }

  private static String least(BrokenHouseRule b, String what) {
    return number(b.actual()) + what + ", at least " + number(b.limit()) + " asked";
  }

  /** The median may be in order and single years not. */
  private static String exposed(SeasonOutcome outcome, BrokenHouseRule b) {
    String median =
        number(b.actual()) + " % of the emergence exposed, at most " + number(b.limit()) + " asked";
    return b.weed()
        .map(outcome::weed)
        .map(
            w ->
                median
                    + "; one year in five has "
                    + number(w.exposedWorstFifthPct())
                    + " % or more")
        .orElse(median);
  }

  private static String overlap(SeasonOutcome outcome, BrokenHouseRule b) {
    String median = least(b, " days of overlap with the layer before");
    return b.weed().map(outcome::weed).stream()
        .flatMap(w -> w.overlaps().stream())
        .filter(o -> b.pass().isPresent() && o.nextPass() == b.pass().getAsInt())
        .map(o -> median + "; a hole in " + number(100 * o.negativeShare()) + " % of the years")
        .findFirst()
        .orElse(median);
  }

  private static String number(double value) {
    return Double.isNaN(value) ? "no" : Numbers.decimals(value, 1);
  }
}
