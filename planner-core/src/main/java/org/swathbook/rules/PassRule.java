package org.swathbook.rules;

/** Judges a whole pass with the weeds that it meets. */
public non-sealed interface PassRule extends Rule {
  void judge(PassFacts facts, Findings out);
}
