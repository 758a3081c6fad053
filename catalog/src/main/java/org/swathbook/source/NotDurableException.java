package org.swathbook.source;

import java.io.IOException;

/** A file was written whole, and the disk did not confirm that it outlives a loss of power. */
public final class NotDurableException extends IOException {
  private static final long serialVersionUID = 1L;

  NotDurableException(IOException cause) {
    super(cause.getMessage(), cause);
  }

  /** What is to be said of the file. */
  public String words() {
    return "is written, but the disk did not confirm that it outlives a loss of power ("
        + getMessage()
        + ")";
  }
}
