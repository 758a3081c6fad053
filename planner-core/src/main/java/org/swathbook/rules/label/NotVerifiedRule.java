package org.swathbook.rules.label;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.swathbook.rules.About;
import org.swathbook.rules.Ask;
import org.swathbook.rules.DayRule;
import org.swathbook.rules.Finding;
import org.swathbook.rules.Findings;
import org.swathbook.rules.PassFacts;
import org.swathbook.rules.PassRule;
import org.swathbook.rules.RuleBook;
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
              + " needs. It changes no block and no"
              + " warning; alone it makes the verdict 'unverified'. In a plan nothing is asked of"
              + " the day of spraying: a note says what to check then.",
          List.of(Say.COMMON_PRACTICE),
          "metribuzin with the soil pH of the field blank",
          "metribuzin whose pH limit is marked 'none'");

  @Override
  public RuleCard card() {
    return CARD;
  }

  /** In a plan: the note on what to check on the day. */
  @Override
  public void judge(PassFacts facts, Findings out) {
    if (facts.job().isEmpty()) {
      out.note(
          this,
          About.PROGRAM,
          () ->
              Text.of(
                  "To check on the day of spraying, with the tank as it is loaded: "
                      + ofTheDay()
                      + ", residue in the tank, nozzles and insecticides of the season.",
                  Say.COMMON_PRACTICE));
    }
  }

  private static String ofTheDay() {
    return RuleBook.ofScope(DayRule.class).stream()
        .map(r -> r.id().value().replace('-', ' '))
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
