package org.swathbook.source;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Cells as spreadsheets read them. A cell is one line of text and never a formula: a spreadsheet
 * runs what begins with one of {@code = + - @}, unless an apostrophe stands before it; numbers
 * alone may begin with a sign.
 */
public final class CsvText {
  private static final Pattern NUMBER = Pattern.compile("[-+]?(?:\\d+(?:\\.\\d+)?|\\.\\d+)");
  private static final String FORMULA_STARTS = "=+-@";

  private CsvText() {}

  /** A row without its line end. */
  public static String row(List<String> cells) {
    return cells.stream().map(CsvText::cell).collect(Collectors.joining(","));
  }

  /** Where the cells of {@link #row} begin, counted from 1 as marks count. */
  public static List<Integer> starts(List<String> cells) {
    List<Integer> out = new ArrayList<>();
    int column = 1;
    for (String c : cells) {
      out.add(column);
      String cell = cell(c);
      column += cell.codePointCount(0, cell.length()) + 1;
    }
    return List.copyOf(out);
  }

  static String cell(String text) {
    String plain = plain(text);
    return plain.indexOf(',') >= 0 || plain.indexOf('"') >= 0
        ? '"' + plain.replace("\"", "\"\"") + '"'
        : plain;
  }

  /** The text on one line, and none that would be run. */
  static String plain(String text) {
    String line = text.replaceAll("[\\p{Cntrl}\u2028\u2029]+", " ").strip();
    return !line.isEmpty()
            && FORMULA_STARTS.indexOf(line.charAt(0)) >= 0
            && !NUMBER.matcher(line).matches()
        ? "'" + line
        : line;
  }
}
