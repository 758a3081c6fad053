package org.swathbook.cli.report;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.Stream;
import org.swathbook.source.CsvText;

/**
 * A table for a spreadsheet: one header, every row as long as it, numbers as numbers and their
 * units in columns of their own.
 */
public record SheetTable(String name, List<String> columns, List<List<Cell>> rows) {

  /** What stands in a cell. */
  public sealed interface Cell {

    static Cell of(String words) {
      return new Words(words);
    }

    static Cell of(double value, int decimals) {
      return new Figure(new BigDecimal(value).setScale(decimals, RoundingMode.HALF_UP));
    }
  }

  /** Text, which is never a formula; empty for nothing. */
  public record Words(String words) implements Cell {}

  /** A number with the decimals that are shown. */
  public record Figure(BigDecimal value) implements Cell {}

  public SheetTable {
    columns = List.copyOf(columns);
    rows = rows.stream().map(List::copyOf).toList();
    int n = columns.size();
    if (rows.stream().anyMatch(r -> r.size() != n)) {
      throw new IllegalArgumentException("rows of " + name + " are not all of " + n + " cells");
    }
  }

  /**
   * CSV with a header; lines end in CR and LF, as RFC 4180 has it. No cell can run as a formula.
   */
  public String csv() {
    StringBuilder out = new StringBuilder();
    Stream.concat(Stream.of(columns), rows.stream().map(SheetTable::plain))
        .forEach(r -> out.append(CsvText.row(r)).append("\r\n"));
    return out.toString();
  }

  private static List<String> plain(List<Cell> row) {
    return row.stream()
        .map(c -> c instanceof Figure f ? f.value().toPlainString() : ((Words) c).words())
        .toList();
  }
}
