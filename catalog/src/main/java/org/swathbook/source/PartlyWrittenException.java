package org.swathbook.source;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/** Of several files some have their new bytes, and the others are as they were. */
public final class PartlyWrittenException extends IOException {
  private static final long serialVersionUID = 1L;

  private final transient List<Path> written;

  PartlyWrittenException(List<Path> written, Exception cause) {
    super(cause.getMessage(), cause);
    this.written = List.copyOf(written);
  }

  /** Those that have their new bytes, in the order in which they got them. */
  public List<Path> written() {
    return written;
  }
}
