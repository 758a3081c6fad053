package org.swathbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.swathbook.cli.terminal.Colour;

/** Colour says nothing that the words do not. */
class ColourTest {
  private static final String TEXT =
      """
      Verdict: blocked (1 blocking)
        BLOCK annual-cap
        WARN  single-site
        ASK   not-verified
      a BLOCKED day, NOT KNOWN
      """;

  @Test
  void onlyOnATerminalThatWantsIt() {
    assertThat(Colour.wanted(true, Map.of())).isTrue();
    assertThat(Colour.wanted(true, Map.of("TERM", "xterm"))).isTrue();
    assertThat(Colour.wanted(false, Map.of())).isFalse();
    assertThat(Colour.wanted(true, Map.of("NO_COLOR", "1"))).isFalse();
    assertThat(Colour.wanted(true, Map.of("NO_COLOR", "0"))).isFalse();
    // An empty value is none, by no-color.org.
    assertThat(Colour.wanted(true, Map.of("NO_COLOR", ""))).isTrue();
    assertThat(Colour.wanted(true, Map.of("TERM", "dumb"))).isFalse();
  }

  @Test
  void withoutItsEscapesTheTextIsAsItWas() {
    String coloured = Colour.of(TEXT);
    assertThat(coloured).contains("\u001b[1;31mBLOCK\u001b[0m", "\u001b[1;31mblocked\u001b[0m");
    assertThat(coloured).contains("\u001b[1;33mWARN\u001b[0m", "\u001b[1mNOT KNOWN\u001b[0m");
    assertThat(coloured.replaceAll("\u001b\\[[0-9;]*m", "")).isEqualTo(TEXT);
  }

  /** Called as a library, and so in every test and pipe, the program prints plain text. */
  @Test
  void whatIsNoTerminalGetsPlainText() {
    assertThat(Called.with("rules").out()).doesNotContain("\u001b");
    assertThat(Called.with("--help").out()).doesNotContain("\u001b");
  }
}
