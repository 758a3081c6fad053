package org.swathbook.cli;

import java.util.regex.Pattern;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/**
 * A number as people write it; anything else is refused in plain words. What is no number to reckon
 * with is left to whoever knows how large the number may be.
 */
final class NumberReader implements ITypeConverter<Double> {
  private static final Pattern NUMBER =
      Pattern.compile("[+-]?(?:\\d+(?:\\.\\d*)?|\\.\\d+)(?:[eE][+-]?\\d{1,3})?|NaN|-?Infinity");

  @Override
  public Double convert(String text) {
    String typed = text.strip();
    if (!NUMBER.matcher(typed).matches()) {
      throw new TypeConversionException("'" + text + "' is no number; write it as 12.5");
    }
    return Double.valueOf(typed);
  }

  /** A whole number. */
  static final class Whole implements ITypeConverter<Integer> {
    private static final Pattern WHOLE = Pattern.compile("[+-]?\\d{1,9}");

    @Override
    public Integer convert(String text) {
      String typed = text.strip();
      if (!WHOLE.matcher(typed).matches()) {
        throw new TypeConversionException("'" + text + "' is no whole number; write it as 12");
      }
      return Integer.valueOf(typed);
    }
  }
}
