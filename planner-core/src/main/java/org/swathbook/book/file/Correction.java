package org.swathbook.book.file;

import java.util.Map;
import java.util.function.Function;
import org.swathbook.source.Mark;

/**
 * A row that is to stand in the place of another.
 *
 * @param target {@code ID/LINE} of the row that is wrong, or {@code ID} where the pass has one line
 * @param voids nothing is to stand in its place
 * @param changed cells by column that differ from the row corrected
 */
public record Correction(
    String target, boolean voids, Map<String, String> changed, Function<String, Mark> where) {

  public Correction {
    changed = Map.copyOf(changed);
  }
}
