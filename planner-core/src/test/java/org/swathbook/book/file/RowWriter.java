package org.swathbook.book.file;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.PrintStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.swathbook.source.CsvReader;
import org.swathbook.source.Mark;

/**
 * A process that writes passes of three lines into a journal until it is killed, and prints the id
 * of each when it is acknowledged. The catalog stays out of it, so that thousands can be started.
 */
public final class RowWriter {
  static final int LINES = 3;

  private RowWriter() {}

  public static void main(String[] args) {
    Path book = Path.of(args[0]);
    PrintStream out = new PrintStream(System.out, true, UTF_8);
    for (int n = 0; ; n++) {
      write(book, args[1] + "-" + n);
      out.print(args[1] + "-" + n + "\n");
    }
  }

  static void write(Path book, String id) {
    List<NewRow> rows = new ArrayList<>();
    for (int line = 1; line <= LINES; line++) {
      rows.add(
          new NewRow(
              Map.of(
                  "id", id,
                  "line", Integer.toString(line),
                  "date", "2027-06-08",
                  "field", "ND-1",
                  "season", "2027",
                  "product", "glyphosate",
                  "rate", "1.0",
                  "unit", "lb ae/acre",
                  "endTime", "13:10"),
              Mark::startOf));
    }
    JournalFile.append(
        book,
        table -> rows,
        (there, more, problems) ->
            new CsvReader()
                .read(
                    "applications.csv",
                    more.whole(),
                    ApplicationsReader.TABLE.columns(),
                    problems));
  }
}
