package org.swathbook.rules;

/** Judges a pass by the weather, water and sprayer of its day. */
public non-sealed interface DayRule extends Rule {
  void judge(DayFacts facts, Findings out);
}
