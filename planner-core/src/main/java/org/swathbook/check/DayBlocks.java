package org.swathbook.check;

import java.util.List;
import org.swathbook.rules.DayRule;
import org.swathbook.rules.Finding;
import org.swathbook.rules.RuleBook;
import org.swathbook.rules.Severity;
import org.swathbook.rules.weather.WaterQualityRule;

/**
 * What blocks a tank and passes with the weather: wind, where it blows to, temperature, inversion,
 * rain, the hour. Another hour or day answers it; a lesser tank does not.
 */
public final class DayBlocks {
  private DayBlocks() {}

  /** Those of a judgement, in its order. */
  public static List<Finding> of(Judgement judgement) {
    return judgement.findings().stream()
        .filter(f -> f.severity() == Severity.BLOCK && isOfTheDay(f))
        .toList();
  }

  /** The water that a tank is filled with is the same tomorrow. */
  static boolean isOfTheDay(Finding f) {
    return !f.rule().equals(WaterQualityRule.CARD.id())
        && RuleBook.find(f.rule().value()).filter(DayRule.class::isInstance).isPresent();
  }
}
