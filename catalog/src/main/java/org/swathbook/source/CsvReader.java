package org.swathbook.source;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.dataformat.csv.CsvFactory;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import java.io.BufferedReader;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PushbackReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Arrays;
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
  private static final int MOST_COLUMNS = 500;
  private static final int MOST_CELL = 100_000;
  private static final Set<String> TOTALS =
      Set.of("total", "totals", "grand total", "subtotal", "sum", "total:", "totals:", "sum:");

  private final CsvFactory factory =
      CsvFactory.builder()
          .enable(CsvParser.Feature.WRAP_AS_ARRAY)
          .enable(CsvParser.Feature.TRIM_SPACES)
          .build();

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
    try (Reader text = begin(new Utf8Reader(file, content), start);
        CsvParser parser = factory.createParser(text)) {
      Table table = new Table(file, start.shift(), columns, problems, sink);
      try {
        table.read(parser);
      } catch (JsonProcessingException e) {
        table.fault(parser);
      }
      return table.header();
    } catch (ProblemsException e) {
      problems.addAll(e.problems());
      return Optional.empty();
    }
  }

  private static Reader begin(Reader text, CsvStart start) throws IOException {
    if (start.header().isPresent()) {
      String header = start.header().get() + "\n";
      PushbackReader out = new PushbackReader(text, header.length());
      out.unread(header.toCharArray());
      return out;
    }
    if (start.linesBefore() == 0) {
      return text;
    }
    BufferedReader out = new BufferedReader(text);
    for (int i = 0; i < start.linesBefore() && out.readLine() != null; i++) {
      // passed over
    }
    return out;
  }

  /** One pass over the cells of one table. */
  private static final class Table {
    private final String file;
    private final int lineShift;
    private final CsvColumns columns;
    private final Problems problems;
    private final Consumer<CsvRow> sink;
    private Optional<CsvHeader> header = Optional.empty();
    private String[] texts = new String[32];
    private int[] lines = new int[32];
    private int[] starts = new int[32];
    private boolean complete;
    private int cells;
    private int pairLine;
    private int pairs;

    Table(
        String file, int lineShift, CsvColumns columns, Problems problems, Consumer<CsvRow> sink) {
      this.file = file;
      this.lineShift = lineShift;
      this.columns = columns;
      this.problems = problems;
      this.sink = sink;
    }

    Optional<CsvHeader> header() {
      return header;
    }

    void read(CsvParser parser) throws IOException {
      parser.nextToken();
      while (parser.nextToken() == JsonToken.START_ARRAY) {
        cells = 0;
        while (parser.nextToken() == JsonToken.VALUE_STRING) {
          add(parser.getText(), parser.currentTokenLocation());
        }
        endRow();
      }
      if (header.isEmpty()) {
        problems.add(Mark.startOf(file), "the table is empty", "start it with " + headerLine());
      }
    }

    private void add(String text, JsonLocation at) {
      if (cells == MOST_COLUMNS) {
        throw ProblemsException.of(
            new Mark(file, line(at), at.getColumnNr()),
            "the row has more than " + MOST_COLUMNS + " cells",
            "cut the row");
      }
      if (text.length() > MOST_CELL) {
        throw ProblemsException.of(
            new Mark(file, line(at), at.getColumnNr()),
            "the cell holds more than " + MOST_CELL + " characters",
            "shorten the text, or close a quote that was left open here");
      }
      if (cells == texts.length) {
        texts = Arrays.copyOf(texts, 2 * cells);
        lines = Arrays.copyOf(lines, 2 * cells);
        starts = Arrays.copyOf(starts, 2 * cells);
      }
      texts[cells] = trim(text);
      lines[cells] = line(at);
      starts[cells] = column(at);
      cells++;
      countPairs(text);
    }

    private int line(JsonLocation at) {
      return at.getLineNr() + lineShift;
    }

    /** The parser counts halves of characters; a pair before the cell is one too many. */
    private int column(JsonLocation at) {
      if (at.getLineNr() != pairLine) {
        pairLine = at.getLineNr();
        pairs = 0;
      }
      return at.getColumnNr() - pairs;
    }

    private void countPairs(String text) {
      for (int i = 0; i < text.length(); i++) {
        char c = text.charAt(i);
        if (c == '\n' || c == '\r' && (i + 1 == text.length() || text.charAt(i + 1) != '\n')) {
          pairLine++;
          pairs = 0;
        } else if (Character.isLowSurrogate(c)) {
          pairs++;
        }
      }
    }

    /** Blanks around a cell, the no-break space of spreadsheets among them. */
    private static String trim(String text) {
      int from = 0;
      int to = text.length();
      while (from < to && isBlank(text.charAt(from))) {
        from++;
      }
      while (to > from && isBlank(text.charAt(to - 1))) {
        to--;
      }
      return text.substring(from, to);
    }

    private static boolean isBlank(char c) {
      return c == '\u00A0' || Character.isWhitespace(c);
    }

    private void endRow() {
      int used = cells;
      while (used > 0 && texts[used - 1].isEmpty()) {
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
      List<String> names = List.of(Arrays.copyOf(texts, used));
      Mark start = markOf(0);
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
          problems.add(markOf(i), "a column without a name", "name it or take it out");
        } else if (!columns.allows(name)) {
          problems.add(
              markOf(i),
              "the column '" + name + "' is not known",
              Nearest.hint(name, columns.all()));
        } else if (names.indexOf(name) < i) {
          problems.add(
              markOf(i), "the column '" + name + "' stands here again", "keep one of the two");
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
      if (TOTALS.contains(firstText().toLowerCase(Locale.ROOT))) {
        problems.add(markOf(0), "this is a row of totals, not of data", "take it out of the table");
      } else if (used > wanted) {
        problems.add(
            markOf(wanted),
            "the row has " + used + " cells, the header names " + wanted,
            "take the cells too many out, or put a text with a comma in quotes");
      } else if (cells < wanted) {
        problems.add(
            markOf(0),
            "the row has " + cells + " cells, the header names " + wanted,
            "write every comma, also before empty cells");
      } else {
        if (!complete) {
          return;
        }
        sink.accept(
            new CsvRow(
                known,
                Arrays.copyOf(texts, wanted),
                Arrays.copyOf(lines, wanted),
                Arrays.copyOf(starts, wanted)));
      }
    }

    private String firstText() {
      for (int i = 0; i < cells; i++) {
        if (!texts[i].isEmpty()) {
          return texts[i];
        }
      }
      return "";
    }

    private Mark markOf(int cell) {
      return new Mark(file, lines[cell], starts[cell]);
    }

    private String headerLine() {
      return "'" + String.join(",", columns.required()) + "'";
    }

    /** The parser stops at the first fault of quoting, whose cell it still knows. */
    void fault(CsvParser parser) {
      JsonLocation at = parser.currentTokenLocation();
      problems.add(
          new Mark(file, Math.max(1, line(at)), Math.max(1, at.getColumnNr())),
          "the quotes of this cell do not close before the next comma",
          "put the whole cell in one pair of quotes and write a quote in it twice");
    }
  }
}
