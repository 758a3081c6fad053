package org.swathbook.source;

/**
 * Makes a value of a text.
 *
 * @param <T> what it makes
 */
@FunctionalInterface
public interface TextParser<T> {

  /**
   * The value of the text.
   *
   * @throws org.swathbook.measure.MeasureException saying what is wrong; what would be right
   */
  T parse(String text);
}
