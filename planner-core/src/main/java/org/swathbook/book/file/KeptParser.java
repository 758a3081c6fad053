package org.swathbook.book.file;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.swathbook.book.Resistance.Kept;
import org.swathbook.measure.MeasureException;
import org.swathbook.source.Texts;

/**
 * Grammar of what stands behind the status of a resistance: the mechanism, {@code metabolic} or
 * {@code target-site}, and what the plants keep of the control, {@code keeps 40 %} or {@code keeps
 * 0 % leaf 50 % soil}. The figures count where both are written.
 */
final class KeptParser {
  private static final Pattern TAIL =
      Pattern.compile("(metabolic|target-site)?\\s*(?:keeps\\b\\s*(.*))?", Pattern.DOTALL);
  private static final Pattern BOTH =
      Pattern.compile("([^%]*%)\\s*leaf\\s*,?\\s*([^%]*%)\\s*soil", Pattern.DOTALL);
  private static final Pattern ONE = Pattern.compile("[^%]*%");
  private static final String RIGHT = "'metabolic', 'keeps 40 %' or 'keeps 0 % leaf 50 % soil'";

  private KeptParser() {}

  static Optional<Kept> parse(String text) {
    Matcher m = TAIL.matcher(text.strip().toLowerCase(Locale.ROOT));
    if (!m.matches()) {
      throw new MeasureException(
          "'" + text.strip() + "' does not say how much control is left; write " + RIGHT);
    }
    if (m.group(2) != null) {
      return Optional.of(figures(m.group(2).strip()));
    }
    // Target-site is what is taken for granted where nothing is said, site 14 in the soil included.
    return "metabolic".equals(m.group(1)) ? Optional.of(Kept.METABOLIC) : Optional.empty();
  }

  private static Kept figures(String text) {
    Matcher both = BOTH.matcher(text);
    double leaf;
    double soil;
    if (both.matches()) {
      leaf = Texts.share(both.group(1).strip());
      soil = Texts.share(both.group(2).strip());
    } else if (ONE.matcher(text).matches()) {
      leaf = Texts.share(text);
      soil = leaf;
    } else {
      throw new MeasureException(
          "'keeps " + text + "' does not say how much control is left; write " + RIGHT);
    }
    if (leaf == 1 && soil == 1) {
      throw new MeasureException(
          "a plant that keeps all of the control resists nothing; leave the entry out");
    }
    return new Kept(leaf, soil);
  }
}
