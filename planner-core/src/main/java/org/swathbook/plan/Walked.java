package org.swathbook.plan;

import java.util.List;
import org.swathbook.check.BrokenHouseRule;
import org.swathbook.measure.Money;
import org.swathbook.season.PassOutcome;
import org.swathbook.season.SeasonOutcome;

/**
 * A draft walked in full: its season and the house rules that it breaks.
 *
 * @param draft what is still to come; the outcome has the passes that are made before it
 * @param lacking how many actives that were asked for it does not use
 * @param cost of the passes on an acre, less what was sprayed already and has no price
 */
record Walked(
    Draft draft, SeasonOutcome outcome, List<BrokenHouseRule> broken, int lacking, Money cost) {

  Walked {
    broken = List.copyOf(broken);
  }

  /** To compare programs of one field; no return in itself where a price is missing. */
  Money net() {
    return outcome.net().orElseGet(() -> Money.ZERO.minus(outcome.loss()).minus(cost));
  }

  /** How many passes are made, and stand before those of the draft. */
  int made() {
    return outcome.passes().size() - draft.stops().size();
  }

  /** The passes of the draft. */
  List<PassOutcome> toCome() {
    return outcome.passes().subList(made(), outcome.passes().size());
  }

  boolean hasPasses() {
    return !outcome.passes().isEmpty();
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
