package org.swathbook.source;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.fasterxml.jackson.dataformat.yaml.YAMLParser;
import java.io.IOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Reads one YAML document into nodes. Scalars stay text, so that {@code no}, {@code 1_000} and
 * {@code 2027-05-10} mean what the reader of the key says. Anchors, aliases, tags, tabs and further
 * documents are refused: none of them is needed to write down a field, and each is a way to write
 * something other than what was meant. Size and depth are bounded.
 */
public final class YamlReader {

  /** Largest file that is read; the files of a book are some kilobytes. */
  public static final int MOST_BYTES = 1_000_000;

  private static final int MOST_DEPTH = 30;
  private static final String PLAIN =
      "write only keys, values and lists; put a text that starts with a sign in quotes";

  private final YAMLFactory factory = YAMLFactory.builder().build();

  /**
   * The root of the document.
   *
   * @param file name for the marks
   * @throws ProblemsException when the bytes are no such document
   */
  public Node read(String file, byte[] content) {
    if (content.length > MOST_BYTES) {
      throw ProblemsException.of(
          Mark.startOf(file),
          "the file holds more than " + MOST_BYTES + " bytes", // callers read no further
          "no file of this kind is as long; write less into it");
    }
    String text = Utf8Bytes.decode(file, content);
    refuseUnseen(file, text);
    Problems problems = new Problems();
    Node root;
    try (YAMLParser parser = factory.createParser(text)) {
      Document document = new Document(file, text, parser, problems);
      try {
        root = document.read();
      } catch (JsonProcessingException e) {
        problems.add(YamlFault.problem(file, e, document.innermostBracket()));
        throw new ProblemsException(problems);
      }
    } catch (IOException e) {
      throw ProblemsException.of(
          Mark.startOf(file), "the file cannot be read as YAML", "write keys and values");
    }
    problems.throwIfAny();
    return root;
  }

  /**
   * The root of a document that must be a map.
   *
   * @throws ProblemsException when it is none
   */
  public MapNode readMap(String file, byte[] content) {
    Node root = read(file, content);
    if (root instanceof MapNode map) {
      return map;
    }
    throw ProblemsException.of(
        root.mark(), "the file holds " + root.kind(), "start it with keys, as 'format: …'");
  }

  /** Tabs and characters that no editor shows, the first of each line. */
  private static void refuseUnseen(String file, String text) {
    Problems problems = new Problems();
    int number = 0;
    for (String line : text.lines().toList()) {
      number++;
      for (int i = 0, column = 1;
          i < line.length();
          i += Character.charCount(line.codePointAt(i))) {
        int c = line.codePointAt(i);
        if (c == '\t') {
          problems.add(new Mark(file, number, column), "a tab", "write spaces");
          break;
        }
        if (isUnseen(c)) {
          problems.add(
              new Mark(file, number, column),
              String.format(Locale.ROOT, "a character that cannot be seen (U+%04X)", c),
              "take it out");
          break;
        }
        column++;
      }
    }
    problems.throwIfAny();
  }

  /**
   * Whether no editor shows the character. The separators of lines and paragraphs are among them:
   * YAML ends a line at them, which nobody sees.
   */
  static boolean isUnseen(int c) {
    return switch (Character.getType(c)) {
      case Character.CONTROL,
          Character.SURROGATE,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR ->
          true;
      default -> c == 0xFEFF || (c & 0xFFFE) == 0xFFFE;
    };
  }

  /** One pass over the tokens of one document. */
  private static final class Document {
    private final String file;
    private final List<String> lines;
    private final YAMLParser parser;
    private final Problems problems;

    /** Where the brackets around the current token opened, the innermost first. */
    private final Deque<Mark> brackets = new ArrayDeque<>();

    Document(String file, String text, YAMLParser parser, Problems problems) {
      this.file = file;
      this.lines = text.lines().toList();
      this.parser = parser;
      this.problems = problems;
    }

    Node read() throws IOException {
      JsonToken first = parser.nextToken();
      if (first == null) {
        throw ProblemsException.of(
            Mark.startOf(file), "the file is empty", "start it with keys, as 'format: …'");
      }
      Node root = value(first, 1);
      if (parser.nextToken() != null) {
        problems.add(mark(), "a second document starts here", "keep one document in a file");
      }
      return root;
    }

    Optional<Mark> innermostBracket() {
      return Optional.ofNullable(brackets.peek());
    }

    private Node value(JsonToken token, int depth) throws IOException {
      Mark mark = mark();
      if (depth > MOST_DEPTH) {
        throw ProblemsException.of(
            mark, "lists and maps lie more than " + MOST_DEPTH + " deep", "nest them less deeply");
      }
      char sign = sign(mark);
      if (sign == '&' || sign == '*' || sign == '!') {
        problems.add(mark, signName(sign), PLAIN);
      }
      if (token == JsonToken.START_OBJECT || token == JsonToken.START_ARRAY) {
        boolean inBrackets = sign == '[' || sign == '{';
        if (inBrackets) {
          brackets.push(mark);
        }
        Node node = token == JsonToken.START_OBJECT ? map(mark, depth) : list(mark, depth);
        if (inBrackets) {
          brackets.pop();
        }
        return node;
      }
      String text = parser.getText();
      return new ScalarNode(mark, text == null ? "" : text, sign == '"' || sign == '\'');
    }

    private ListNode list(Mark mark, int depth) throws IOException {
      List<Node> items = new ArrayList<>();
      for (JsonToken t = parser.nextToken(); t != JsonToken.END_ARRAY; t = parser.nextToken()) {
        items.add(value(t, depth + 1));
      }
      return new ListNode(mark, items);
    }

    private MapNode map(Mark mark, int depth) throws IOException {
      Map<String, MapNode.Entry> entries = new LinkedHashMap<>();
      while (parser.nextToken() != JsonToken.END_OBJECT) {
        String key = parser.currentName();
        Mark keyMark = mark();
        char sign = sign(keyMark);
        if (sign == '&' || sign == '*' || sign == '!') {
          problems.add(keyMark, signName(sign), PLAIN);
        }
        Node value = value(parser.nextToken(), depth + 1);
        MapNode.Entry first = entries.putIfAbsent(key, new MapNode.Entry(key, keyMark, value));
        if (first != null) {
          problems.add(
              keyMark,
              "the key '" + key + "' stands here for the second time",
              "keep one of them; the first is in line " + first.keyMark().line());
        }
      }
      return new MapNode(mark, List.copyOf(entries.values()));
    }

    private Mark mark() {
      JsonLocation at = parser.currentTokenLocation();
      return new Mark(file, Math.max(1, at.getLineNr()), Math.max(1, at.getColumnNr()));
    }

    /** The character a token starts with in the file: it tells quotes and signs from plain text. */
    private char sign(Mark mark) {
      if (mark.line() > lines.size()) {
        return ' ';
      }
      String line = lines.get(mark.line() - 1);
      int length = line.codePointCount(0, line.length());
      if (mark.column() > length) {
        return ' ';
      }
      int before = mark.column() - 1;
      // To count from the start of a long line for each of its tokens would take the square of it.
      return line.charAt(length == line.length() ? before : line.offsetByCodePoints(0, before));
    }

    private static String signName(char sign) {
      return switch (sign) {
        case '&' -> "an anchor (&)";
        case '*' -> "an alias (*)";
        default -> "a tag (!)";
      };
    }
  }
}
