package org.swathbook.rules;

/** Judges one pass against all that the field has had before it. */
public non-sealed interface SequenceRule extends Rule {
  void judge(SequenceFacts facts, Findings out);
}
