package org.swathbook.book.file;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.swathbook.source.CsvReader;
import org.swathbook.source.CsvRow;
import org.swathbook.source.Problems;

/**
 * Two processes write into one journal and are killed at random moments, as by {@code kill -9}:
 * what was acknowledged is there, nothing is there twice, no pass is there in part.
 */
class JournalKillsTest {
  private static final String HEADER =
      "id,line,corrects,date,field,season,product,rate,unit,note\n";

  @TempDir Path dir;

  @Test
  void aFewKills() throws Exception {
    kill(6, new Random(1));
  }

  /** A thousand kills, two writers a round. */
  @Test
  @Tag("slow")
  void aThousandKills() throws Exception {
    kill(500, new Random(2));
  }

  private void kill(int rounds, Random random) throws Exception {
    int acknowledged = 0;
    int unacknowledged = 0;
    int leftovers = 0;
    Path book = dir;
    List<String> promised = new ArrayList<>();
    for (int round = 0; round < rounds; round++) {
      if (round % 25 == 0) {
        // A fresh journal, so that writing stays quick and many kills meet many writes.
        book = Files.createDirectory(dir.resolve("book" + round));
        Files.writeString(book.resolve("applications.csv"), HEADER);
        promised = new ArrayList<>();
      }
      List<Process> writers = new ArrayList<>();
      List<Path> outputs = new ArrayList<>();
      for (String name : List.of("a", "b")) {
        Path out = dir.resolve(name + round + ".txt");
        outputs.add(out);
        writers.add(start(book, name + round, out));
      }
      awaitFirst(outputs);
      Thread.sleep(random.nextInt(30));
      for (Process p : writers) {
        // On Unix this is SIGKILL; what the writer was at, it leaves undone.
        p.destroyForcibly();
        Thread.sleep(random.nextInt(10));
      }
      for (Process p : writers) {
        assertThat(p.waitFor(1, TimeUnit.MINUTES)).isTrue();
      }
      for (Path out : outputs) {
        promised.addAll(complete(out));
        assertThat(Files.readString(out, UTF_8)).doesNotContain("Exception");
      }
      leftovers += leftovers(book);
      Map<String, Integer> lines = read(book);
      assertThat(lines.values()).as("round " + round).containsOnly(RowWriter.LINES);
      assertThat(lines.keySet()).as("round " + round).containsAll(promised);
      acknowledged = promised.size();
      unacknowledged = lines.size() - promised.size();
    }
    System.out.println(
        rounds * 2
            + " kills; in the last journal "
            + acknowledged
            + " passes acknowledged, "
            + unacknowledged
            + " written and not yet told; "
            + leftovers
            + " times a file half written beside it");
  }

  private Process start(Path book, String name, Path out) throws IOException {
    return new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-XX:TieredStopAtLevel=1",
            "-XX:+UseSerialGC",
            "-Xmx64m",
            "-cp",
            System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")),
            RowWriter.class.getName(),
            book.toString(),
            name)
        .redirectErrorStream(true)
        .redirectOutput(out.toFile())
        .start();
  }

  /** Until one of them has acknowledged something; the other may be anywhere, starting too. */
  private static void awaitFirst(List<Path> outputs) throws Exception {
    for (int i = 0; i < 30_000; i++) {
      for (Path out : outputs) {
        if (Files.size(out) > 0) {
          return;
        }
      }
      Thread.sleep(2);
    }
    throw new AssertionError("no writer wrote anything within a minute");
  }

  private static List<String> complete(Path out) throws IOException {
    String text = Files.readString(out, UTF_8);
    return text.substring(0, text.lastIndexOf('\n') + 1).lines().toList();
  }

  private static int leftovers(Path book) throws IOException {
    try (Stream<Path> files = Files.list(book)) {
      int n = (int) files.filter(f -> f.toString().endsWith(".tmp")).count();
      assertThat(n).isLessThanOrEqualTo(1);
      return n;
    }
  }

  /** Lines of each pass; each line once, and what was asked to be there in each. */
  private static Map<String, Integer> read(Path book) throws IOException {
    Problems problems = new Problems();
    List<CsvRow> rows =
        new CsvReader()
            .read(
                "applications.csv",
                Files.readAllBytes(book.resolve("applications.csv")),
                ApplicationsReader.TABLE.columns(),
                problems)
            .rows();
    assertThat(problems.report()).isEmpty();
    Map<String, Integer> lines = new LinkedHashMap<>();
    for (CsvRow row : rows) {
      int before = lines.getOrDefault(row.text("id"), 0);
      assertThat(row.text("line")).isEqualTo(Integer.toString(before + 1));
      assertThat(row.text("endTime")).isEqualTo("13:10");
      lines.put(row.text("id"), before + 1);
    }
    return lines;
  }
}
