package org.swathbook.rules;

/** Judges two actives in one tank, each under the use that it is made under. */
public non-sealed interface PairRule extends Rule {

  /**
   * @param about the pass; the rule adds the active it speaks of
   */
  void judge(ActiveUse first, ActiveUse second, About about, Findings out);
}
