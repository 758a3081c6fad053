package org.swathbook.rules;

/** Judges one active of one dose, in one pass on one field. */
public non-sealed interface UseRule extends Rule {
  void judge(UseFacts facts, Findings out);

  /**
   * Whether it turns on how much of the active the tank brings, so that one product more may trip
   * it.
   */
  default boolean readsAmount() {
    return false;
  }
}
