package org.swathbook.book.file;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.swathbook.source.CsvColumns;
import org.swathbook.source.CsvReader;
import org.swathbook.source.CsvRow;
import org.swathbook.source.Mark;
import org.swathbook.source.ProblemsException;

class JournalFileTest {
  private static final String HEADER = "id,line,date,field,season,product,rate,unit,note";
  private static final Map<String, String> CELLS =
      Map.of(
          "id", "A-27-001",
          "line", "1",
          "date", "2027-06-08",
          "field", "ND-1",
          "season", "2027",
          "product", "glyphosate",
          "rate", "1.0",
          "unit", "lb ae/acre");
  private static final String ROW = "A-27-001,1,2027-06-08,ND-1,2027,glyphosate,1.0,lb ae/acre,";

  @TempDir Path dir;

  private String after(String before, String... more) throws IOException {
    Path file = dir.resolve("applications.csv");
    Files.writeString(file, before, UTF_8);
    append(more);
    return Files.readString(file, UTF_8);
  }

  private List<String> append(String... more) {
    java.util.HashMap<String, String> cells = new java.util.HashMap<>(CELLS);
    for (int i = 0; i < more.length; i += 2) {
      cells.put(more[i], more[i + 1]);
    }
    return JournalFile.append(
        dir, t -> List.of(new NewRow(cells, Mark::startOf)), (there, text, problems) -> {});
  }

  @Test
  void whatStandsThereStaysByteForByte() throws IOException {
    String old =
        "\uFEFF"
            + HEADER
            + "\r\nB,1,2027-05-01,ND-1,2027,atrazine,1,lb ai/acre,\"a \"\"b\"\", c\"\r\n";
    assertThat(after(old)).isEqualTo(old + ROW + "\r\n");
    assertThat(after(HEADER + "\n")).isEqualTo(HEADER + "\n" + ROW + "\n");
    // The last line was not ended, as some editors leave it.
    assertThat(after(HEADER)).isEqualTo(HEADER + "\n" + ROW + "\n");
    assertThat(after(HEADER + "\r")).isEqualTo(HEADER + "\r" + ROW + "\r");
  }

  @Test
  void columnsKeepTheirOrder() throws IOException {
    assertThat(after("unit,rate,product,season,field,date,line,id\n"))
        .endsWith("\nlb ae/acre,1.0,glyphosate,2027,ND-1,2027-06-08,1,A-27-001\n");
  }

  /** The row of old has a comma more, whatever its quotes, its breaks and its last cells. */
  @Test
  void aColumnThatIsLackingIsAddedAtTheRight() throws IOException {
    String start = "B,1,2027-05-01,ND-1,2027,atrazine,1,lb ai/acre,";
    assertThat(
            after(
                HEADER
                    + ",,\r\n"
                    + start
                    + "\"two\r\nlines, \"\"quoted\"\"\"\r\n\r\n"
                    + start
                    + "5\" tall\r\n"
                    + start
                    + ",,,\r\n",
                "endTime",
                "13:10",
                "acres",
                "76"))
        .isEqualTo(
            HEADER
                + ",endTime,acres\r\n"
                + start
                + "\"two\r\nlines, \"\"quoted\"\"\",,\r\n\r\n"
                + start
                + "5\" tall,,\r\n"
                + start
                + ",,,\r\n"
                + ROW
                + ",13:10,76\r\n");
  }

  @Test
  void textIsOneLineAndNoFormula() throws IOException {
    assertThat(after(HEADER + "\n", "note", "=1+1\nwind, \"calm\""))
        .endsWith(",\"'=1+1 wind, \"\"calm\"\"\"\n");
  }

  /**
   * The new rows alone read as they read in the whole file: same cells, same lines, same columns.
   */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "A-1,1,2027-05-01,ND-1,2027,p,1,pt/acre,\n",
        "\n\nA-1,1,2027-05-01,ND-1,2027,p,1,pt/acre,"
      })
  void newRowsReadAsInTheWholeFile(String there) throws IOException {
    Files.writeString(dir.resolve("applications.csv"), HEADER + "\n" + there, UTF_8);
    List<CsvRow> alone = new ArrayList<>();
    List<CsvRow> inWhole = new ArrayList<>();
    JournalFile.append(
        dir,
        t -> List.of(new NewRow(CELLS, Mark::startOf), new NewRow(CELLS, Mark::startOf)),
        (table, more, problems) -> {
          CsvColumns columns = ApplicationsReader.TABLE.columns();
          try {
            new CsvReader()
                .stream(
                    "applications.csv", more.rows(), more.place(), columns, problems, alone::add);
          } catch (IOException e) {
            throw new UncheckedIOException(e);
          }
          List<CsvRow> all =
              new CsvReader().read("applications.csv", more.whole(), columns, problems).rows();
          inWhole.addAll(all.subList(table.rows().size(), all.size()));
        });
    assertThat(alone).hasSize(2);
    for (int i = 0; i < 2; i++) {
      for (String c : inWhole.get(i).header().names()) {
        assertThat(alone.get(i).text(c)).isEqualTo(inWhole.get(i).text(c));
        assertThat(alone.get(i).mark(c)).isEqualTo(inWhole.get(i).mark(c));
      }
    }
  }

  @Test
  void whatDoesNotReadIsNotWritten() throws IOException {
    Path file = dir.resolve("applications.csv");
    Files.writeString(file, HEADER + "\n", UTF_8);
    assertThatThrownBy(
            () ->
                JournalFile.append(
                    dir,
                    t -> List.of(new NewRow(CELLS, c -> Mark.startOf("--" + c))),
                    (there, more, problems) ->
                        problems.add(new Mark("applications.csv", 2, 12), "no", "yes")))
        .isInstanceOf(ProblemsException.class)
        // The cell at the twelfth character of the new row is its date.
        .hasMessage("--date:1:1: no; yes");
    assertThat(Files.readString(file, UTF_8)).isEqualTo(HEADER + "\n");
  }

  @Test
  @DisabledOnOs(OS.WINDOWS)
  void aReadOnlyJournalStaysAndRightsAreKept() throws IOException {
    Path file = dir.resolve("applications.csv");
    Files.writeString(file, HEADER + "\n", UTF_8);
    Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("r--r--r--"));
    assertThatThrownBy(() -> append())
        .isInstanceOf(ProblemsException.class)
        .hasMessageContaining("the file is read-only");
    Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-rw----"));
    append();
    assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
        .isEqualTo("rw-rw----");
  }

  @Test
  @DisabledOnOs(OS.WINDOWS)
  void aLinkStaysALink() throws IOException {
    Path real = Files.createDirectory(dir.resolve("kept")).resolve("journal.csv");
    Files.writeString(real, HEADER + "\n", UTF_8);
    Files.createSymbolicLink(dir.resolve("applications.csv"), real);
    append();
    assertThat(Files.isSymbolicLink(dir.resolve("applications.csv"))).isTrue();
    assertThat(Files.readString(real, UTF_8)).isEqualTo(HEADER + "\n" + ROW + "\n");
  }

  @Test
  void whatAKilledWriterLeftIsCleared() throws IOException {
    Path left = dir.resolve(".applications.csv.0.tmp");
    Files.writeString(left, "half a ro", UTF_8);
    after(HEADER + "\n");
    assertThat(left).doesNotExist();
  }

  /** Another writer holds the journal, and whoever waits is told to stop. */
  @Test
  void aWaitThatIsBrokenOffIsNoLongWait() throws Exception {
    Files.writeString(dir.resolve("applications.csv"), HEADER + "\n", UTF_8);
    List<String> told = new ArrayList<>();
    Thread waiting =
        new Thread(
            () -> {
              try {
                append();
              } catch (ProblemsException e) {
                told.add(e.getMessage());
                told.add("interrupted: " + Thread.currentThread().isInterrupted());
              }
            });
    try (JournalLock held = JournalLock.take(dir)) {
      assertThat(held).isNotNull();
      waiting.start();
      while (waiting.getState() != Thread.State.TIMED_WAITING) {
        Thread.onSpinWait();
      }
      waiting.interrupt();
      waiting.join();
    }
    assertThat(told)
        .containsExactly(
            "applications.csv:1:1: the call was interrupted while it waited for another to end;"
                + " nothing was written; call again",
            "interrupted: true");
    assertThat(dir.resolve("applications.csv")).hasContent(HEADER + "\n");
  }

  @Test
  void threadsTakeTurns() throws Exception {
    Files.writeString(dir.resolve("applications.csv"), HEADER + "\n", UTF_8);
    List<Thread> threads = new ArrayList<>();
    for (int t = 0; t < 4; t++) {
      String name = "T" + t;
      Thread thread =
          new Thread(
              () -> {
                for (int i = 0; i < 10; i++) {
                  RowWriter.write(dir, name + "-" + i);
                }
              });
      threads.add(thread);
      thread.start();
    }
    for (Thread t : threads) {
      t.join();
    }
    try (Stream<String> lines = Files.lines(dir.resolve("applications.csv"))) {
      assertThat(lines).hasSize(1 + 4 * 10 * RowWriter.LINES).doesNotHaveDuplicates();
    }
  }
}
