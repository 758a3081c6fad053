package org.swathbook.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
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

  private static String completed(Path script, String... words)
      throws IOException, InterruptedException {
    String line = String.join(" ", words);
    String call =
        "source '"
            + script
            + "'; COMP_LINE='"
            + line
            + "'; COMP_WORDS=("
            + line
            + "); COMP_CWORD="
            + (words.length - 1)
            + "; COMP_POINT="
            + line.length()
            + "; _complete_swathbook; echo \"${COMPREPLY[*]}\"";
    Process bash =
        new ProcessBuilder("/bin/bash", "--norc", "-c", call)
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .start();
    String out = new String(bash.getInputStream().readAllBytes(), UTF_8).strip();
    assertThat(bash.waitFor()).as(out).isZero();
    return out;
  }
}
