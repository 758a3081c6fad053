package org.swathbook.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.swathbook.cli.terminal.ExitCode;

/**
 * Every command that writes, as a process of its own: killed at any moment, on a disk that takes no
 * more, in a folder that may not be written to. What was there stays, and nothing half stays.
 */
class KilledAndFullTest {
  private static final String TODAY = "2027-06-10";

  /** What one call is to write, and what it left. */
  record Ended(int code, String out, String err) {}

  @TempDir Path dir;
  private int books;

  @AfterEach
  void open() throws IOException {
    try (Stream<Path> all = Files.walk(dir)) {
      for (Path p : all.filter(f -> !Files.isWritable(f)).toList()) {
        assertThat(p.toFile().setWritable(true)).isTrue();
      }
    }
  }

  private Path book() throws IOException {
    return DemoBookCopy.into(Files.createDirectory(dir.resolve("b" + books++)));
  }

  static List<String> java(String... args) {
    return ProgramProcess.ofClasses(List.of(args));
  }

  /** Output goes through pipes, since a limit on files would hold for files of output too. */
  static Ended run(List<String> command) throws Exception {
    Process p = new ProcessBuilder(command).start();
    p.getOutputStream().close();
    StringBuilder out = new StringBuilder();
    Thread reader =
        new Thread(
            () -> {
              try {
                out.append(new String(p.getInputStream().readAllBytes(), UTF_8));
              } catch (IOException e) {
                out.append(e);
              }
            });
    reader.start();
    String err = new String(p.getErrorStream().readAllBytes(), UTF_8);
    assertThat(p.waitFor(2, TimeUnit.MINUTES)).isTrue();
    reader.join();
    return new Ended(p.exitValue(), out.toString(), err);
  }

  /** As on a full disk: no file may grow beyond so many blocks, and what is written over fails. */
  private static Ended full(int blocks, String... args) throws Exception {
    List<String> command =
        new ArrayList<>(List.of("sh", "-c", "ulimit -f " + blocks + "; exec \"$@\"", "sh"));
    command.addAll(java(args));
    return run(command);
  }

  static Map<String, String> all(Path folder) throws IOException {
    TreeMap<String, String> out = new TreeMap<>();
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path f : files.filter(Files::isRegularFile).toList()) {
        if (!f.endsWith(".applications.lock")) {
          out.put(folder.relativize(f).toString(), Files.readString(f, UTF_8));
        }
      }
    }
    return out;
  }

  static void refused(Ended ended) {
    assertThat(ended.err()).doesNotContain("Exception");
    assertThat(ended.out()).isEmpty();
    assertThat(ended.code()).isEqualTo(ExitCode.WRONG_INPUT);
    assertThat(ended.err()).isNotEmpty();
  }

  @Test
  @DisabledOnOs(OS.WINDOWS)
  void aFullDiskLeavesTheJournalAsItWas() throws Exception {
    Path book = book();
    Map<String, String> before = all(book);
    Ended ended = full(1, "record", "nd-1-june", "--book", book.toString(), "--today", TODAY);
    refused(ended);
    assertThat(ended.err()).contains("the file cannot be written (").contains("is as it was");
    assertThat(all(book)).isEqualTo(before);
  }

  @Test
  @DisabledOnOs(OS.WINDOWS)
  void aFullDiskLeavesNoPageNoProgramNoBook() throws Exception {
    Path book = book();
    Map<String, String> before = all(book);
    Path page = book.resolve("load.html");
    refused(
        full(
            1,
            "load",
            "nd-1-june",
            "--html",
            page.toString(),
            "--book",
            book.toString(),
            "--today",
            TODAY));
    refused(full(1, "init", dir.resolve("new").toString(), "--demo"));
    assertThat(dir.resolve("new")).doesNotExist();
    Path small = SmallBook.of(dir.resolve("small"), "ND-1");
    Map<String, String> smallBefore = all(small);
    refused(
        full(
            1,
            "plan",
            "ND-1",
            "--max-passes",
            "1",
            "--effort",
            "quick",
            "--save",
            "--book",
            small.toString(),
            "--today",
            "2027-03-01"));
    assertThat(all(book)).isEqualTo(before);
    assertThat(all(small)).isEqualTo(smallBefore);
    try (Stream<Path> beside = Files.list(dir)) {
      assertThat(beside.map(p -> p.getFileName().toString()).filter(n -> n.startsWith(".")))
          .isEmpty();
    }
  }

  /** Tables and pages that go to standard output. */
  @Test
  @EnabledOnOs(OS.LINUX)
  void aResultThatCannotBePrintedIsNotDone() throws Exception {
    File full = new File("/dev/full");
    assumeThat(full).exists();
    Path book = book();
    Path err = dir.resolve("err.txt");
    Process p =
        new ProcessBuilder(java("record", "--export", "--book", book.toString(), "--today", TODAY))
            .redirectOutput(full)
            .redirectError(err.toFile())
            .start();
    assertThat(p.waitFor(2, TimeUnit.MINUTES)).isTrue();
    assertThat(Files.readString(err, UTF_8))
        .contains("the result could not be written to standard output");
    assertThat(p.exitValue()).isEqualTo(ExitCode.OUR_FAULT);
  }

  @Test
  @DisabledOnOs(OS.WINDOWS)
  void aReadOnlyFolderIsTold() throws Exception {
    Path book = book();
    Map<String, String> before = all(book);
    Files.setPosixFilePermissions(book, PosixFilePermissions.fromString("r-xr-xr-x"));
    assumeThat(Files.isWritable(book)).as("who is root may write anywhere").isFalse();
    refused(run(java("record", "nd-1-june", "--book", book.toString(), "--today", TODAY)));
    refused(
        run(java("escapes", "nd-1-june", "--watch", "--book", book.toString(), "--today", TODAY)));
    refused(
        run(
            java(
                "load",
                "nd-1-june",
                "--html",
                book.resolve("load.html").toString(),
                "--book",
                book.toString(),
                "--today",
                TODAY)));
    refused(run(java("init", book.resolve("inner").toString())));
    assertThat(all(book)).isEqualTo(before);
  }

  @Test
  void aFewKills() throws Exception {
    kills(2, new Random(1));
  }

  @Test
  @Tag("slow")
  void manyKills() throws Exception {
    kills(60, new Random(2));
  }

  private void kills(int rounds, Random random) throws Exception {
    Path book = book();
    Map<String, String> before = all(book);
    long start = System.nanoTime();
    assertThat(run(java(record(book))).code()).isEqualTo(ExitCode.DONE);
    long millis = TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - start);
    Map<String, String> after = all(book);
    int written = 0;
    for (int i = 0; i < rounds; i++) {
      Path fresh = book();
      killed(java(record(fresh)), random.nextInt((int) millis + 100));
      Map<String, String> left = all(fresh);
      left.keySet().removeIf(f -> f.endsWith(".tmp"));
      assertThat(left).isIn(before, after);
      written += left.equals(after) ? 1 : 0;
      // A book that a writer died in takes the next pass as if nothing had been.
      Ended next = run(java(record(fresh)));
      assertThat(next.code()).isEqualTo(left.equals(after) ? ExitCode.WRONG_INPUT : ExitCode.DONE);
      assertThat(all(fresh)).isEqualTo(after);

      Path target = dir.resolve("killed" + i);
      killed(java("init", target.toString(), "--demo"), random.nextInt((int) millis / 2 + 100));
      if (Files.exists(target)) {
        assertThat(all(target)).isEqualTo(before);
      }
    }
    System.out.println(rounds + " kills of record, " + written + " after it had written");
  }

  private static String[] record(Path book) {
    return new String[] {"record", "nd-1-june", "--book", book.toString(), "--today", TODAY};
  }

  static void killed(List<String> command, int afterMillis) throws Exception {
    Process p =
        new ProcessBuilder(command)
            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .start();
    p.waitFor(afterMillis, TimeUnit.MILLISECONDS);
    p.destroyForcibly();
    assertThat(p.waitFor(1, TimeUnit.MINUTES)).isTrue();
  }
}
