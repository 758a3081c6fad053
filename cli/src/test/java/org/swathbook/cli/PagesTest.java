package org.swathbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code check}, {@code audit} and {@code escapes} with {@code --html} on the demo book. */
class PagesTest {
  private static final Path DEMO = ProgramProcess.CLI.resolve("../demo-data");
  private static final Pattern FIGURE =
      Pattern.compile("\\d[\\d,]*\\.\\d+|\\d[\\d,]* (%|lb|gal|in)\\b");

  @TempDir Path folder;

  /** Every figure of the text stands on the page, and no other exit code. */
  private String saysWhatTheTextSays(String command, String... args) throws IOException {
    Called text = Called.with(command, DEMO, args);
    Path file = folder.resolve(command + ".html");
    String[] more = java.util.Arrays.copyOf(args, args.length + 3);
    more[args.length] = "--html";
    more[args.length + 1] = file.toString();
    more[args.length + 2] = "--force";
    Called called = Called.with(command, DEMO, more);
    assertThat(called.complaints()).isEmpty();
    assertThat(called.out()).isEqualTo("Written: " + file + "\n");
    assertThat(called.code()).isEqualTo(text.code());
    String page = Files.readString(file);
    WrittenPage.standsByItself(page);
    String words = WrittenPage.words(page);
    Set<String> figures = new TreeSet<>();
    FIGURE
        .matcher(text.out().replaceAll("\\s+", " "))
        .results()
        .forEach(m -> figures.add(m.group()));
    assertThat(figures).isNotEmpty().allSatisfy(f -> assertThat(words).contains(f));
    return words;
  }

  @Test
  void aTank() throws IOException {
    assertThat(saysWhatTheTextSays("check", "nd-1-june"))
        .contains("CAUTION", "weed-too-tall", "What would be better");
  }

  @Test
  void aProgram() throws IOException {
    assertThat(saysWhatTheTextSays("check", "--program", "nd-1-two-layers"))
        .contains("House rules", "breaks minFoliarSites");
  }

  @Test
  void theAudit() throws IOException {
    assertThat(saysWhatTheTextSays("audit")).contains("1. ND-3", "all 1,055.9");
  }

  @Test
  void aProgramBesideTheJournal() throws IOException {
    assertThat(saysWhatTheTextSays("audit", "--planned", "nd-1-two-layers", "--season", "2026"))
        .contains("Planned and applied", "Promised", "as sprayed");
  }

  @Test
  void oneChangeOnEveryField() throws IOException {
    assertThat(saysWhatTheTextSays("audit", "--what-if", "posts-by:V3"))
        .contains("IMPROVED", "forbidden");
  }

  @Test
  void aLookAfterAPass() throws IOException {
    assertThat(saysWhatTheTextSays("escapes", "nd-1-june")).contains("Suspicion of resistance");
  }

  @Test
  void whatHasNoPageSaysSo() {
    String file = folder.resolve("page.html").toString();
    assertThat(Called.with("audit", DEMO, "--ledger", "--html", file).err())
        .contains("--ledger is told as text");
    assertThat(Called.with("escapes", DEMO, "--due", "--html", file).err())
        .contains("--due is told as text");
    assertThat(Called.with("check", DEMO, "nd-1-june", "--html", file, "--json").err())
        .contains("in place of --json");
    assertThat(Path.of(file)).doesNotExist();
  }
}
