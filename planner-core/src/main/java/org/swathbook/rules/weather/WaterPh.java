package org.swathbook.rules.weather;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.swathbook.catalog.Limit;
import org.swathbook.catalog.Stated;
import org.swathbook.measure.Numbers;
import org.swathbook.measure.Quantity;
import org.swathbook.rules.ActiveUse;
import org.swathbook.rules.DayFacts;
import org.swathbook.rules.Findings;
import org.swathbook.rules.Rule;
import org.swathbook.rules.Say;
import org.swathbook.rules.Text;

/** The pH of the water against the ranges in which the actives of a tank keep. */
final class WaterPh {
  /** Water beyond these is uncommon enough to look at a label (default, ours). */
  private static final double LEAST = 5;

  private static final double MOST = 8;

  private WaterPh() {}

  static void judge(Rule rule, DayFacts facts, OptionalDouble ph, Findings out) {
    List<String> unknown = new ArrayList<>();
    List<String> limited = new ArrayList<>();
    for (ActiveUse a : facts.pass().actives()) {
      Stated<Limit> range = a.terms().waterPh();
      if (range.isUnknown()) {
        add(unknown, a);
      } else if (range.find().isPresent()) {
        add(limited, a);
        if (ph.isPresent() && !range.find().get().allows(ph.getAsDouble())) {
          outside(rule, facts, a, range, ph.getAsDouble(), out);
        }
      }
    }
    if (ph.isEmpty() && !limited.isEmpty()) {
      note(
          rule,
          facts,
          "The pH of the water was not measured, and "
              + Say.list(limited)
              + (limited.size() == 1 ? " keeps" : " keep")
              + " only in some.",
          out);
    } else if (!unknown.isEmpty() && isFar(ph)) {
      note(
          rule,
          facts,
          "In what pH of water "
              + Say.list(unknown)
              + (unknown.size() == 1 ? " keeps" : " keep")
              + " is not known, and this water has "
              + number(ph.getAsDouble())
              + "; look at the label, and spray the tank soon after it is mixed.",
          out);
    }
  }

  private static void add(List<String> names, ActiveUse a) {
    if (!names.contains(a.ingredient().name())) {
      names.add(a.ingredient().name());
    }
  }

  private static boolean isFar(OptionalDouble ph) {
    return ph.isPresent()
        && (Quantity.exceeds(LEAST, ph.getAsDouble()) || Quantity.exceeds(ph.getAsDouble(), MOST));
  }

  private static void outside(
      Rule rule, DayFacts facts, ActiveUse a, Stated<Limit> range, double ph, Findings out) {
    Limit allowed = range.find().orElseThrow();
    out.warn(
        rule,
        facts.pass().about().withIngredient(a.ingredient().id()),
        () ->
            Text.of(
                    "Water of pH "
                        + number(ph)
                        + " is outside what "
                        + a.ingredient().name()
                        + " keeps in, "
                        + words(allowed)
                        + ".",
                    Say.source(range))
                .compared("pH " + number(ph), words(allowed))
                .cleared(
                    "other water, or a buffer that brings it there and that the labels take;"
                        + " else spray the tank as soon as it is mixed"));
  }

  private static String words(Limit l) {
    if (l.least().isPresent() && l.most().isPresent()) {
      return "pH " + number(l.least().getAsDouble()) + " to " + number(l.most().getAsDouble());
    }
    return l.most().isPresent()
        ? "pH " + (l.mostExcluded() ? "below " : "at most ") + number(l.most().getAsDouble())
        : "pH " + (l.leastExcluded() ? "above " : "at least ") + number(l.least().orElse(0));
  }

  private static void note(Rule rule, DayFacts facts, String message, Findings out) {
    out.note(rule, facts.pass().about(), () -> Text.of(message, Say.COMMON_PRACTICE));
  }

  private static String number(double ph) {
    return Numbers.decimals(ph, 2);
  }
}
