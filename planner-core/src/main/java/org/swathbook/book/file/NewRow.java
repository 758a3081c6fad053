package org.swathbook.book.file;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.swathbook.source.Mark;

/**
 * A row that is to go into the journal.
 *
 * @param cells by column of {@code applications.csv}; what is missing is blank
 * @param where what came from where, to name the place of a cell that is wrong
 */
record NewRow(Map<String, String> cells, Function<String, Mark> where) {

  NewRow {
    // In order of the table's own columns, for those that a file gets anew.
    cells =
        ApplicationsReader.COLUMNS.stream()
            .filter(cells::containsKey)
            .collect(Collectors.toMap(c -> c, cells::get, (a, b) -> a, LinkedHashMap::new));
  }

  String text(String column) {
    return cells.getOrDefault(column, "");
  }

  String key() {
    return text("id") + "/" + text("line");
  }

  /** In the order of a header; a column of which nothing is known is blank. */
  List<String> inOrder(List<String> header) {
    return header.stream().map(this::text).toList();
  }
}
