package org.swathbook.cli.terminal;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import org.jspecify.annotations.Nullable;

/**
 * Passes the result on and remembers the first failure to do so, which writers swallow: a result
 * that never reached its reader (a full disk, say) must not pass for done.
 */
public final class ResultStream extends OutputStream {
  private final OutputStream to;
  private @Nullable IOException failure;

  public ResultStream(OutputStream to) {
    this.to = to;
  }

  @Override
  public void write(int b) throws IOException {
    write(new byte[] {(byte) b}, 0, 1);
  }

  @Override
  public void write(byte[] bytes, int offset, int length) throws IOException {
    try {
      to.write(bytes, offset, length);
    } catch (IOException e) {
      if (failure == null) {
        failure = e;
      }
      throw e;
    }
  }

  @Override
  public void flush() throws IOException {
    to.flush();
  }

  /**
   * The exit code once everything is written. A reader that stopped listening, such as {@code
   * head}, has what it wanted and hears nothing more.
   */
  public int codeAfterwards(int code, PrintWriter err) {
    if (failure == null || "Broken pipe".equals(failure.getMessage())) {
      return code;
    }
    err.println(
        "swathbook: the result could not be written to standard output: " + failure.getMessage());
    return ExitCode.OUR_FAULT;
  }
}
