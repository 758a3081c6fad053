package org.swathbook.book.file;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.swathbook.source.Mark;

/**
 * A pass that is to go into the journal, a line a product.
 *
 * @param id as the caller wants it; empty for the next of the season
 * @param season the season it was made for, by which ids are counted
 * @param lines cells by column, without id and line
 * @param where what came from where, to name the place of a cell that is wrong
 */
public record NewPass(
    Optional<String> id,
    int season,
    List<Map<String, String>> lines,
    Function<String, Mark> where) {

  public NewPass {
    lines = lines.stream().map(Map::copyOf).toList();
  }
}
