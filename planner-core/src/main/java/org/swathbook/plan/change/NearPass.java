package org.swathbook.plan.change;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.Optional;
import org.swathbook.book.HouseRules;
import org.swathbook.season.outcome.PassOutcome;
import org.swathbook.season.outcome.SeasonOutcome;

/**
 * That a pass comes nearer to another than the house sends its sprayer.
 *
 * @param other planned date of the nearest other pass
 * @param days from one to the other, and {@code asked} by the house at least
 */
public record NearPass(LocalDate other, long days, int asked) {

  /** The key of the house rules. */
  public static final String RULE = "minDaysBetweenPasses";

  /** Of an added pass; empty where it keeps to the house's days, and of any other change. */
  static Optional<NearPass> of(HouseRules house, SingleChange change, SeasonOutcome outcome) {
    if (change.kind() != SingleChange.Kind.ADD_PASS) {
      return Optional.empty();
    }
    LocalDate date = change.pass();
    return outcome.passes().stream()
        .map(PassOutcome::planned)
        .filter(d -> !d.equals(date))
        .map(
            d ->
                new NearPass(
                    d, Math.abs(ChronoUnit.DAYS.between(d, date)), house.minDaysBetweenPasses()))
        .filter(n -> n.days < n.asked)
        .min(Comparator.comparingLong(NearPass::days).thenComparing(NearPass::other));
  }
}
