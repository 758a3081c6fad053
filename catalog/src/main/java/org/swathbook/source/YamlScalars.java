package org.swathbook.source;

import java.util.List;
import java.util.Locale;

/** Spellings of a single value in YAML. */
final class YamlScalars {
  private static final String INDICATORS = "-?:,[]{}#&*!|>'\"%@`";
  private static final String NOT_IN_BRACKETS = ",[]{}?";

  private YamlScalars() {}

  /**
   * Whether a text may stand without quotes and mean itself.
   *
   * @param inBrackets whether it stands between brackets, where a comma ends it
   */
  static boolean isPlain(String text, boolean inBrackets) {
    if (text.isEmpty() || text.startsWith(" ") || text.endsWith(" ") || text.endsWith(":")) {
      return false;
    }
    boolean dashWord = text.charAt(0) == '-' && text.length() > 1 && text.charAt(1) != ' ';
    if (INDICATORS.indexOf(text.charAt(0)) >= 0 && !dashWord
        || text.startsWith("---")
        || text.startsWith("...")
        || text.contains(": ")
        || text.contains(" #")) {
      return false;
    }
    int c;
    for (int i = 0; i < text.length(); i += Character.charCount(c)) {
      c = text.codePointAt(i);
      if (YamlReader.isUnseen(c) || inBrackets && NOT_IN_BRACKETS.indexOf(c) >= 0) {
        return false;
      }
    }
    return true;
  }

  /** Whether a text may stand without quotes in lines of its own. */
  static boolean isLiteral(String text) {
    return !text.isEmpty() && text.codePoints().noneMatch(c -> c != '\n' && YamlReader.isUnseen(c));
  }

  /** The text in double quotes on one line; what no editor shows is written as its number. */
  static String quoted(String text) {
    StringBuilder out = new StringBuilder("\"");
    text.codePoints()
        .forEach(
            c -> {
              if (c == '"' || c == '\\') {
                out.append('\\').append((char) c);
              } else if (c == '\n') {
                out.append("\\n");
              } else if (!YamlReader.isUnseen(c)) {
                out.appendCodePoint(c);
              } else {
                out.append(String.format(Locale.ROOT, c <= 0xFFFF ? "\\u%04X" : "\\U%08X", c));
              }
            });
    return out.append('"').toString();
  }

  /** Mark before the lines of a literal text: as many blanks of indentation, line ends kept. */
  static String literalMark(String text, int blanks) {
    return "|" + blanks + (text.endsWith("\n") ? "+" : "-");
  }

  /** Lines of a literal text, without indentation. */
  static List<String> literalLines(String text) {
    List<String> lines = List.of(text.split("\n", -1));
    return text.endsWith("\n") ? lines.subList(0, lines.size() - 1) : lines;
  }
}
