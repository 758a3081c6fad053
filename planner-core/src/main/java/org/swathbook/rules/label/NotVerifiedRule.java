package org.swathbook.rules.label;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.swathbook.rules.About;
import org.swathbook.rules.Ask;
import org.swathbook.rules.Finding;
import org.swathbook.rules.Findings;
import org.swathbook.rules.Lookup;
import org.swathbook.rules.PassFacts;
import org.swathbook.rules.PassRule;
import org.swathbook.rules.RuleCard;
import org.swathbook.rules.RuleId;
import org.swathbook.rules.Say;
import org.swathbook.rules.Severity;
import org.swathbook.rules.Text;

/** What matters for the verdict and is not known: one finding, a row for each thing. */
public final class NotVerifiedRule implements PassRule {
  public static final RuleCard CARD =
      new RuleCard(
          new RuleId("not-verified"),
          Severity.ASK,
          "What matters here and is not known?",
          "One finding a verdict with a row for every limit of a kind that the uses need and the"
              + " catalog does not state, for every blank fact of the field that a stated limit"
              + " needs, and one for the rules that are not written yet. It changes no block and no"
              + " warning; alone it makes the verdict 'unverified'. In a plan nothing is asked of"
              + " the day of spraying: a note says what to check then.",
          List.of(Say.COMMON_PRACTICE),
          "metribuzin with the soil pH of the field blank",
          "metribuzin whose pH limit is marked 'none'");

  @Override
  public RuleCard card() {
    return CARD;
  }

  /** In a plan: what is not written yet, and the note on what to check on the day. */
  @Override
  public void judge(PassFacts facts, Findings out) {
    out.ask(this, About.PROGRAM, () -> new Lookup("not checked yet: " + words(false), LABEL));
    if (facts.job().isPresent()) {
      return;
    }
    out.note(
        this,
        About.PROGRAM,
        () ->
            Text.of(
                "To check on the day of spraying, against every label in the tank: "
                    + words(true)
                    + ".",
                Say.COMMON_PRACTICE));
  }

  private static final String LABEL = "the label of every product in the tank";

  private static String words(boolean ofTheDay) {
    return RulesToCome.ALL.stream()
        .filter(r -> r.isOfTheDay() == ofTheDay)
        .map(RulesToCome.Planned::words)
        .collect(Collectors.joining(", "));
  }

  /** The one finding for all asks; empty when nothing is asked. */
  public static Optional<Finding> sumUp(List<Ask> asks) {
    List<String> rows = asks.stream().map(Ask::what).distinct().toList();
    if (rows.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Finding(
            CARD.id(),
            Severity.ASK,
            "Not verified ("
                + rows.size()
                + (rows.size() == 1 ? " thing" : " things")
                + " to look up): "
                + String.join("; ", rows)
                + ".",
            "",
            "",
            Say.COMMON_PRACTICE,
            "look them up on the current label and fill them in",
            About.PROGRAM));
  }
}
