package org.swathbook.cli.terminal;

import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.util.Locale;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;

/**
 * Passes the result on and remembers the first failure to do so, which writers swallow: a result
 * that never reached its reader (a full disk, say) must not pass for done.
 */
public final class ResultStream extends OutputStream {
  private final OutputStream to;
  private final BooleanSupplier hasPosition;
  private @Nullable IOException failure;

  public ResultStream(FileOutputStream to) {
    this(to, () -> hasPosition(to));
  }

  /**
   * @param hasPosition whether there is a place in it where the next byte goes, as in a file
   */
  ResultStream(OutputStream to, BooleanSupplier hasPosition) {
    this.to = to;
    this.hasPosition = hasPosition;
  }

  /** Files have one; pipes, sockets and terminals have none. Asked only when writing failed. */
  static boolean hasPosition(FileOutputStream to) {
    try {
      return to.getChannel().position() >= 0;
    } catch (IOException e) {
      return false;
    }
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
    if (failure == null || hasNoReader(failure)) {
      return code;
    }
    err.println(
        "swathbook: the result could not be written to standard output: " + failure.getMessage());
    return ExitCode.OUR_FAULT;
  }

  /**
   * The system says it in the language of the machine, so that words alone do not tell: what fails
   * where there is no position fails for want of a reader. Windows gives a position to pipes too;
   * there the words have to do.
   */
  private boolean hasNoReader(IOException failure) {
    String words = String.valueOf(failure.getMessage()).toLowerCase(Locale.ROOT);
    return words.contains("pipe") || !hasPosition.getAsBoolean();
  }
}
