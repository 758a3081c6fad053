package org.swathbook.rules.mixture;

import java.util.ArrayList;
import java.util.List;
import org.swathbook.rules.Findings;
import org.swathbook.rules.PassFacts;
import org.swathbook.rules.PassRule;
import org.swathbook.rules.RuleCard;
import org.swathbook.rules.RuleId;
import org.swathbook.rules.Severity;
import org.swathbook.rules.Text;
import org.swathbook.tank.MixingOrder;

/** In which order a tank is filled. */
public final class MixingOrderRule implements PassRule {
  public static final RuleCard CARD =
      new RuleCard(
          new RuleId("mixing-order"),
          Severity.NOTE,
          "In which order do the products go into the tank?",
          "At the loading pad, with two or more products: the steps by formulation, with the places at"
              + " which the sources disagree. An order on a label goes before it. Silent in a plan.",
          List.of(
              "Oklahoma State University Extension PSS-2789",
              "SDSU Extension, Preparing Spray Solutions: Mixing Order"),
          "a granule and a concentrate at the loading pad",
          "one product by itself");

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void judge(PassFacts facts, Findings out) {
    if (facts.job().isEmpty() || facts.pass().mix().doses().size() < 2) {
      return;
    }
    out.note(this, facts.about(), () -> text(facts));
  }

  private static Text text(PassFacts facts) {
    List<String> steps = new ArrayList<>();
    List<String> disagreements = new ArrayList<>();
    for (MixingOrder.Step s : MixingOrder.of(facts.pass().mix())) {
      steps.add((steps.size() + 1) + " " + s.what());
      if (!s.disagreement().isEmpty() && !s.why().equals("carrier")) {
        disagreements.add(s.what() + ": " + s.disagreement());
      }
    }
    return Text.of(
        "A label's own order first, else: "
            + String.join(", ", steps)
            + "."
            + (disagreements.isEmpty()
                ? ""
                : " Sources differ on " + String.join("; ", disagreements) + "."),
        "extension guides on mixing order (Oklahoma State PSS-2789, SDSU, Utah State)");
  }
}
