package org.swathbook.catalog.file;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.swathbook.source.ListNode;
import org.swathbook.source.MapNode;
import org.swathbook.source.Mark;
import org.swathbook.source.Node;
import org.swathbook.source.ScalarNode;

/**
 * Nodes as JSON, with their places: {@code [line, column, text]} for a value ({@code true} behind
 * it when it stood in quotes), {@code [line, column, [items]]} for a list, and {@code [line,
 * column, {key: [line, column, value]}]} for a map.
 */
final class NodeJson {
  private NodeJson() {}

  static void write(Node node, JsonGenerator out) throws IOException {
    start(node.mark(), out);
    if (node instanceof ScalarNode s) {
      out.writeString(s.text());
      if (s.quoted()) {
        out.writeBoolean(true);
      }
    } else if (node instanceof ListNode l) {
      out.writeStartArray();
      for (Node item : l.items()) {
        write(item, out);
      }
      out.writeEndArray();
    } else {
      out.writeStartObject();
      for (MapNode.Entry e : ((MapNode) node).entries()) {
        out.writeFieldName(e.key());
        start(e.keyMark(), out);
        write(e.value(), out);
        out.writeEndArray();
      }
      out.writeEndObject();
    }
    out.writeEndArray();
  }

  private static void start(Mark mark, JsonGenerator out) throws IOException {
    out.writeStartArray();
    out.writeNumber(mark.line());
    out.writeNumber(mark.column());
  }

  /**
   * The node whose array the parser's current token starts; it ends on the array's last token.
   *
   * @param file the file that the places are in
   */
  static Node read(String file, JsonParser in) throws IOException {
    Mark mark = mark(file, in);
    JsonToken token = in.nextToken();
    if (token == JsonToken.VALUE_STRING) {
      String text = in.getText();
      boolean quoted = in.nextToken() == JsonToken.VALUE_TRUE;
      if (quoted) {
        in.nextToken();
      }
      return new ScalarNode(mark, text, quoted);
    }
    Node node = token == JsonToken.START_ARRAY ? list(file, mark, in) : map(file, mark, in);
    in.nextToken();
    return node;
  }

  private static Mark mark(String file, JsonParser in) throws IOException {
    int line = in.nextIntValue(0);
    int column = in.nextIntValue(0);
    return new Mark(file, line, column);
  }

  private static ListNode list(String file, Mark mark, JsonParser in) throws IOException {
    List<Node> items = new ArrayList<>();
    while (in.nextToken() != JsonToken.END_ARRAY) {
      items.add(read(file, in));
    }
    return new ListNode(mark, items);
  }

  private static MapNode map(String file, Mark mark, JsonParser in) throws IOException {
    List<MapNode.Entry> entries = new ArrayList<>();
    while (in.nextToken() != JsonToken.END_OBJECT) {
      String key = in.currentName();
      in.nextToken();
      Mark keyMark = mark(file, in);
      in.nextToken();
      entries.add(new MapNode.Entry(key, keyMark, read(file, in)));
      in.nextToken();
    }
    return new MapNode(mark, entries);
  }
}
