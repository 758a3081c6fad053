package org.swathbook.trials;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads when a step of a treatment was made from the words of a row. */
final class WhenText {
  private static final Pattern DAYS_AFTER_PLANTING =
      Pattern.compile(
          "(\\d+)(?:\\s*(?:-|–|to)\\s*(\\d+))?\\s*(?:d|days)?\\s*(?:DAP|after planting)");
  private static final Pattern HEIGHT =
      Pattern.compile(
          "(\\d+(?:\\.\\d+)?)(?:\\s*(?:-|–|to)\\s*(\\d+(?:\\.\\d+)?))?\\s*[- ]?(cm|in)\\b");

  private WhenText() {}

  /** The point that a text names; empty when it names none. */
  static Optional<Spray.When> of(String text) {
    String t = text.toLowerCase(Locale.ROOT);
    Spray.Point point = null;
    if (t.matches(".*\\b(pp|preplant|burndown|before planting)\\b.*")) {
      point = Spray.Point.PREPLANT;
    } else if (t.matches(".*\\b(epost|early[- ]post)\\b.*")) {
      point = Spray.Point.EARLY_POST;
    } else if (t.matches(".*\\b(lpost|late[- ]post|layby|lay-by)\\b.*")) {
      point = Spray.Point.LATE_POST;
    } else if (t.matches(".*\\bpost\\b.*")) {
      point = Spray.Point.POST;
    } else if (t.matches(".*\\bpre\\b.*") || t.contains("at planting")) {
      point = Spray.Point.PRE;
    } else if (t.contains("respray")) {
      point = Spray.Point.RESPRAY;
    }
    if (point == null) {
      return Optional.empty();
    }
    Spray.When when = Spray.When.at(point);
    if (point != Spray.Point.PRE && point != Spray.Point.PREPLANT) {
      OptionalDouble day = middle(DAYS_AFTER_PLANTING.matcher(text));
      if (day.isPresent()) {
        when = when.day(day.getAsDouble());
      }
      OptionalDouble height = heightCm(text);
      if (height.isPresent()) {
        when = when.height(height.getAsDouble());
      }
    }
    return Optional.of(when);
  }

  /** A height of plants in cm that a text names. */
  static OptionalDouble heightCm(String text) {
    Matcher m = HEIGHT.matcher(text);
    if (!m.find()) {
      return OptionalDouble.empty();
    }
    double low = Double.parseDouble(m.group(1));
    double high = m.group(2) == null ? low : Double.parseDouble(m.group(2));
    return OptionalDouble.of((low + high) / 2 * (m.group(3).equals("in") ? 2.54 : 1));
  }

  private static OptionalDouble middle(Matcher m) {
    if (!m.find()) {
      return OptionalDouble.empty();
    }
    double low = Double.parseDouble(m.group(1));
    return OptionalDouble.of(m.group(2) == null ? low : (low + Double.parseDouble(m.group(2))) / 2);
  }
}
