package org.swathbook.source;

import java.util.ArrayList;
import java.util.List;

/**
 * Writes nodes as a YAML document that {@link YamlReader} reads back to the same nodes, their
 * places aside. Keys of a file stand one a line; what fits on the rest of the line is written in
 * brackets. A text stands in quotes when its node says so; one that says no is written plainly, in
 * lines of its own where nothing shorter can hold it, and in quotes only when it holds characters
 * that no editor shows.
 */
public final class YamlWriter {
  private static final int WIDTH = 120;
  private static final int STEP = 2;

  /** Longest piece of a list or of a map that is filled into several lines between brackets. */
  private static final int MOST_ITEM = 60;

  private static final int MOST_ENTRY = 24;

  /** YAML looks no further than 1024 characters for the colon behind a key. */
  private static final int MOST_KEY = 1000;

  private final StringBuilder out = new StringBuilder();

  private YamlWriter() {}

  /** The document, with a line end behind its last line. */
  public static String text(Node root) {
    YamlWriter writer = new YamlWriter();
    if (root instanceof ScalarNode s) {
      writer.out.append(s.isEmpty() ? "---" : "");
      writer.scalar(s, "", 0);
    } else {
      writer.block(root, 0);
    }
    return writer.out.append('\n').toString();
  }

  /** Whether a text may stand anywhere without quotes. */
  static boolean isPlain(String text) {
    return YamlScalars.isPlain(text, true);
  }

  /** A map or a list, one entry a line, each line but the first indented. */
  private void block(Node node, int indent) {
    if (isEmpty(node)) {
      out.append(node instanceof MapNode ? "{}" : "[]");
    } else if (node instanceof MapNode map) {
      String between = "";
      for (MapNode.Entry e : map.entries()) {
        out.append(between);
        entry(e, indent);
        between = "\n" + " ".repeat(indent);
      }
    } else {
      String between = "";
      for (Node item : ((ListNode) node).items()) {
        out.append(between).append('-');
        value(item, indent, false);
        between = "\n" + " ".repeat(indent);
      }
    }
  }

  private void entry(MapNode.Entry e, int indent) {
    String key = key(e.key());
    if (key.length() > MOST_KEY) {
      out.append("? ").append(key).append('\n').append(" ".repeat(indent)).append(':');
    } else {
      out.append(key).append(':');
    }
    value(e.value(), indent, true);
  }

  /**
   * What stands behind a key or a dash.
   *
   * @param indent of the map or list that it stands in
   * @param ofKey whether a block must start on a line of its own
   */
  private void value(Node node, int indent, boolean ofKey) {
    if (node instanceof ScalarNode s) {
      scalar(s, " ", indent);
      return;
    }
    int room = WIDTH - (out.length() - out.lastIndexOf("\n") - 1) - 1;
    if (isFlowing(node)) {
      List<String> pieces = pieces(node);
      String flow = bracketed(node, String.join(", ", pieces));
      if (flow.length() <= room) {
        out.append(' ').append(flow);
        return;
      }
      if (isFilled(node, pieces)) {
        out.append(' ').append(bracketed(node, filled(pieces, WIDTH - room + 1)));
        return;
      }
    }
    out.append(ofKey ? "\n" + " ".repeat(indent + STEP) : " ");
    block(node, indent + STEP);
  }

  private void scalar(ScalarNode s, String before, int indent) {
    if (s.isEmpty()) {
      return;
    }
    out.append(before);
    if (!s.quoted() && YamlScalars.isPlain(s.text(), false)) {
      out.append(s.text());
    } else if (!s.quoted() && YamlScalars.isLiteral(s.text())) {
      out.append(YamlScalars.literalMark(s.text(), STEP));
      for (String line : YamlScalars.literalLines(s.text())) {
        out.append('\n').append(line.isEmpty() ? "" : " ".repeat(indent + STEP)).append(line);
      }
    } else {
      out.append(YamlScalars.quoted(s.text()));
    }
  }

  private static String key(String key) {
    return isPlain(key) ? key : YamlScalars.quoted(key);
  }

  private static boolean isEmpty(Node node) {
    return node instanceof MapNode m && m.entries().isEmpty()
        || node instanceof ListNode l && l.items().isEmpty();
  }

  /** Whether a node may stand between brackets. */
  private static boolean isFlowing(Node node) {
    if (node instanceof ScalarNode s) {
      return s.quoted() || isPlain(s.text());
    }
    if (node instanceof ListNode l) {
      return l.items().stream().allMatch(YamlWriter::isFlowing);
    }
    return ((MapNode) node)
        .entries().stream()
            .allMatch(e -> key(e.key()).length() <= MOST_KEY && isFlowing(e.value()));
  }

  private static String flow(Node node) {
    if (node instanceof ScalarNode s) {
      return s.quoted() ? YamlScalars.quoted(s.text()) : s.text();
    }
    return bracketed(node, String.join(", ", pieces(node)));
  }

  private static List<String> pieces(Node node) {
    if (node instanceof ListNode l) {
      return l.items().stream().map(YamlWriter::flow).toList();
    }
    List<String> pieces = new ArrayList<>();
    ((MapNode) node).entries().forEach(e -> pieces.add(key(e.key()) + ": " + flow(e.value())));
    return pieces;
  }

  private static String bracketed(Node node, String inner) {
    return node instanceof ListNode ? "[" + inner + "]" : "{" + inner + "}";
  }

  /** Long rows of short things are filled into lines; anything else gets a line for each part. */
  private static boolean isFilled(Node node, List<String> pieces) {
    boolean words =
        !(node instanceof ListNode l) || l.items().stream().allMatch(i -> i instanceof ScalarNode);
    int most = node instanceof ListNode ? MOST_ITEM : MOST_ENTRY;
    return words && pieces.stream().allMatch(p -> p.length() <= most);
  }

  private static String filled(List<String> pieces, int column) {
    StringBuilder lines = new StringBuilder();
    int at = column;
    for (int i = 0; i < pieces.size(); i++) {
      String piece = pieces.get(i) + (i + 1 < pieces.size() ? "," : "");
      if (i > 0 && at + 1 + piece.length() > WIDTH - 1) {
        lines.append('\n').append(" ".repeat(column));
        at = column;
      } else if (i > 0) {
        lines.append(' ');
        at++;
      }
      lines.append(piece);
      at += piece.length();
    }
    return lines.toString();
  }
}
