package org.swathbook.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.swathbook.cli.ProgramProcess.CLI;
import static org.swathbook.cli.ProgramProcess.JAR;
import static org.swathbook.cli.ProgramProcess.java;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.swathbook.cli.ProgramProcess.Result;

/**
 * The same book and day give the same bytes, whatever the language, time zone and encoding around.
 */
class SameBytesIT {
  private static final String BOOK = CLI.resolveSibling("demo-data").toString();

  @TempDir Path dir;

  private Result call(List<String> options, String... words) throws Exception {
    List<String> command = new ArrayList<>(List.of(java()));
    command.addAll(options);
    command.addAll(List.of("-jar", JAR.toString()));
    command.addAll(List.of(words));
    command.addAll(List.of("--book", BOOK, "--today", "2026-11-25"));
    return ProgramProcess.run(dir, Map.of("LC_ALL", "C"), command);
  }

  private void assertSameBytes(String... words) throws Exception {
    Result plain = call(List.of("-Duser.timezone=UTC", "-Duser.language=en"), words);
    Result strange =
        call(
            List.of(
                "-Duser.timezone=Pacific/Auckland",
                "-Duser.language=tr",
                "-Duser.country=TR",
                "-Dfile.encoding=ISO-8859-1"),
            words);
    assertThat(plain.out()).isNotEmpty().isEqualTo(strange.out());
    assertThat(plain.code()).isEqualTo(strange.code());
  }

  @Test
  void aPlanOfAFieldOfTheDemoBook() throws Exception {
    assertSameBytes("plan", "OB-3");
  }

  @Test
  void aWalkedSeasonOfTheDemoBook() throws Exception {
    assertSameBytes("season", "nd-1-two-layers", "--json");
  }
}
