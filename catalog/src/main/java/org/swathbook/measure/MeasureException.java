package org.swathbook.measure;

/**
 * A text that is no quantity of the wanted kind. The message says what is wrong; what would be
 * right, in plain words.
 */
public final class MeasureException extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  public MeasureException(String message) {
    super(message);
  }
}
