package org.swathbook.rules;

import org.swathbook.program.Dose;

/** Judges two doses in one tank. */
public non-sealed interface PairRule extends Rule {
  void judge(Dose first, Dose second, PassFacts facts, Findings out);
}
