package org.swathbook.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.swathbook.cli.ProgramProcess.CLI;
import static org.swathbook.cli.ProgramProcess.JAR;
import static org.swathbook.cli.ProgramProcess.java;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.swathbook.cli.ProgramProcess.Result;
import org.swathbook.cli.terminal.ExitCode;

/**
 * The same book and day give the same bytes, whatever the language, time zone and encoding around.
 */
class SameBytesIT {
  private static final String BOOK = CLI.resolveSibling("demo-data").toString();

  /** One of the two processes that are compared waits here for its end. */
  private static final ExecutorService BESIDE = Executors.newSingleThreadExecutor();

  /** What makes the code of the process here; elsewhere it is the first compiler alone. */
  private static final List<String> BOTH = List.of();

  private static final List<String> FIRST = List.of("-XX:TieredStopAtLevel=1");

  @TempDir Path dir;

  @AfterAll
  static void endBeside() {
    BESIDE.shutdownNow();
  }

  private Result call(List<String> options, String... words) throws Exception {
    List<String> command = new ArrayList<>(List.of(java(), "-XX:TieredStopAtLevel=1"));
    command.addAll(options);
    command.addAll(List.of("-jar", JAR.toString()));
    command.addAll(List.of(words));
    command.addAll(List.of("--book", BOOK, "--today", "2026-11-25"));
    return ProgramProcess.run(dir, Map.of("LC_ALL", "C"), command);
  }

  /**
   * Where letters, digits, dates and half hours are others, one thread does all, and only the first
   * compiler makes code.
   */
  private Result elsewhere(Path book, String... words) throws Exception {
    List<String> command =
        new ArrayList<>(
            List.of(
                java(),
                "-Duser.timezone=Asia/Kolkata",
                "-Duser.language=tr",
                "-Duser.country=TR",
                "-Duser.script=",
                "-XX:ActiveProcessorCount=1",
                "-XX:TieredStopAtLevel=1",
                "-jar",
                JAR.toString()));
    command.addAll(List.of(words));
    command.addAll(List.of("--book", book.toString(), "--today", "2027-06-22"));
    return ProgramProcess.run(
        dir, Map.of("LC_ALL", "tr_TR.UTF-8", "LANG", "tr_TR.UTF-8", "TZ", "Asia/Kolkata"), command);
  }

  private Result here(List<String> compilers, Path book, String... words) throws Exception {
    List<String> command = new ArrayList<>(List.of(java(), "-XX:ActiveProcessorCount=4"));
    command.addAll(compilers);
    command.addAll(List.of("-jar", JAR.toString()));
    command.addAll(List.of(words));
    command.addAll(List.of("--book", book.toString(), "--today", "2027-06-22"));
    return ProgramProcess.run(dir, Map.of("LC_ALL", "C", "TZ", "UTC"), command);
  }

  private void assertSameBytesElsewhere(List<String> compilers, Path book, String... words)
      throws Exception {
    Future<Result> there = BESIDE.submit(() -> elsewhere(book, words));
    Result here = here(compilers, book, words);
    Result elsewhere = there.get();
    assertThat(here.code()).as(here.err()).isLessThan(ExitCode.WRONG_INPUT);
    assertThat(here.out()).isNotEmpty().isEqualTo(elsewhere.out());
    assertThat(here.code()).isEqualTo(elsewhere.code());
  }

  /** Fields are planned side by side: by four threads here, by one there. */
  @Test
  void aQuickPlanByOneThreadAndByFour() throws Exception {
    Path book = SmallBook.of(dir.resolve("small"), "ND-1", "ND-2");
    assertSameBytesElsewhere(BOTH, book, "plan", "--effort", "quick");
  }

  @Test
  @Tag("slow")
  void aPlanByOneThreadAndByFour() throws Exception {
    Path book = SmallBook.of(dir.resolve("small"), "ND-1", "ND-2");
    assertSameBytesElsewhere(BOTH, book, "plan");
  }

  @Test
  void everythingElseThatIsReckoned() throws Exception {
    everythingElse(FIRST);
  }

  /**
   * The second one makes code that such a call is over before it needs: hence not in every build.
   */
  @Test
  @Tag("slow")
  void everythingElseByBothCompilers() throws Exception {
    everythingElse(BOTH);
  }

  private void everythingElse(List<String> compilers) throws Exception {
    Path demo = Path.of(BOOK);
    assertSameBytesElsewhere(compilers, demo, "check", "nd-1-june");
    assertSameBytesElsewhere(compilers, demo, "escapes", "nd-1-june", "--json");
    assertSameBytesElsewhere(compilers, demo, "audit");
    assertSameBytesElsewhere(compilers, demo, "season", "nd-1-two-layers", "--stress");
  }

  private void assertSameBytes(String... words) throws Exception {
    List<String> strangely =
        List.of(
            "-Duser.timezone=Pacific/Auckland",
            "-Duser.language=tr",
            "-Duser.country=TR",
            "-Dfile.encoding=ISO-8859-1");
    Future<Result> there = BESIDE.submit(() -> call(strangely, words));
    Result plain = call(List.of("-Duser.timezone=UTC", "-Duser.language=en"), words);
    Result strange = there.get();
    assertThat(plain.out()).isNotEmpty().isEqualTo(strange.out());
    assertThat(plain.code()).isEqualTo(strange.code());
  }

  @Test
  void aQuickPlanOfAFieldOfTheDemoBook() throws Exception {
    assertSameBytes("plan", "OB-3", "--effort", "quick");
  }

  @Test
  @Tag("slow")
  void aPlanOfAFieldOfTheDemoBook() throws Exception {
    assertSameBytes("plan", "OB-3");
  }

  @Test
  void aWalkedSeasonOfTheDemoBook() throws Exception {
    assertSameBytes("season", "nd-1-two-layers", "--json");
  }
}
