package org.swathbook.source;

import java.io.IOException;
import java.nio.file.Path;

/** What stands where a file is to be written, or is lacking there, forbids it; nothing was done. */
public final class NotWritableException extends IOException {
  private static final long serialVersionUID = 1L;

  private final transient Path file;
  private final String what;
  private final String right;

  NotWritableException(Path file, String what, String right) {
    super(file + ": " + what);
    this.file = file;
    this.what = what;
    this.right = right;
  }

  /** As it was named by whoever wanted it written. */
  public Path file() {
    return file;
  }

  /**
   * To be told.
   *
   * @param shown name of the file for people
   */
  public Problem problem(String shown) {
    return new Problem(Mark.startOf(shown), what, right);
  }
}
