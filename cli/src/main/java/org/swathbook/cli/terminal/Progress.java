package org.swathbook.cli.terminal;

import java.io.PrintWriter;
import java.util.concurrent.TimeUnit;

/** Tells what is being done, at most once a second and not at all in the first. */
public final class Progress {
  public static final long PERIOD_MILLIS = 1000;

  private final PrintWriter err;
  private long lastNanos;
  private String last = "";

  public Progress(PrintWriter err, long startNanos) {
    this.err = err;
    this.lastNanos = startNanos;
  }

  /** Prints the line unless it is the one before or comes too soon after that. */
  public void tell(String line, long nowNanos) {
    if (nowNanos - lastNanos >= TimeUnit.MILLISECONDS.toNanos(PERIOD_MILLIS)
        && !line.equals(last)) {
      err.println(line);
      last = line;
      lastNanos = nowNanos;
    }
  }
}
