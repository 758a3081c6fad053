package org.swathbook.cli.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.io.RandomAccessFile;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ResultStreamTest {
  private final StringWriter err = new StringWriter();

  @Test
  void passesBytesOnAndKeepsTheCode() {
    ByteArrayOutputStream to = new ByteArrayOutputStream();
    ResultStream stream = new ResultStream(to, () -> true);
    write(stream, "2,4-D – 1 pt");
    assertThat(to.toString(StandardCharsets.UTF_8)).isEqualTo("2,4-D – 1 pt");
    assertThat(after(stream, ExitCode.BLOCKED)).isEqualTo(ExitCode.BLOCKED);
    assertThat(err.toString()).isEmpty();
  }

  @Test
  void aFullDiskIsNotDone() {
    ResultStream stream = new ResultStream(failing("No space left on device"), () -> true);
    write(stream, "result");
    assertThat(after(stream, ExitCode.DONE)).isEqualTo(ExitCode.OUR_FAULT);
    assertThat(err.toString().lines())
        .singleElement()
        .asString()
        .contains("standard output")
        .contains("No space left on device");
  }

  /** As Windows says it in English; as Linux says it in Spanish, where the kind of output tells. */
  @ParameterizedTest
  @CsvSource({
    "Broken pipe, true",
    "The pipe is being closed, true",
    "The pipe has been ended, true",
    "Tubería rota, false"
  })
  void aReaderThatLeftHearsNothing(String why, boolean hasPosition) {
    ResultStream stream = new ResultStream(failing(why), () -> hasPosition);
    write(stream, "result");
    assertThat(after(stream, ExitCode.BLOCKED)).isEqualTo(ExitCode.BLOCKED);
    assertThat(err.toString()).isEmpty();
  }

  @Test
  @EnabledOnOs(OS.LINUX)
  void aFileHasAPositionAndAPipeHasNone(@TempDir Path dir) throws Exception {
    try (FileOutputStream file = new FileOutputStream(dir.resolve("file").toFile())) {
      assertThat(ResultStream.hasPosition(file)).isTrue();
    }
    Path pipe = dir.resolve("pipe");
    assertThat(new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor()).isZero();
    // Opened for both, so that it waits for nobody.
    try (RandomAccessFile reader = new RandomAccessFile(pipe.toFile(), "rw");
        FileOutputStream writer = new FileOutputStream(pipe.toFile())) {
      assertThat(reader.getFD().valid()).isTrue();
      assertThat(ResultStream.hasPosition(writer)).isFalse();
    }
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
