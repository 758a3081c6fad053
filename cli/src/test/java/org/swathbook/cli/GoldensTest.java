package org.swathbook.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class GoldensTest {
  @TempDir Path dir;
  private Path kept;
  private Goldens goldens;
  private Goldens updating;

  @BeforeEach
  void keepOne() throws IOException {
    kept = dir.resolve("golden");
    Files.createDirectories(kept.resolve("a"));
    Files.writeString(kept.resolve("a/b.txt"), "one\ntwo ≥\n");
    goldens = new Goldens(kept, dir.resolve("actual"), false);
    updating = new Goldens(kept, dir.resolve("actual"), true);
  }

  @Test
  void theSameTextPasses() {
    assertThatCode(() -> goldens.compare("a/b.txt", "one\ntwo ≥\n")).doesNotThrowAnyException();
    assertThatCode(() -> updating.compare("a/b.txt", "one\ntwo ≥\n")).doesNotThrowAnyException();
  }

  @Test
  void anotherTextFailsSaysWhereAndKeepsIt() {
    assertThatThrownBy(() -> goldens.compare("a/b.txt", "one\ntwo >\n"))
        .isInstanceOf(AssertionError.class)
        .hasMessageContaining("from line 2\n  kept: two ≥\n  now:  two >");
    assertThat(dir.resolve("actual/a/b.txt"))
        .usingCharset(StandardCharsets.UTF_8)
        .hasContent("one\ntwo >\n");
    assertThat(kept.resolve("a/b.txt"))
        .usingCharset(StandardCharsets.UTF_8)
        .hasContent("one\ntwo ≥\n");
  }

  @Test
  void lineEndsAreCompared() {
    assertThatThrownBy(() -> goldens.compare("a/b.txt", "one\r\ntwo ≥\r\n"))
        .isInstanceOf(AssertionError.class);
    assertThatThrownBy(() -> goldens.compare("a/b.txt", "one\ntwo ≥"))
        .isInstanceOf(AssertionError.class);
  }

  @Test
  void aMissingGoldenFails() {
    assertThatThrownBy(() -> goldens.compare("new.txt", "")).isInstanceOf(AssertionError.class);
    assertThat(kept.resolve("new.txt")).doesNotExist();
  }

  @Test
  void anUpdateRewritesAndFailsOnce() {
    assertThatThrownBy(() -> updating.compare("new/c.txt", "three\n"))
        .isInstanceOf(AssertionError.class)
        .hasMessageContaining("was rewritten");
    assertThatCode(() -> goldens.compare("new/c.txt", "three\n")).doesNotThrowAnyException();
  }
}
