package org.swathbook.plan;

import java.util.List;
import org.swathbook.check.BrokenHouseRule;
import org.swathbook.measure.Money;
import org.swathbook.season.SeasonOutcome;

/**
 * A draft walked in full: its season and the house rules that it breaks.
 *
 * @param lacking how many actives that were asked for it does not use
 */
record Walked(Draft draft, SeasonOutcome outcome, List<BrokenHouseRule> broken, int lacking) {

  Walked {
    broken = List.copyOf(broken);
  }

  Money net() {
    return outcome.net().orElseThrow();
  }

  Money cost() {
    return outcome.cost().orElseThrow();
  }

  /** Names of the broken house rules, each once. */
  List<String> brokenNames() {
    return broken.stream().map(BrokenHouseRule::name).distinct().toList();
  }

  /** How many different house rules are broken. */
  int brokenRules() {
    return brokenNames().size();
  }

  boolean meetsHouseRules() {
    return broken.isEmpty() && lacking == 0;
  }
}
