package org.swathbook.rules.mixture;

import java.util.ArrayList;
import java.util.List;
import org.swathbook.program.SprayJob;
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
          "At the loading pad, with two or more products: the steps by formulation, as most of"
              + " five guides have it, and which of them have it otherwise. An order on a label goes"
              + " before it. Silent in a plan.",
          List.of(
              "Oklahoma State University Extension PSS-2789",
              "SDSU Extension, Preparing Spray Solutions: Mixing Order",
              "North Dakota Weed Control Guide 2021, second-hand",
              "Utah State University Extension 2012, Using a Jar Test",
              "Missouri DOT Engineering Policy Guide 821.12"),
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
    SprayJob job = facts.job().get();
    out.note(this, facts.about(), () -> text(facts, job));
  }

  private static Text text(PassFacts facts, SprayJob job) {
    MixingOrder order = MixingOrder.of(facts.pass().mix(), job.carrier().liquid());
    List<String> steps = new ArrayList<>();
    for (String step : order.steps()) {
      steps.add((steps.size() + 1) + " " + step);
    }
    return Text.of(
        "A label's own order first, else: "
            + String.join(", ", steps)
            + "."
            + (order.disagreements().isEmpty()
                ? ""
                : " Guides differ: " + String.join("; ", order.disagreements()) + "."),
        "extension guides on mixing order (Oklahoma State PSS-2789, SDSU, Utah State)");
  }
}
