package org.swathbook.rules.label;

import java.util.List;
import org.swathbook.rules.Ask;
import org.swathbook.rules.Findings;
import org.swathbook.rules.Lookup;
import org.swathbook.rules.RuleCard;
import org.swathbook.rules.RuleId;
import org.swathbook.rules.Say;
import org.swathbook.rules.Severity;
import org.swathbook.rules.UseFacts;
import org.swathbook.rules.UseRule;

/** What a label asks in words that no limit of the catalog holds: whether it is met is asked. */
public final class LabelConditionRule implements UseRule {
  public static final RuleCard CARD =
      new RuleCard(
          new RuleId("label-condition"),
          Severity.ASK,
          "Does the label ask anything of this use that no other rule can judge?",
          "The use has a condition in words (seed depth, rain in a year, ripeness, counties). It is"
              + " asked in every verdict, since nothing in the book tells whether it is met.",
          List.of("the labels' own conditions", Say.COMMON_PRACTICE),
          "linuron before emergence on soybean, whose seed must lie at least 1.75 in deep",
          "the same where the use has no condition in words");

  /** Whether a question is one of this rule. */
  public static boolean isOf(Ask ask) {
    return ask.rule().equals(CARD.id());
  }

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void judge(UseFacts facts, Findings out) {
    facts
        .chosen()
        .filter(use -> !use.condition().isEmpty())
        .ifPresent(
            use ->
                out.ask(
                    this,
                    facts.about(),
                    () ->
                        new Lookup(
                            "the label of "
                                + facts.ingredient().name()
                                + " also says (met here?): "
                                + use.condition(),
                            "label, directions for the crop; "
                                + "condition of the use in catalog/ingredients/"
                                + facts.ingredient().id()
                                + ".yaml")));
  }
}
