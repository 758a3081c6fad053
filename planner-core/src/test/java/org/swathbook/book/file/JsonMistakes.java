package org.swathbook.book.file;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.swathbook.source.ListNode;
import org.swathbook.source.MapNode;
import org.swathbook.source.Node;
import org.swathbook.source.ScalarNode;

/** Documents as JSON of text alone, and every mistake of form that can be made in one. */
final class JsonMistakes {
  private static final JsonNodeFactory MAKE = JsonNodeFactory.instance;

  private final Map<String, JsonNode> found = new LinkedHashMap<>();

  private JsonMistakes() {}

  static JsonNode of(Node node) {
    if (node instanceof MapNode map) {
      ObjectNode out = MAKE.objectNode();
      map.entries().forEach(e -> out.set(e.key(), of(e.value())));
      return out;
    }
    if (node instanceof ListNode list) {
      ArrayNode out = MAKE.arrayNode();
      list.items().forEach(i -> out.add(of(i)));
      return out;
    }
    return MAKE.textNode(((ScalarNode) node).text());
  }

  /** The text with its numbers as numbers and its yes and no as truth values, as editors may. */
  static JsonNode typed(JsonNode node) {
    if (node instanceof ObjectNode map) {
      ObjectNode out = MAKE.objectNode();
      map.properties().forEach(e -> out.set(e.getKey(), typed(e.getValue())));
      return out;
    }
    if (node instanceof ArrayNode list) {
      ArrayNode out = MAKE.arrayNode();
      list.forEach(i -> out.add(typed(i)));
      return out;
    }
    String text = node.asText();
    if (text.matches("yes|no")) {
      return MAKE.booleanNode(text.equals("yes"));
    }
    return text.matches("[1-9]\\d{0,8}") ? MAKE.numberNode(Integer.parseInt(text)) : node;
  }

  /** Each document with one mistake, by what and where it is. */
  static Map<String, JsonNode> in(JsonNode document) {
    JsonMistakes mistakes = new JsonMistakes();
    mistakes.walk(document, "", change -> change);
    return mistakes.found;
  }

  /** Puts a node back into the document that it was taken from. */
  private interface Frame {
    JsonNode around(JsonNode node);
  }

  private void walk(JsonNode node, String place, Frame frame) {
    JsonNode map = MAKE.objectNode().put("nonsense", "1");
    Consumer<String> nonsense =
        kind -> found.put(kind + " " + place, frame.around(MAKE.textNode("nonsense!")));
    if (node instanceof ObjectNode keys) {
      found.put("unknown key " + place, frame.around(with(keys, "unheardOf", MAKE.textNode("1"))));
      nonsense.accept("map to value");
      for (var e : keys.properties()) {
        String key = e.getKey();
        ObjectNode without = keys.deepCopy();
        without.remove(key);
        found.put("dropped " + place + "." + key, frame.around(without));
        found.put(
            "renamed " + place + "." + key, frame.around(with(without, key + "s", e.getValue())));
        walk(e.getValue(), place + "." + key, n -> frame.around(with(keys, key, n)));
      }
    } else if (node instanceof ArrayNode items) {
      nonsense.accept("list to value");
      found.put("list to map " + place, frame.around(map));
      for (int i = 0; i < items.size(); i++) {
        int at = i;
        walk(items.get(i), place + "." + i, n -> frame.around(with(items, at, n)));
      }
    } else {
      nonsense.accept("nonsense");
      found.put("value to map " + place, frame.around(map));
    }
  }

  private static JsonNode with(ObjectNode keys, String key, JsonNode value) {
    ObjectNode out = keys.deepCopy();
    out.set(key, value);
    return out;
  }

  private static JsonNode with(ArrayNode items, int at, JsonNode value) {
    List<JsonNode> all = new ArrayList<>();
    items.forEach(all::add);
    all.set(at, value);
    return MAKE.arrayNode().addAll(all);
  }
}
