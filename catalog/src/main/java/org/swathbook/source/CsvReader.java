package org.swathbook.source;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;

/**
 * Reads tables as spreadsheets write them: byte-order mark, either line end, quotes with line
 * breaks and doubled quotes in them, blank lines, columns in any order. Not taken: columns that
 * nobody knows, rows that do not fit the header, and the total under a column.
 */
public final class CsvReader {
  private static final Set<String> TOTALS =
      Set.of("total", "totals", "grand total", "subtotal", "sum", "total:", "totals:", "sum:");

  private static final String TOTAL_STARTS = "tTgGsS";

  /**
   * The whole table. Problems are added; rows that fit the header are there all the same, so that
   * their contents can be judged in the same run. A table without one of its required columns gives
   * no rows.
   *
   * @param file name for the marks
   */
  public CsvTable read(String file, byte[] content, CsvColumns columns, Problems problems) {
    List<CsvRow> rows = new ArrayList<>();
    Optional<CsvHeader> header;
    try {
      header = stream(file, new ByteArrayInputStream(content), columns, problems, rows::add);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return new CsvTable(header.orElseGet(() -> new CsvHeader(Mark.startOf(file), List.of())), rows);
  }

  /**
   * Row by row, for tables too long to hold; closes the stream.
   *
   * @return the header, empty when the file has none
   */
  public Optional<CsvHeader> stream(
      String file,
      InputStream content,
      CsvColumns columns,
      Problems problems,
      Consumer<CsvRow> sink)
      throws IOException {
    return stream(file, content, CsvStart.FIRST_LINE, columns, problems, sink);
  }

  /** The same for a table that does not begin with a header in the first line. */
  public Optional<CsvHeader> stream(
      String file,
      InputStream content,
      CsvStart start,
      CsvColumns columns,
      Problems problems,
      Consumer<CsvRow> sink)
      throws IOException {
    try (content) {
      CsvCells cells = new CsvCells(file, begin(file, content, start));
      Table table = new Table(file, cells, columns, problems, sink);
      table.read();
      return table.header();
    } catch (ProblemsException e) {
      problems.addAll(e.problems());
      return Optional.empty();
    }
  }

  private static Utf8Bytes begin(String file, InputStream content, CsvStart start)
      throws IOException {
    Utf8Bytes text = new Utf8Bytes(file, content);
    if (start.header().isPresent()) {
      text.begin(start.header().get(), start.linesBefore());
      return text;
    }
    for (int i = 0; i < start.linesBefore() && text.skipLine(); i++) {
      // passed over
    }
    return text;
  }

  /** One pass over the cells of one table. */
  private static final class Table {
    private final String file;
    private final CsvCells cells;
    private final CsvColumns columns;
    private final Problems problems;
    private final Consumer<CsvRow> sink;
    private Optional<CsvHeader> header = Optional.empty();
    private boolean complete;

    Table(
        String file, CsvCells cells, CsvColumns columns, Problems problems, Consumer<CsvRow> sink) {
      this.file = file;
      this.cells = cells;
      this.columns = columns;
      this.problems = problems;
      this.sink = sink;
    }

    Optional<CsvHeader> header() {
      return header;
    }

    void read() throws IOException {
      while (cells.next()) {
        endRow();
      }
      if (cells.isFaulty()) {
        problems.add(
            cells.fault(),
            "the quotes of this cell do not close before the next comma",
            "put the whole cell in one pair of quotes and write a quote in it twice");
      } else if (header.isEmpty()) {
        problems.add(Mark.startOf(file), "the table is empty", "start it with " + headerLine());
      }
    }

    private void endRow() {
      int used = cells.count();
      while (used > 0 && cells.isEmpty(used - 1)) {
        used--;
      }
      if (used == 0) {
        return;
      }
      if (header.isEmpty()) {
        readHeader(used);
      } else {
        readRow(header.get(), used);
      }
    }

    private void readHeader(int used) {
      List<String> names = List.of(cells.texts(used));
      Mark start = cells.mark(0);
      header = Optional.of(new CsvHeader(start, names));
      if (used == 1 && (names.get(0).contains(";") || names.get(0).contains("\t"))) {
        throw ProblemsException.of(
            start,
            "the columns are not separated by commas",
            "save the table as comma-separated values (CSV)");
      }
      for (int i = 0; i < used; i++) {
        String name = names.get(i);
        if (name.isEmpty()) {
          problems.add(cells.mark(i), "a column without a name", "name it or take it out");
        } else if (!columns.allows(name)) {
          problems.add(
              cells.mark(i),
              "the column '" + name + "' is not known",
              Nearest.hint(name, columns.all()));
        } else if (names.indexOf(name) < i) {
          problems.add(
              cells.mark(i), "the column '" + name + "' stands here again", "keep one of the two");
        }
      }
      complete = columns.missing(names).isEmpty();
      for (String missing : columns.missing(names)) {
        problems.add(
            start,
            "the column '" + missing + "' is missing",
            "start the table with " + headerLine());
      }
    }

    private void readRow(CsvHeader known, int used) {
      int wanted = known.names().size();
      if (isTotal()) {
        problems.add(
            cells.mark(0), "this is a row of totals, not of data", "take it out of the table");
      } else if (used > wanted) {
        problems.add(
            cells.mark(wanted),
            "the row has " + used + " cells, the header names " + wanted,
            "take the cells too many out, or put a text with a comma in quotes");
      } else if (cells.count() < wanted) {
        problems.add(
            cells.mark(0),
            "the row has " + cells.count() + " cells, the header names " + wanted,
            "write every comma, also before empty cells");
      } else if (complete) {
        int line = cells.plainLine();
        sink.accept(
            line > 0
                ? CsvRow.plain(known, cells.texts(wanted), line)
                : CsvRow.of(known, cells.texts(wanted), cells.lines(), cells.columns()));
      }
    }

    private boolean isTotal() {
      int first = 0;
      while (cells.isEmpty(first)) {
        first++;
      }
      // Asked of every row of a long table: the first letter tells nearly all of them.
      return TOTAL_STARTS.indexOf(cells.first(first)) >= 0
          && TOTALS.contains(cells.text(first).toLowerCase(Locale.ROOT));
    }

    private String headerLine() {
      return "'" + String.join(",", columns.required()) + "'";
    }
  }
}
