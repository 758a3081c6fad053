package org.swathbook.cli.html;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** How the columns of a table stand: figures to the right, so that their digits lie in line. */
public final class Columns {
  /** Figures with or without a unit, in pairs or lists too; dates and rates are none. */
  private static final Pattern FIGURES =
      Pattern.compile(
          "[-+]?\\$?\\d[\\d,.]*( (%|gal|lb|oz|in|acres|\\$/acre))?"
              + "( \\([-\\d.,]+\\)( %)?|( [/] [\\d.,]+)+|(, \\d+)+( %)?|: [\\d.,]+| to [-\\d.,]+)?");

  /** Numbers that are names. */
  private static final Set<String> NAMES =
      Set.of("season", "Year", "applied", "effective", "site", "sites", "no.", "code");

  private static final int WORD = 10;
  private static final int SHORT = 14;

  private Columns() {}

  /**
   * @return for each column a class of the style sheet: {@code r} for figures, {@code k} for cells
   *     to keep in one line, else null
   */
  public static List<@Nullable String> of(List<String> names, List<List<Marked>> rows) {
    List<@Nullable String> out = new ArrayList<>();
    for (int c = 0; c < names.size(); c++) {
      out.add(css(names.get(c), rows, c));
    }
    return out;
  }

  private static @Nullable String css(String name, List<List<Marked>> rows, int column) {
    List<String> cells =
        rows.stream()
            .map(r -> r.get(column).words().strip())
            .filter(w -> !w.isEmpty() && !w.equals("-"))
            .toList();
    if (cells.isEmpty()) {
      return null;
    }
    long figures = cells.stream().filter(c -> FIGURES.matcher(c).matches()).count();
    boolean restIsShort =
        cells.stream().allMatch(c -> FIGURES.matcher(c).matches() || c.length() <= WORD);
    if (!NAMES.contains(name) && restIsShort && 4 * figures >= 3L * cells.size()) {
      return "r";
    }
    return cells.stream().allMatch(c -> c.length() <= SHORT) ? "k" : null;
  }
}
