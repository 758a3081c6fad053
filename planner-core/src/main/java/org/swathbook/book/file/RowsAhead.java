package org.swathbook.book.file;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import org.swathbook.source.CsvHeader;
import org.swathbook.source.CsvRow;

/**
 * Takes a long table apart in a thread of its own, some rows ahead of the one that makes something
 * of them: each is about half of the work. Rows come one by one and in their order all the same.
 */
final class RowsAhead {
  /** Handed over together: a row by itself would cost more to hand over than to read. */
  private static final int TOGETHER = 512;

  private static final int AHEAD = 8;
  private static final int PATIENCE_MS = 20;

  /** Reads a table and gives its rows away. */
  interface Source {
    Optional<CsvHeader> rows(Consumer<CsvRow> sink) throws IOException;
  }

  private final BlockingQueue<List<CsvRow>> queue = new ArrayBlockingQueue<>(AHEAD);
  private List<CsvRow> next = new ArrayList<>(TOGETHER);

  /** Nobody wants the rest. */
  private volatile boolean left;

  private RowsAhead() {}

  /**
   * @throws RuntimeException whatever the source or the sink ends with
   */
  static Optional<CsvHeader> read(Source source, Consumer<CsvRow> sink) throws IOException {
    RowsAhead ahead = new RowsAhead();
    CompletableFuture<Optional<CsvHeader>> reading =
        CompletableFuture.supplyAsync(() -> ahead.read(source), RowsAhead::inOwnThread);
    try {
      List<CsvRow> rows = ahead.take(reading);
      while (!rows.isEmpty()) {
        rows.forEach(sink);
        rows = ahead.take(reading);
      }
      return reading.join();
    } catch (CompletionException e) {
      if (e.getCause() instanceof UncheckedIOException cause) {
        throw cause.getCause();
      }
      if (e.getCause() instanceof RuntimeException cause) {
        throw cause;
      }
      throw e;
    } finally {
      ahead.left = true;
      // What it reads from, and tells its problems to, is the caller's again from here on.
      reading.exceptionally(e -> Optional.empty()).join();
    }
  }

  /** The threads that are there for all may be few, and busy with what is waited for. */
  private static void inOwnThread(Runnable task) {
    Thread thread = new Thread(task, "rows");
    thread.setDaemon(true);
    thread.start();
  }

  private Optional<CsvHeader> read(Source source) {
    try {
      Optional<CsvHeader> header = source.rows(this::add);
      give();
      return header;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void add(CsvRow row) {
    next.add(row);
    if (next.size() == TOGETHER) {
      give();
    }
  }

  private void give() {
    try {
      while (!queue.offer(next, PATIENCE_MS, TimeUnit.MILLISECONDS)) {
        if (left) {
          throw new IllegalStateException("nobody takes the rows any more");
        }
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("reading was interrupted", e);
    }
    next = new ArrayList<>(TOGETHER);
  }

  /** None when the table is at its end, or nothing more of it can be read. */
  private List<CsvRow> take(CompletableFuture<?> reading) {
    try {
      while (true) {
        // Asked before the rows are: what is given before the end is in the queue by then.
        boolean ended = reading.isDone();
        List<CsvRow> rows = queue.poll(ended ? 0 : PATIENCE_MS, TimeUnit.MILLISECONDS);
        if (rows != null && !rows.isEmpty() || ended && rows == null) {
          return rows == null ? List.of() : rows;
        }
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("reading was interrupted", e);
    }
  }
}
