package org.swathbook.cli.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;

class ProgressTest {
  private static final long MILLI = 1_000_000;

  private final StringWriter err = new StringWriter();
  private final Progress progress = new Progress(new PrintWriter(err, true), 0);

  @Test
  void saysNothingInTheFirstSecondAndNothingTwice() {
    progress.tell("planning ND-1 … 0 of 2", 999 * MILLI);
    assertThat(err.toString()).isEmpty();
    progress.tell("planning ND-1 … 0 of 2", 1000 * MILLI);
    progress.tell("planning ND-2 … 1 of 2", 1500 * MILLI);
    progress.tell("planning ND-1 … 0 of 2", 2500 * MILLI);
    progress.tell("planning ND-2 … 1 of 2", 3000 * MILLI);
    assertThat(err.toString().lines())
        .containsExactly("planning ND-1 … 0 of 2", "planning ND-2 … 1 of 2");
  }
}
