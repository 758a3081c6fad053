package org.swathbook.cli.text;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Breaks paragraphs into lines at spaces; a word longer than a line is cut. */
final class Wrap {
  private static final Pattern BLANKS = Pattern.compile("\\s+");

  private Wrap() {}

  /**
   * Lines of at most {@code first} columns for the first and {@code rest} for the others; at least
   * one, where what stands before them fills the page already.
   */
  static List<String> lines(String paragraph, int first, int rest) {
    return cut(paragraph, Math.max(1, first), Math.max(1, rest));
  }

  private static List<String> cut(String paragraph, int first, int rest) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : BLANKS.split(paragraph.strip())) {
      int width = lines.isEmpty() ? first : rest;
      if (!line.isEmpty() && line.length() + 1 + word.length() > width) {
        lines.add(line.toString());
        line.setLength(0);
        width = rest;
      }
      if (!line.isEmpty()) {
        line.append(' ');
      }
      line.append(word);
      while (line.length() > width) {
        lines.add(line.substring(0, width));
        line.delete(0, width);
        width = rest;
      }
    }
    lines.add(line.toString());
    return lines;
  }
}
