package org.swathbook.cli.text;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.swathbook.catalog.WeedId;
import org.swathbook.cli.report.PlannedField;
import org.swathbook.rules.RuleId;
import org.swathbook.rules.stewardship.SurvivorsRule;
import org.swathbook.season.outcome.WeedOutcome;

/**
 * What warns of the whole season of the first program of a plan, in a line above it: each rule with
 * the weeds that it names.
 */
public final class WarningsText {
  private WarningsText() {}

  /** With how many plants live where survivors are warned of; empty when nothing warns. */
  static Optional<String> withNumbers(PlannedField plan) {
    return of(
        plan,
        (rule, weed) -> name(weed) + (rule.equals(SurvivorsRule.CARD.id()) ? living(weed) : ""));
  }

  /** The same where those numbers stand beside it. */
  public static Optional<String> of(PlannedField plan) {
    return of(plan, (rule, weed) -> name(weed));
  }

  private interface Said {
    String of(RuleId rule, WeedOutcome weed);
  }

  private static Optional<String> of(PlannedField plan, Said said) {
    String all =
        plan.warnings().entrySet().stream()
            .map(e -> e.getKey().value() + weeds(plan, e.getValue(), w -> said.of(e.getKey(), w)))
            .collect(Collectors.joining(", "));
    return all.isEmpty()
        ? Optional.empty()
        : Optional.of("Warned of for the whole season, see its verdict: " + all);
  }

  private static String weeds(
      PlannedField plan, List<WeedId> weeds, Function<WeedOutcome, String> said) {
    return weeds.isEmpty()
        ? ""
        : " ("
            + weeds.stream()
                .map(plan.programs().get(0).outcome()::weed)
                .map(said)
                .reduce((a, b) -> a + (b.contains(",") ? "; " : ", ") + b)
                .orElseThrow()
            + ")";
  }

  private static String name(WeedOutcome weed) {
    return weed.pressure().weed().name();
  }

  private static String living(WeedOutcome weed) {
    return ": "
        + Figures.count(weed.allSurvivorsPerAcre())
        + " plants an acre live to harvest, "
        + Figures.count(weed.survivorsPerAcre())
        + " of them up in time to matter";
  }
}
