package org.swathbook.rules;

/** One objection that a label or an agronomist may have. Six scopes, by the facts that it needs. */
public sealed interface Rule
    permits UseRule, PairRule, PassRule, DayRule, SequenceRule, ProgramRule {

  RuleCard card();

  default RuleId id() {
    return card().id();
  }

  /** The word by which its scope goes: {@code use}, {@code pass}, {@code program}. */
  default String scope() {
    if (this instanceof UseRule) {
      return "use";
    } else if (this instanceof PairRule) {
      return "pair";
    } else if (this instanceof DayRule) {
      // One that also has a word for passes in a plan is a rule of the day all the same.
      return "day";
    } else if (this instanceof PassRule) {
      return "pass";
    } else if (this instanceof SequenceRule) {
      return "sequence";
    }
    return "program";
  }
}
