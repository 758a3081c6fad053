package org.swathbook.cli.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

class ResultStreamTest {
  private final StringWriter err = new StringWriter();

  @Test
  void passesBytesOnAndKeepsTheCode() {
    ByteArrayOutputStream to = new ByteArrayOutputStream();
    ResultStream stream = new ResultStream(to);
    write(stream, "2,4-D – 1 pt");
    assertThat(to.toString(StandardCharsets.UTF_8)).isEqualTo("2,4-D – 1 pt");
    assertThat(after(stream, ExitCode.BLOCKED)).isEqualTo(ExitCode.BLOCKED);
    assertThat(err.toString()).isEmpty();
  }

  @Test
  void aFullDiskIsNotDone() {
    ResultStream stream = new ResultStream(failing("No space left on device"));
    write(stream, "result");
    assertThat(after(stream, ExitCode.DONE)).isEqualTo(ExitCode.OUR_FAULT);
    assertThat(err.toString().lines())
        .singleElement()
        .asString()
        .contains("standard output")
        .contains("No space left on device");
  }

  @Test
  void aReaderThatLeftHearsNothing() {
    ResultStream stream = new ResultStream(failing("Broken pipe"));
    write(stream, "result");
    assertThat(after(stream, ExitCode.DONE)).isEqualTo(ExitCode.DONE);
    assertThat(err.toString()).isEmpty();
  }

  private int after(ResultStream stream, int code) {
    return stream.codeAfterwards(code, new PrintWriter(err, true));
  }

  private static void write(ResultStream stream, String text) {
    PrintWriter writer = new PrintWriter(stream, false, StandardCharsets.UTF_8);
    writer.print(text);
    writer.flush();
  }

  private static OutputStream failing(String why) {
    return new OutputStream() {
      @Override
      public void write(int b) throws IOException {
        throw new IOException(why);
      }
    };
  }
}
