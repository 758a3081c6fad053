package org.swathbook.rules.label;

import java.util.List;
import java.util.Map;
import org.swathbook.catalog.Setbacks;
import org.swathbook.catalog.Stated;
import org.swathbook.catalog.Terms;
import org.swathbook.measure.Numbers;
import org.swathbook.measure.Quantity;
import org.swathbook.rules.Findings;
import org.swathbook.rules.Lookup;
import org.swathbook.rules.RuleCard;
import org.swathbook.rules.RuleId;
import org.swathbook.rules.Say;
import org.swathbook.rules.Severity;
import org.swathbook.rules.Text;
import org.swathbook.rules.UseFacts;
import org.swathbook.rules.UseRule;
import org.swathbook.rules.Where;

/** Distance from wells, inlets, streams and lakes. */
public final class SetbackWaterRule implements UseRule {
  public static final RuleCard CARD =
      new RuleCard(
          new RuleId("setback-water"),
          Severity.BLOCK,
          "Is water closer than the label allows?",
          "The water nearest to the field is nearer than the largest distance that the label names: what"
              + " kind of water it is, the field does not say. Asks for the distance where a label has"
              + " one, and for labels of which it is not known.",
          List.of("the labels' own distances"),
          "atrazine on a field with a river at 90 ft, where 200 ft are kept from lakes and 66 ft from"
              + " where runoff enters",
          "atrazine with no water within 250 ft");

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void judge(UseFacts facts, Findings out) {
    Terms terms = facts.chosen().map(u -> u.terms()).orElseGet(() -> facts.ingredient().terms());
    Stated<Setbacks> setbacks = terms.setbacks();
    if (setbacks.isUnknown()) {
      out.ask(
          this,
          facts.about(),
          () ->
              new Lookup(
                  "distances that the label of " + facts.ingredient().name() + " keeps from water",
                  Where.ingredient(facts.ingredient(), "setback", "environmental hazards")));
      return;
    }
    if (setbacks.find().isEmpty() || setbacks.find().get().feet().isEmpty()) {
      return;
    }
    Map<String, Double> feet = setbacks.find().get().feet();
    double most = feet.values().stream().mapToDouble(Double::doubleValue).max().orElseThrow();
    if (facts.field().waterDistanceM().isEmpty()) {
      out.ask(
          this,
          facts.about(),
          () ->
              new Lookup(
                  "distance from the field to the nearest well, inlet, stream or lake",
                  Where.field("waterDistance")));
      return;
    }
    double here = facts.field().waterDistanceM().getAsDouble() / 0.3048;
    if (Quantity.exceeds(most, here)) {
      out.block(
          this,
          facts.about(),
          () ->
              Text.of(
                      "The label of "
                          + facts.ingredient().name()
                          + " keeps "
                          + words(feet)
                          + "; water lies "
                          + Numbers.decimals(here, 1)
                          + " ft from this field.",
                      setbacks.findSource().map(Object::toString).orElse(Say.COMMON_PRACTICE))
                  .compared(Numbers.decimals(here, 1) + " ft", Math.round(most) + " ft")
                  .cleared(
                      "leave a strip of "
                          + (long) Math.ceil(most - here)
                          + " ft toward the water, or take another active"));
    }
  }

  private static String words(Map<String, Double> feet) {
    return Say.list(
        feet.entrySet().stream()
            .map(e -> Math.round(e.getValue()) + " ft from " + kind(e.getKey()))
            .toList());
  }

  private static String kind(String kind) {
    return switch (kind) {
      case "well" -> "wells";
      case "lake" -> "lakes";
      case "runoff" -> "where runoff enters water";
      default -> kind;
    };
  }
}
