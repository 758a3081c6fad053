package org.swathbook.trials;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.swathbook.catalog.IngredientId;

/**
 * Reads the mixes of one step of a treatment, names already marked: alternatives between commas and
 * "or", partners between plus signs and slashes, rates behind the names.
 */
final class MixText {
  private static final Pattern ALTERNATIVES =
      Pattern.compile("\\s*(?:,\\s*or\\b|,|\\band/or\\b|\\bor\\b)\\s*");
  private static final Pattern RATES =
      Pattern.compile(
          "(\\d+(?:\\.\\d+)?(?:\\s*/\\s*\\d+(?:\\.\\d+)?)*)(?:\\s*or\\s*\\d+(?:\\.\\d+)?)?\\s*"
              + "(kg|g|lb|oz)?\\s*(?:ai|ae)?\\s*(?:/|per\\s+)(ha|ac|acre|A)\\b");

  /** "300 or 600 g": the trial sums up over both, and so does the middle of the two. */
  private static final Pattern TWO_RATES =
      Pattern.compile("(\\d+(?:\\.\\d+)?)\\s*or\\s*(\\d+(?:\\.\\d+)?)(?=\\s*(?:k?g|lb|oz)\\b)");

  private static final Pattern SHARE = Pattern.compile("(\\d+(?:\\.\\d+)?)\\s*x\\b");

  /** Words that say nothing of what was in the tank. */
  private static final Set<String> IDLE =
      Set.of(
          "alone",
          "at",
          "premix",
          "mixture",
          "each",
          "of",
          "the",
          "a",
          "an",
          "and",
          "with",
          "plus",
          "encapsulated",
          "label",
          "labeled",
          "rate",
          "rates",
          "full",
          "ai",
          "ae",
          "g",
          "kg",
          "lb",
          "ha",
          "ac",
          "acre",
          "x",
          "on",
          "plants",
          "tall",
          "cm",
          "in",
          "d",
          "days",
          "after",
          "for",
          "emerged",
          "residual",
          "post",
          "pre",
          "epost",
          "lpost",
          "preplant",
          "pp",
          "burndown",
          "same",
          "either",
          "formulations",
          "then",
          "one",
          "pass",
          "early",
          "late");

  private final ActiveNames names;
  private final Set<String> unknown = new TreeSet<>();

  MixText(ActiveNames names) {
    this.names = names;
  }

  /** Words that could not be placed, among them names of actives that the catalog lacks. */
  Set<String> unknown() {
    return unknown;
  }

  /** The alternative mixes of a step; empty when no active is named. */
  List<List<Spray.Part>> mixes(String step) {
    List<String> alternatives = new ArrayList<>();
    String bare = extras(step);
    for (String one : ALTERNATIVES.split(bare)) {
      if (!one.isBlank()) {
        alternatives.add(one.strip());
      }
    }
    List<List<Spray.Part>> out = new ArrayList<>();
    String shared = shared(alternatives);
    for (int i = 0; i < alternatives.size(); i++) {
      String one = alternatives.get(i);
      boolean adds = one.startsWith("+");
      String text =
          adds && !out.isEmpty()
              ? alternatives.get(i - 1) + " " + one
              : i > 0 && !one.contains("+") && !shared.isEmpty() ? shared + one : one;
      List<Spray.Part> parts = parts(text);
      if (!parts.isEmpty()) {
        out.add(parts);
      }
    }
    return out;
  }

  /** "A + B, C or D" is A with each of the three, unless another of them has a plus sign too. */
  private static String shared(List<String> alternatives) {
    if (alternatives.size() < 2 || !alternatives.get(0).contains("+")) {
      return "";
    }
    for (int i = 1; i < alternatives.size(); i++) {
      if (alternatives.get(i).contains("+") || alternatives.get(i).contains("/«")) {
        return "";
      }
    }
    String first = alternatives.get(0);
    return first.substring(0, first.lastIndexOf('+') + 1) + " ";
  }

  /**
   * A partner in brackets, "(+ glyphosate)", joins every mix; other brackets hold rates or words.
   */
  private static String extras(String step) {
    String out = step.replaceAll("\\(\\s*\\+\\s*(«\\d+»)[^)]*\\)", "+ $1 ");
    out = out.replaceAll("\\((\\d[^)]*(?:/ha|/ac)[^)]*)\\)", " $1 ");
    out = TWO_RATES.matcher(out).replaceAll(m -> middle(m.group(1), m.group(2)));
    return out.replaceAll("\\([^)]*\\)", " ");
  }

  private static String middle(String a, String b) {
    return String.valueOf((Double.parseDouble(a) + Double.parseDouble(b)) / 2);
  }

  private List<Spray.Part> parts(String text) {
    List<Spray.Part> out = new ArrayList<>();
    OptionalDouble share = share(text);
    for (String partner : text.split("\\+")) {
      List<IngredientId> actives = names.of(partner);
      List<Double> rates = rates(partner);
      for (int i = 0; i < actives.size(); i++) {
        boolean rated = rates.size() == actives.size();
        out.add(
            new Spray.Part(
                actives.get(i),
                rated ? OptionalDouble.of(rates.get(i)) : OptionalDouble.empty(),
                share.orElse(1)));
      }
    }
    note(text);
    return out;
  }

  private static OptionalDouble share(String text) {
    Matcher m = SHARE.matcher(text);
    return m.find() ? OptionalDouble.of(Double.parseDouble(m.group(1))) : OptionalDouble.empty();
  }

  /** Rates of a partner in kg/ha, one for each active between slashes. */
  static List<Double> rates(String text) {
    Matcher m = RATES.matcher(text);
    List<Double> out = new ArrayList<>();
    if (m.find() && m.group(2) != null) {
      for (String number : m.group(1).split("/")) {
        out.add(Double.parseDouble(number.strip()) * kgPerHa(m.group(2), m.group(3)));
      }
    }
    return out;
  }

  private static double kgPerHa(String weight, String area) {
    double kg =
        switch (weight) {
          case "kg" -> 1;
          case "g" -> 0.001;
          case "lb" -> 0.45359237;
          default -> 0.028349523125;
        };
    return area.equals("ha") ? kg : kg / 0.40468564224;
  }

  private void note(String text) {
    String words = RATES.matcher(ActiveNames.withoutMarks(text)).replaceAll(" ");
    for (String word : words.split("[^A-Za-z]+")) {
      String w = word.toLowerCase(Locale.ROOT);
      if (w.length() > 0 && !IDLE.contains(w)) {
        unknown.add(w);
      }
    }
  }
}
