package org.swathbook.rules;

/** Judges a whole program by what its season brings. */
public non-sealed interface ProgramRule extends Rule {
  void judge(ProgramFacts facts, Findings out);
}
