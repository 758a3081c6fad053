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
 */
public record NewPass(Optional<String> id, int season, List<Line> lines) {

  /**
   * @param cells by column, without id and line
   * @param where what came from where, to name the place of a cell that is wrong
   */
  public record Line(Map<String, String> cells, Function<String, Mark> where) {

    public Line {
      cells = Map.copyOf(cells);
    }
  }

  public NewPass {
    lines = List.copyOf(lines);
  }

  /** All of whose lines came from one place. */
  public static NewPass of(
      Optional<String> id,
      int season,
      List<Map<String, String>> lines,
      Function<String, Mark> where) {
    return new NewPass(id, season, lines.stream().map(cells -> new Line(cells, where)).toList());
  }
}
