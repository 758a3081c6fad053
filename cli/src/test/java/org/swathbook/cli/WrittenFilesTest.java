package org.swathbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.swathbook.cli.terminal.ExitCode;

/** Calls that write several files write all of them or none, and only files. */
class WrittenFilesTest {
  private static final String LAYERS = "nd-1-two-layers";

  /** So long that nothing can be written beside it, which shows only when it is written. */
  private static final String UNWRITABLE = "n".repeat(250);

  @TempDir static Path dir;
  private static Path book;

  @BeforeAll
  static void makeTheBook() throws IOException {
    book = SmallBook.of(dir.resolve("book"), "ND-1", "ND-2");
    SmallBook.copyProgram(book, LAYERS + ".yaml");
    Path look = book.resolve("observations/nd-1-june.yaml");
    Files.createDirectories(look.getParent());
    Path demo = ProgramProcess.CLI.resolve("../demo-data");
    Files.copy(demo.resolve("observations/nd-1-june.yaml"), look);
    Files.createDirectories(book.resolve("mixes"));
    Files.copy(demo.resolve("mixes/nd-1-june.yaml"), book.resolve("mixes/nd-1-june.yaml"));
  }

  private static void refused(String why, String command, String... more) {
    Called called = Called.with(command, book, more);
    assertThat(called.complaints()).contains(why).doesNotContain("internal error");
    assertThat(called.code()).isEqualTo(ExitCode.WRONG_INPUT);
    assertThat(called.out()).isEmpty();
  }

  @Test
  void ofAnOrdersTablesAllAreWrittenOrNone(@TempDir Path out) {
    Path bad = out.resolve(UNWRITABLE);
    refused(
        "the file cannot be written (",
        "order",
        "--csv",
        out.resolve("o.csv").toString(),
        "--html",
        bad.toString());
    assertThat(out).isEmptyDirectory();
  }

  @Test
  void noProgramIsKeptWhereItsPageCannotBeWritten(@TempDir Path out) {
    List<String> call =
        List.of("ND-1", "--effort", "quick", "--max-passes", "1", "--save", "--html");
    List<String> bad = new ArrayList<>(call);
    bad.add(out.resolve(UNWRITABLE).toString());
    refused("the file cannot be written (", "plan", bad.toArray(String[]::new));
    assertThat(book.resolve("programs/nd-1.yaml")).doesNotExist();
    assertThat(out).isEmptyDirectory();
    List<String> same = new ArrayList<>(call);
    same.add(book.resolve("programs/nd-1.yaml").toString());
    refused("a page is to be written there too", "plan", same.toArray(String[]::new));
  }

  @Test
  void nothingIsWatchedWhereThePageCannotBeWritten(@TempDir Path out) {
    refused(
        "the file cannot be written (",
        "escapes",
        "nd-1-june",
        "--watch",
        "--html",
        out.resolve(UNWRITABLE).toString());
    assertThat(book.resolve("watch.csv")).doesNotExist();
    Path page = out.resolve("page.html");
    Called called = Called.with("escapes", book, "nd-1-june", "--watch", "--html", page.toString());
    assertThat(called.code()).as(called.err()).isZero();
    assertThat(page).content().contains("watch.csv: added ");
    assertThat(book.resolve("watch.csv")).exists();
  }

  @Test
  void oneFileIsNamedOnce() throws IOException {
    Path out = Files.createDirectory(dir.resolve("once"));
    String one = out.resolve("out.html").toString();
    String other = out.resolve("../once/out.html").toString();
    refused(
        "--html and --handout name the same file",
        "plan",
        "ND-1",
        "--html",
        one,
        "--handout",
        other);
    refused("name the same file", "order", "--csv", one, "--html", other);
    assertThat(out).isEmptyDirectory();
  }

  /** Whoever may do anything would replace it; {@code --force} is no answer to that. */
  @Test
  @EnabledOnOs(OS.LINUX)
  void aPipeIsNoFile() throws Exception {
    Path pipe = dir.resolve("pipe");
    assertThat(new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor()).isZero();
    for (List<String> more : List.of(List.<String>of(), List.of("--force"))) {
      List<String> call = new ArrayList<>(List.of(LAYERS, "--html", pipe.toString()));
      call.addAll(more);
      Called called = Called.with("season", book, call.toArray(String[]::new));
      assertThat(called.code()).isEqualTo(ExitCode.WRONG_INPUT);
      assertThat(called.err()).contains("this is a device or a pipe").doesNotContain("--force");
    }
    assertThat(Files.isRegularFile(pipe)).isFalse();
  }

  @Test
  @DisabledOnOs(OS.WINDOWS)
  void aLinkedPageStaysLinked() throws IOException {
    Path real = Files.writeString(dir.resolve("shared.html"), "old");
    Path link = Files.createSymbolicLink(dir.resolve("season.html"), real);
    Called called = Called.with("season", book, LAYERS, "--html", link.toString(), "--force");
    assertThat(called.code()).as(called.err()).isZero();
    assertThat(link).isSymbolicLink();
    assertThat(real).content().startsWith("<!");
  }
}
