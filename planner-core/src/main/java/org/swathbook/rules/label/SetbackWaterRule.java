package org.swathbook.rules.label;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.swathbook.book.Field;
import org.swathbook.catalog.Setbacks;
import org.swathbook.catalog.Stated;
import org.swathbook.catalog.Terms;
import org.swathbook.measure.Numbers;
import org.swathbook.measure.Quantity;
import org.swathbook.measure.Unit;
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
          "Water of a kind is nearer to the field than the label's distance from that kind; runoff enters"
              + " no nearer than the nearest stream, inlet or lake. A field that says only how far the"
              + " nearest water is, and not of what kind, is held to the label's largest distance. Asks"
              + " for the distance where a label has one, for that of a kind that the field does not"
              + " name, and for labels of which it is not known.",
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
    if (!facts.field().waters().isEmpty()) {
      feet.forEach((kind, least) -> ofKind(facts, kind, least, setbacks, out));
      return;
    }
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
    double here = Unit.FOOT.fromSi(facts.field().waterDistanceM().getAsDouble());
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
                      Say.source(setbacks))
                  .compared(Numbers.decimals(here, 1) + " ft", Math.round(most) + " ft")
                  .cleared(
                      "leave a strip of "
                          + (long) Math.ceil(most - here)
                          + " ft toward the water, or take another active"));
    }
  }

  private void ofKind(
      UseFacts facts, String kind, double leastFt, Stated<Setbacks> setbacks, Findings out) {
    Optional<Double> here = nearestFt(facts.field(), kind);
    if (here.isEmpty()) {
      OptionalDouble any = facts.field().waterDistanceM();
      if (any.isEmpty() || Quantity.exceeds(leastFt, Unit.FOOT.fromSi(any.getAsDouble()))) {
        out.ask(
            this,
            facts.about(),
            () -> new Lookup("distance from the field to " + nearest(kind), Where.field("water")));
      }
      return;
    }
    if (Quantity.exceeds(leastFt, here.get())) {
      out.block(
          this,
          facts.about(),
          () ->
              Text.of(
                      "The label of "
                          + facts.ingredient().name()
                          + " keeps "
                          + Math.round(leastFt)
                          + " ft from "
                          + kind(kind)
                          + "; here it is "
                          + Numbers.decimals(here.get(), 1)
                          + " ft.",
                      Say.source(setbacks))
                  .compared(Numbers.decimals(here.get(), 1) + " ft", Math.round(leastFt) + " ft")
                  .cleared(
                      "leave a strip of "
                          + (long) Math.ceil(leastFt - here.get() - 1e-9)
                          + " ft toward it, or take another active"));
    }
  }

  /** Of the nearest of a kind, infinite where none is near; empty when the field does not say. */
  private static Optional<Double> nearestFt(Field field, String kind) {
    Optional<Double> own = ofKinds(field, Set.of(kind));
    return own.isPresent() || !kind.equals("runoff")
        ? own
        : ofKinds(field, Set.of("stream", "inlet", "lake")).filter(Double::isFinite);
  }

  private static Optional<Double> ofKinds(Field field, Set<String> kinds) {
    return field.waters().stream()
        .filter(w -> kinds.contains(w.kind()))
        .map(w -> w.feet().orElse(Double.POSITIVE_INFINITY))
        .min(Double::compare);
  }

  private static String nearest(String kind) {
    return kind.equals("runoff")
        ? "where its runoff enters a stream, an inlet or a lake"
        : "the nearest " + kind;
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
      case "lake" -> "lakes and reservoirs";
      case "stream" -> "streams";
      case "inlet" -> "tile inlets";
      case "sinkhole" -> "sinkholes";
      case "runoff" -> "where runoff enters water";
      default -> kind;
    };
  }
}
