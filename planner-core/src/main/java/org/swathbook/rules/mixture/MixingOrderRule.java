package org.swathbook.rules.mixture;

import java.util.ArrayList;
import java.util.List;
import org.swathbook.program.SprayJob;
import org.swathbook.rules.Findings;
import org.swathbook.rules.PassFacts;
import org.swathbook.rules.PassRule;
import org.swathbook.rules.RuleCard;
import org.swathbook.rules.RuleId;
import org.swathbook.rules.Say;
import org.swathbook.rules.Severity;
import org.swathbook.rules.Text;
import org.swathbook.tank.MixingOrder;

/** In which order a tank is filled. */
public final class MixingOrderRule implements PassRule {
  public static final RuleCard CARD =
      new RuleCard(
          new RuleId("mixing-order"),
          Severity.WARN,
          "In which order do the products go into the tank?",
          "At the loading pad, with two or more products: the steps by formulation, as most of"
              + " five guides have it, and which of them have it otherwise, with what the labels in"
              + " the tank say of their own place before it. A warning where a label has two things"
              + " the other way round than most guides, or where the labels leave no order that meets"
              + " all of them. Silent in a plan.",
          List.of(
              "Oklahoma State University Extension PSS-2789",
              "SDSU Extension, Preparing Spray Solutions: Mixing Order",
              "North Dakota Weed Control Guide 2021, second-hand",
              "Utah State University Extension 2012, Using a Jar Test",
              "Missouri DOT Engineering Policy Guide 821.12"),
          "capsules whose label puts emulsions before them; two labels that each want to be first",
          "a granule and a concentrate at the loading pad; capsules whose label puts them before"
              + " emulsions, as most guides do");

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
    MixingOrder order = MixingOrder.of(facts.pass().mix(), job.carrier().liquid());
    out.note(this, facts.about(), () -> text(order));
    if (!order.againstGuides().isEmpty()) {
      out.warn(
          this,
          facts.about(),
          () ->
              Text.of(
                      Say.start(String.join("; ", order.againstGuides()))
                          + "; most guides on mixing order have it the other way round.",
                      "the labels, against extension guides on mixing order")
                  .compared("the label's order", "the guides' order")
                  .cleared("the label's order, after a jar test where no label forbids one"));
    }
    if (!order.circles().isEmpty()) {
      out.warn(
          this,
          facts.about(),
          () ->
              Text.of(
                      "No order meets all labels of this tank: "
                          + String.join("; ", order.circles())
                          + ".",
                      "the labels")
                  .compared("labels that contradict each other", "one order for all")
                  .cleared("two passes, or a word with the makers of the products"));
    }
  }

  private static Text text(MixingOrder order) {
    List<String> steps = new ArrayList<>();
    for (String step : order.steps()) {
      steps.add((steps.size() + 1) + " " + step);
    }
    return Text.of(
        "A label's own order first, else: "
            + String.join(", ", steps)
            + "."
            + (order.byLabel().isEmpty()
                ? ""
                : " " + Say.start(String.join("; ", order.byLabel())) + ".")
            + (order.disagreements().isEmpty()
                ? ""
                : " Guides differ: " + String.join("; ", order.disagreements()) + "."),
        "extension guides on mixing order (Oklahoma State PSS-2789, SDSU, Utah State)");
  }
}
