package org.swathbook.rules;

/** Judges one active of one dose, in one pass on one field. */
public non-sealed interface UseRule extends Rule {
  void judge(UseFacts facts, Findings out);
}
