package org.swathbook.source;

import java.io.IOException;
import java.io.Reader;
import java.util.Queue;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;

/**
 * Reads a long text in a thread of its own, some way ahead of whoever takes it apart. What the text
 * ends with, a fault too, comes when all before it has been read.
 */
final class TextAhead extends Reader {
  private static final int TOGETHER = 1 << 15;
  private static final int AHEAD = 16;
  private static final int PATIENCE_MS = 20;

  /** Some of the text, or what it ends with: nothing more, or a fault. */
  private static final class Part {
    private final char[] text;
    private final int length;
    private final @Nullable Throwable fault;

    Part(char[] text, int length, @Nullable Throwable fault) {
      this.text = text;
      this.length = length;
      this.fault = fault;
    }
  }

  private static final char[] NONE = new char[0];

  private final Reader in;
  private final BlockingQueue<Part> queue = new ArrayBlockingQueue<>(AHEAD);

  /**
   * Read to the end, to be filled again: each anew would be a fourth of all that the reading of a
   * long table makes.
   */
  private final Queue<char[]> used = new ConcurrentLinkedQueue<>();

  private final Thread reading;
  private Part part = new Part(NONE, 0, null);
  private int at;
  private boolean ended;

  /** Nobody wants the rest. */
  private volatile boolean left;

  private TextAhead(Reader in) {
    this.in = in;
    this.reading = new Thread(this::readAll, "text");
    this.reading.setDaemon(true);
  }

  static TextAhead of(Reader in) {
    TextAhead out = new TextAhead(in);
    out.reading.start();
    return out;
  }

  private void readAll() {
    try {
      Part next = next();
      while (next.length > 0 && !left) {
        give(next);
        next = next();
      }
      give(new Part(NONE, 0, null));
    } catch (IOException | RuntimeException | Error e) {
      give(new Part(NONE, 0, e));
    }
  }

  private Part next() throws IOException {
    char[] again = used.poll();
    char[] text = again != null ? again : new char[TOGETHER];
    int n = 0;
    int more = 0;
    while (n < TOGETHER && more >= 0 && !left) {
      try {
        more = in.read(text, n, TOGETHER - n);
      } catch (IOException | RuntimeException e) {
        if (n > 0) {
          give(new Part(text, n, null));
        }
        throw e;
      }
      n += Math.max(0, more);
    }
    return new Part(text, n, null);
  }

  private void give(Part next) {
    try {
      while (!left && !queue.offer(next, PATIENCE_MS, TimeUnit.MILLISECONDS)) {
        // Until there is room, or nobody waits any more.
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      left = true;
    }
  }

  @Override
  public int read(char[] target, int offset, int length) throws IOException {
    if (length == 0) {
      return 0;
    }
    if (at == part.length && !take()) {
      return -1;
    }
    int n = Math.min(length, part.length - at);
    System.arraycopy(part.text, at, target, offset, n);
    at += n;
    return n;
  }

  private boolean take() throws IOException {
    if (!ended) {
      try {
        Part last = part;
        part = queue.take();
        if (last.length > 0) {
          used.add(last.text);
        }
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
        throw new IOException("reading was interrupted", e);
      }
      at = 0;
      ended = part.length == 0;
    }
    if (part.fault instanceof IOException fault) {
      throw fault;
    }
    if (part.fault instanceof RuntimeException fault) {
      throw fault;
    }
    if (part.fault instanceof Error fault) {
      throw fault;
    }
    return !ended;
  }

  @Override
  public void close() throws IOException {
    left = true;
    try {
      reading.join();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    in.close();
  }
}
