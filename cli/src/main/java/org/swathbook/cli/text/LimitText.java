package org.swathbook.cli.text;

import java.util.List;
import java.util.Optional;
import org.swathbook.cli.report.PlannedField;
import org.swathbook.plan.LiftedLimit;
import org.swathbook.plan.Refusal;
import org.swathbook.plan.WhyNot;

/**
 * Limits of a plan in words, named as broken house rules are: the key, the limit, the value met.
 */
final class LimitText {
  private LimitText() {}

  /**
   * {@code --budget: $84.20 an acre when every pass is made, at most $60.00 asked; then net 528.21,
   * cost 84.20, loss 27.73 $/acre, breaks no house rule}.
   */
  static String of(LiftedLimit l) {
    return l.key()
        + ": "
        + l.met()
        + ", "
        + l.limit()
        + (l.best() ? "; then " : "; enough for ")
        + ProgramText.money(l.program().outcome())
        + ", "
        + ProgramText.broken(l.program().judgement());
  }

  /** What lifting a limit of a plan that is not recommended would bring, a head before it. */
  static List<String> head(Refusal refusal, boolean noProgram, List<LiftedLimit> limits) {
    if (limits.isEmpty()) {
      return refusal.isOfAsked()
          ? List.of("No single limit was found without which there would be a program.")
          : List.of();
    }
    return List.of(
        noProgram
            ? "Without one of these limits alone there would be a program:"
            : "Without one of these limits of the plan alone there would be a better program:");
  }

  /** The head over the limits that keep an active away. */
  static Optional<String> headOfActive(PlannedField plan, WhyNot why) {
    boolean fieldIsRefused =
        plan.isRefused() && plan.refusal().filter(r -> !r.isOfAsked()).isPresent();
    if (fieldIsRefused) {
      return Optional.of("Nothing can be planned for this field, whatever is asked: see above.");
    }
    if (why.limits().isEmpty()) {
      return why.with().isEmpty() && why.blocks().isEmpty() && why.leftOut().isEmpty()
          ? Optional.of("No single limit was found without which there would be one.")
          : Optional.empty();
    }
    return Optional.of(
        why.with().isPresent()
            ? "Limits of the plan stand against it: without one of them alone the first program"
                + " would use it."
            : "Without one of these limits alone there would be a program with it:");
  }
}
