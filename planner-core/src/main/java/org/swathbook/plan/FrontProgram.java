package org.swathbook.plan;

import java.util.List;
import org.swathbook.measure.Money;
import org.swathbook.season.SeasonOutcome;

/**
 * A program that no other met beats in cost, in expected loss and in control with the site missed
 * most gone, all at once.
 *
 * @param cost of passes and products on an acre, mean over the years
 * @param weakestControlPct lowest control of a driver weed with the site gone that is missed most;
 *     100 without a driver weed
 * @param brokenRules names of the house rules that it breaks
 */
public record FrontProgram(
    SeasonOutcome outcome, Money cost, double weakestControlPct, List<String> brokenRules) {

  public FrontProgram {
    brokenRules = List.copyOf(brokenRules);
  }
}
