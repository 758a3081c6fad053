package org.swathbook.rules.timing;

import java.util.List;
import org.swathbook.rules.Findings;
import org.swathbook.rules.RuleCard;
import org.swathbook.rules.RuleId;
import org.swathbook.rules.Say;
import org.swathbook.rules.SequenceFacts;
import org.swathbook.rules.SequenceRule;
import org.swathbook.rules.Severity;

/** Another crop planted in the same season into what the first one had. */
public final class ReplantCropRule implements SequenceRule {
  public static final RuleCard CARD =
      new RuleCard(
          new RuleId("replant-crop"),
          Severity.BLOCK,
          "May another crop be planted into what was sprayed?",
          "The journal has a spraying of this season on another crop than the field now has. Each of"
              + " its actives must be listed for the new crop before emergence or leave it enough"
              + " time; an ask where the catalog does not say. Caps and counts carry over by"
              + " themselves.",
          List.of(Say.COMMON_PRACTICE),
          "acetochlor emulsion on corn that failed, then soybean",
          "flumioxazin on soybean that failed, then soybean");

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void judge(SequenceFacts facts, Findings out) {
    JournalRotation.ofReplanting(this, facts.book(), facts.field(), out).judge(facts.ledger());
  }
}
