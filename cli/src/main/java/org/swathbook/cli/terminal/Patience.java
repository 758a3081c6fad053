package org.swathbook.cli.terminal;

import java.io.PrintWriter;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;

/** Says once what is being done when one piece of work takes longer than a second. */
public final class Patience {
  private Patience() {}

  /** Does the work on this thread; the line goes to {@code err} when it is not done in time. */
  public static <T> T with(PrintWriter err, String line, Supplier<T> work) {
    ScheduledExecutorService clock =
        Executors.newSingleThreadScheduledExecutor(
            r -> {
              Thread t = new Thread(r, "patience");
              t.setDaemon(true);
              return t;
            });
    try {
      ScheduledFuture<?> told =
          clock.schedule(() -> err.println(line), Progress.PERIOD_MILLIS, TimeUnit.MILLISECONDS);
      T result = work.get();
      told.cancel(false);
      return result;
    } finally {
      clock.shutdownNow();
    }
  }
}
