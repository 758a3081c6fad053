package org.swathbook.check;

import java.util.Optional;
import org.swathbook.catalog.Use;
import org.swathbook.program.ActiveDose;
import org.swathbook.program.Dose;
import org.swathbook.program.Mix;
import org.swathbook.rules.ActiveUse;
import org.swathbook.rules.Findings;
import org.swathbook.rules.UseFacts;

/** What the use rules say of one active of a tank, by the use of its label that speaks. */
record UseVerdict(UseFacts facts, ActiveUse active, Findings findings) {

  /**
   * @param like how much is kept of what the rules find
   */
  static UseVerdict of(UseFacts facts, Findings like) {
    Optional<Use> use = UseJudge.choose(facts);
    return new UseVerdict(
        facts,
        new ActiveUse(facts.dose(), facts.active(), use),
        UseJudge.judge(facts, use, like.fresh()));
  }

  /**
   * Whether it is as true of the very dose in another tank of the same job: of what else is in a
   * tank the rules know no more than how much there is of the active and of its site.
   */
  @SuppressWarnings("ReferenceEquality")
  boolean holds(Dose dose, ActiveDose of, Mix mix) {
    return facts.dose() == dose
        && facts.active() == of
        && facts.mixLbPerAcre() == mix.lbPerAcre(of.ingredient())
        && facts.siteLbPerAcre() == mix.lbPerAcre(of.ingredient().site());
  }
}
