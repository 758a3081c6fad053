package org.swathbook.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The script of {@code completion}, read by the shell itself where there is one. */
class CompletionTest {
  @TempDir Path dir;

  @Test
  void everyCommandIsInIt() {
    Called called = Called.with("completion");
    assertThat(called.code()).isZero();
    assertThat(called.err()).isEmpty();
    assertThat(called.out())
        .contains("complete -F", "swathbook")
        .contains("plan", "season", "check", "load", "order", "audit", "catalog", "--queue");
  }

  @Test
  void bashCompletesByIt() throws IOException, InterruptedException {
    Assumptions.assumeTrue(Files.isExecutable(Path.of("/bin/bash")));
    Path script = dir.resolve("swathbook-completion");
    Files.writeString(script, Called.with("completion").out());
    assertThat(completed(script, "swathbook", "ord")).isEqualTo("order");
    assertThat(completed(script, "swathbook", "plan", "--qu")).isEqualTo("--queue");
    assertThat(completed(script, "swathbook", "catalog", "sch")).isEqualTo("schema");
  }

  /** What the demo book names, with the book before or after, and nothing of it elsewhere. */
  @Test
  void bashCompletesWhatABookNames() throws IOException, InterruptedException {
    Assumptions.assumeTrue(Files.isExecutable(Path.of("/bin/bash")));
    Path script = dir.resolve("swathbook-completion");
    Files.writeString(script, Called.with("completion").out());
    String demo = typed(ProgramProcess.CLI.resolve("../demo-data").toString());
    assertThat(completed(script, "swathbook", "plan", "--book", demo, "OB"))
        .isEqualTo("OB-1 OB-2 OB-3 OB-4");
    assertThat(completed(script, "swathbook", "plan", "--book", "=", demo, "--keep", "nd"))
        .isEqualTo("nd-1-two-layers");
    assertThat(completed(script, "swathbook", "check", "--book", demo, "nd-2"))
        .isEqualTo("nd-2-june");
    assertThat(completed(script, "swathbook", "check", "--book", demo, "--field", "ND-4"))
        .isEqualTo("ND-4");
    assertThat(completed(script, "swathbook", "audit", "--book", demo, "--planned", "nd"))
        .isEqualTo("nd-1-two-layers");
    assertThat(completed(script, "swathbook", "escapes", "--book", demo, "nd"))
        .isEqualTo("nd-1-june");
    assertThat(completed(script, "swathbook", "plan", "--book", demo, "--budget", "O")).isEmpty();
    assertThat(completed(script, "swathbook", "plan", "--book", demo, "--hand"))
        .isEqualTo("--handout");
    assertThat(completed(script, "swathbook", "plan", "OB")).as("no book, no names").isEmpty();
  }

  /** However the space is typed. */
  @Test
  void aBookMayLieOnAPathWithASpace() throws IOException, InterruptedException {
    Assumptions.assumeTrue(Files.isExecutable(Path.of("/bin/bash")));
    Path script = dir.resolve("swathbook-completion");
    Files.writeString(script, Called.with("completion").out());
    Path book = Files.createDirectories(dir.resolve("our book"));
    Files.writeString(book.resolve("fields.csv"), "id,acres\nX-1,40\n");
    for (String typed : List.of("our\\ book", "'our book'", "\"our book\"", "\"our book")) {
      assertThat(completed(script, "swathbook", "plan", "--book", typed, "X"))
          .as(typed)
          .isEqualTo("X-1");
    }
  }

  /** Names come from files that others may have written. */
  @Test
  void aNameIsNeverRun() throws IOException, InterruptedException {
    Assumptions.assumeTrue(Files.isExecutable(Path.of("/bin/bash")));
    Path script = dir.resolve("swathbook-completion");
    Files.writeString(script, Called.with("completion").out());
    Path mixes = Files.createDirectories(dir.resolve("mixes"));
    Files.createFile(mixes.resolve("a$(touch run).yaml"));
    Files.writeString(dir.resolve("fields.csv"), "name,id\nx,a`touch run`\n");
    assertThat(completed(script, "swathbook", "load", "--book", dir.toString(), "a"))
        .isEqualTo("a\\$\\(touch\\ run\\)");
    assertThat(completed(script, "swathbook", "order", "--book", dir.toString(), "a"))
        .isEqualTo("a\\`touch\\ run\\`");
    assertThat(dir.resolve("run")).doesNotExist();
  }

  /** As somebody types it who knows that a space ends a word. */
  private static String typed(String path) {
    return path.replace(" ", "\\ ");
  }

  /** For the shell to take to the letter. */
  private static String quoted(String word) {
    return "'" + word.replace("'", "'\\''") + "'";
  }

  private String completed(Path script, String... words) throws IOException, InterruptedException {
    String line = String.join(" ", words);
    String call =
        "source '"
            + script
            + "'; COMP_LINE="
            + quoted(line)
            + "; COMP_WORDS=("
            + Arrays.stream(words).map(CompletionTest::quoted).collect(Collectors.joining(" "))
            + "); COMP_CWORD="
            + (words.length - 1)
            + "; COMP_POINT="
            + line.length()
            + "; _complete_swathbook_book; echo \"${COMPREPLY[*]}\"";
    Process bash =
        new ProcessBuilder("/bin/bash", "--norc", "-c", call)
            .directory(dir.toFile())
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .start();
    String out = new String(bash.getInputStream().readAllBytes(), UTF_8).strip();
    assertThat(bash.waitFor()).as(out).isZero();
    return out;
  }
}
