package org.swathbook.plan.draft;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.swathbook.check.BrokenHouseRule;
import org.swathbook.measure.Money;
import org.swathbook.season.outcome.PassOutcome;
import org.swathbook.season.outcome.SeasonSums;

/**
 * A draft walked in full: what comes of it and the house rules that it breaks. Of one field a draft
 * walks to one outcome, so two are equal when their drafts are. What programs are sorted by is
 * computed once.
 */
public final class Walked {
  private final Draft draft;
  private final SeasonSums outcome;
  private final List<BrokenHouseRule> broken;
  private final int lacking;
  private final Money cost;
  private final Money net;
  private final List<String> brokenNames;
  private final double deficit;
  private @Nullable String key;

  /**
   * @param draft what is still to come; the outcome has the passes that are made before it
   * @param lacking how many actives that were asked for it does not use
   * @param cost of the passes on an acre, less what was sprayed already and has no price
   */
  Walked(Draft draft, SeasonSums outcome, List<BrokenHouseRule> broken, int lacking, Money cost) {
    this.draft = draft;
    this.outcome = outcome;
    this.broken = List.copyOf(broken);
    this.lacking = lacking;
    this.cost = cost;
    this.net = outcome.net().orElseGet(() -> Money.ZERO.minus(outcome.loss()).minus(cost));
    this.brokenNames = broken.stream().map(BrokenHouseRule::name).distinct().toList();
    this.deficit = HouseDeficit.of(broken);
  }

  public Draft draft() {
    return draft;
  }

  public SeasonSums outcome() {
    return outcome;
  }

  public List<BrokenHouseRule> broken() {
    return broken;
  }

  public int lacking() {
    return lacking;
  }

  public Money cost() {
    return cost;
  }

  /** To compare programs of one field; no return in itself where a price is missing. */
  public Money net() {
    return net;
  }

  /** How far it is from the house rules, 0 when it meets them. */
  public double deficit() {
    return deficit;
  }

  /** The place of the draft in a fixed order. */
  public String key() {
    String now = key;
    if (now == null) {
      now = draft.key();
      key = now;
    }
    return now;
  }

  /** How many passes are made, and stand before those of the draft. */
  public int made() {
    return outcome.passes().size() - draft.stops().size();
  }

  /** The passes of the draft. */
  public List<PassOutcome> toCome() {
    return outcome.passes().subList(made(), outcome.passes().size());
  }

  public boolean hasPasses() {
    return !outcome.passes().isEmpty();
  }

  /** Names of the broken house rules, each once. */
  public List<String> brokenNames() {
    return brokenNames;
  }

  /** How many different house rules are broken. */
  public int brokenRules() {
    return brokenNames.size();
  }

  public boolean meetsHouseRules() {
    return broken.isEmpty() && lacking == 0;
  }

  @Override
  public boolean equals(@Nullable Object o) {
    return o instanceof Walked w && draft.equals(w.draft);
  }

  @Override
  public int hashCode() {
    return draft.hashCode();
  }

  @Override
  public String toString() {
    return draft + " breaks " + brokenNames;
  }
}
