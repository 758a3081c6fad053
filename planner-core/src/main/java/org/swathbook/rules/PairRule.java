package org.swathbook.rules;

import java.util.List;

/**
 * Judges two actives of different products in one tank, each under the use that it is made under.
 */
public non-sealed interface PairRule extends Rule {

  /**
   * @param about the pass; the rule adds the active it speaks of
   */
  void judge(ActiveUse first, ActiveUse second, About about, Findings out);

  /**
   * What is asked once of a tank, however many pairs it makes.
   *
   * @param about the pass
   */
  default void ask(List<ActiveUse> tank, About about, Findings out) {}
}
