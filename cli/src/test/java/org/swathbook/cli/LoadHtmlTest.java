package org.swathbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.swathbook.cli.report.Cautions;
import org.swathbook.cli.report.LoadWords;
import org.swathbook.cli.terminal.ExitCode;

/** {@code load --html} on the demo book. */
class LoadHtmlTest {
  private static final Path DEMO = ProgramProcess.CLI.resolve("../demo-data");

  @TempDir Path folder;

  private Called load(String mix, Path file, String... more) {
    String[] args = new String[more.length + 3];
    args[0] = mix;
    args[1] = "--html";
    args[2] = file.toString();
    System.arraycopy(more, 0, args, 3, more.length);
    return Called.with("load", DEMO, args);
  }

  /** Text of a page without its tags and the heads of its tables, one blank between words. */
  private static String words(String page) {
    return page.substring(page.indexOf("<body"))
        .replaceAll("(?s)<thead>.*?</thead>", " ")
        .replaceAll("<[^>]+>", " ")
        .replace("&#39;", "'")
        .replace("&lt;", "<")
        .replace("&gt;", ">")
        .replace("&amp;", "&")
        .replaceAll("\\s+", " ");
  }

  @Test
  void thePageSaysWhatTheTextSays() throws IOException {
    Path file = folder.resolve("load.html");
    Called called = load("nd-1-june", file);
    String page = Files.readString(file);

    assertThat(called.err()).isEmpty();
    assertThat(called.code()).isEqualTo(ExitCode.DONE);
    assertThat(called.out()).isEqualTo("Written: " + file + "\n");
    Goldens.check("demo/load.html", page);

    String words = words(page);
    String text = Called.with("load", DEMO, "nd-1-june").out();
    String body = text.substring(text.indexOf("76 acres at"), text.indexOf("-----"));
    for (String paragraph : body.replaceAll("\\n {2,}", " ").split("\\n+")) {
      for (String cell : paragraph.strip().split(" {2,}")) {
        assertThat(words).contains(cell.replaceAll("\\s+", " "));
      }
    }
    assertThat(words).contains(Cautions.ALL).contains(LoadWords.SIGN_OFF).contains("CAUTION");
  }

  /** Nothing runs and nothing is fetched. */
  @Test
  void thePageStandsByItself() throws IOException {
    Path file = folder.resolve("load.html");
    load("nd-1-june", file);
    String page = Files.readString(file);

    WrittenPage.standsByItself(page);
  }

  @Test
  void whatABookSaysIsEscaped() throws IOException {
    Path book = folder.resolve("book");
    copyDemo(book);
    Path fields = book.resolve("fields.csv");
    Files.writeString(
        fields, Files.readString(fields).replace("Long Eighty", "<script>alert(1)</script> & Co"));
    Path file = folder.resolve("load.html");
    Called called = Called.with("load", book, "nd-1-june", "--html", file.toString());

    assertThat(called.err()).isEmpty();
    assertThat(Files.readString(file))
        .doesNotContain("<script")
        .contains("&lt;script&gt;alert(1)&lt;/script&gt; &amp; Co");
  }

  private static void copyDemo(Path to) throws IOException {
    try (var files = Files.walk(DEMO)) {
      for (Path from : (Iterable<Path>) files::iterator) {
        Path target = to.resolve(DEMO.relativize(from).toString());
        if (Files.isDirectory(from)) {
          Files.createDirectories(target);
        } else {
          Files.copy(from, target);
        }
      }
    }
  }

  @Test
  void aBlockedTankGetsNoLoadOnItsPage() throws IOException {
    Path mix = folder.resolve("mix.yaml");
    Files.writeString(
        mix,
        """
        format: swathbook.mix/1
        field: ND-1
        date: 2027-06-08
        cropStage: V3
        products: [{product: glyphosate-4.5sl, rate: 320 fl oz/acre}]
        carrier: {volume: 15 gal/acre}
        sprayer: {tank: 1200 gal}
        """);
    Path file = folder.resolve("load.html");
    Called called = load(mix.toString(), file);

    assertThat(called.code()).isEqualTo(ExitCode.BLOCKED);
    assertThat(words(Files.readString(file)))
        .contains("NO LOAD")
        .contains("BLOCKED")
        .contains(Cautions.ALL)
        .doesNotContain("Load 1")
        .doesNotContain("To be signed");
  }

  @Test
  void noFileIsWrittenOverUnasked() throws IOException {
    Path file = folder.resolve("load.html");
    Files.writeString(file, "mine");
    Called refused = load("nd-1-june", file);
    assertThat(refused.code()).isEqualTo(ExitCode.WRONG_INPUT);
    assertThat(refused.err()).contains("there is such a file already").contains("--force");
    assertThat(refused.out()).isEmpty();
    assertThat(Files.readString(file)).isEqualTo("mine");

    assertThat(load("nd-1-june", file, "--force").code()).isEqualTo(ExitCode.DONE);
    assertThat(Files.readString(file)).startsWith("<!DOCTYPE html>");

    assertThat(load("nd-1-june", folder.resolve("none/load.html")).err())
        .contains("its folder does not exist");
    assertThat(load("nd-1-june", folder).err()).contains("this is a folder");
    assertThat(load("nd-1-june", file, "--json").err()).contains("in place of --json");
    assertThat(Called.with("load", DEMO, "nd-1-june", "--force").err())
        .contains("--force goes with --html");
  }
}
