package org.swathbook.rules.weather;

import org.swathbook.rules.ActiveUse;
import org.swathbook.rules.DayFacts;
import org.swathbook.rules.Findings;
import org.swathbook.rules.Lookup;
import org.swathbook.rules.Rule;
import org.swathbook.rules.Where;

/** Questions of the rules on a day. */
final class Unknowns {
  private Unknowns() {}

  /**
   * A limit of a label that the catalog does not have.
   *
   * @param key of the ingredient's file, {@code day.buffer}
   */
  static void ofLabel(
      Rule rule, DayFacts facts, ActiveUse a, String what, String key, Findings out) {
    out.ask(
        rule,
        facts.pass().about().withIngredient(a.ingredient().id()),
        () ->
            new Lookup(
                what + " of " + a.ingredient().name(),
                Where.ingredient(a.ingredient(), key, "application restrictions")));
  }

  /** A fact of the day that the job does not say. */
  static void ofJob(Rule rule, DayFacts facts, String what, Findings out) {
    out.ask(rule, facts.pass().about(), () -> new Lookup(what, "the job, or the field on the day"));
  }
}
