package org.swathbook.book.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.swathbook.measure.MeasureException;
import org.swathbook.source.Cell;
import org.swathbook.source.CsvRow;
import org.swathbook.source.MapReader;
import org.swathbook.source.Mark;
import org.swathbook.source.Problems;
import org.swathbook.source.TextParser;

/** A row of a table whose cells are read one by one; what cannot be read becomes a problem. */
final class Row {
  private final CsvRow row;
  private final Problems problems;
  private final int before;

  Row(CsvRow row, Problems problems) {
    this.row = row;
    this.problems = problems;
    this.before = problems.count();
  }

  String text(String column) {
    return row.text(column);
  }

  boolean isBlank(String column) {
    return row.text(column).isEmpty();
  }

  Mark mark(String column) {
    return row.mark(column);
  }

  int line() {
    return row.line();
  }

  void problem(String column, String what, String right) {
    problems.add(row.mark(column), what, right);
  }

  /** How many were found by whoever reads the table so far. */
  int problems() {
    return problems.count();
  }

  /** Whether all that was asked of the row so far could be read. */
  boolean isSound() {
    return problems.count() == before;
  }

  /** Empty when the cell is blank, or when it cannot be read, which is then a problem. */
  <T> Optional<T> find(String column, TextParser<T> parser, String example) {
    String text = row.text(column);
    if (text.isEmpty()) {
      return Optional.empty();
    }
    try {
      return Optional.of(parser.parse(text));
    } catch (MeasureException e) {
      problems.add(row.mark(column), e, example);
      return Optional.empty();
    }
  }

  /** As {@link #find}; a blank cell is a problem too. */
  <T> Optional<T> need(String column, TextParser<T> parser, String example) {
    if (isBlank(column)) {
      blank(column, example);
      return Optional.empty();
    }
    return find(column, parser, example);
  }

  private void blank(String column, String example) {
    problem(column, "'" + column + "' is blank", "write for example '" + example + "'");
  }

  String text(Column<?> column) {
    return column.text(row);
  }

  boolean isAsBefore(AlikeCells cells) {
    return cells.asBefore(row);
  }

  boolean isBlank(Column<?> column) {
    return column.text(row).isEmpty();
  }

  /** As {@link #find(String, TextParser, String)}. */
  <T> Optional<T> find(Column<T> column) {
    try {
      return column.find(row);
    } catch (MeasureException e) {
      problems.add(row.mark(column.name()), e, column.example());
      return Optional.empty();
    }
  }

  /** As {@link #need(String, TextParser, String)}. */
  <T> Optional<T> need(Column<T> column) {
    Optional<T> found = find(column);
    if (found.isEmpty() && isBlank(column)) {
      blank(column.name(), column.example());
    }
    return found;
  }

  /** The parts of a cell between semicolons, each read by the parser. */
  <T> List<T> all(String column, TextParser<T> parser, String example) {
    String text = row.text(column);
    if (text.isEmpty()) {
      return List.of();
    }
    List<T> out = new ArrayList<>();
    for (String part : text.split(";")) {
      if (!part.isBlank()) {
        MapReader.cell(new Cell(row.mark(column), part.strip()), parser, example, problems)
            .ifPresent(out::add);
      }
    }
    return out;
  }
}
