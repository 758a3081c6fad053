package org.swathbook.catalog.file;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.swathbook.source.ListNode;
import org.swathbook.source.MapNode;
import org.swathbook.source.Node;
import org.swathbook.source.ScalarNode;

/** Nodes as JSON whose every value is text, and the readings that editors make of such text. */
final class PlainJson {
  private static final JsonNodeFactory MAKE = JsonNodeFactory.instance;

  /** How YAML processors take a plain scalar. */
  enum Reading {
    /** As this program does. */
    TEXT,
    /** YAML 1.2, core schema: numbers, true and false. */
    CORE,
    /** YAML 1.1: yes and no are truth values too. */
    OLD
  }

  private PlainJson() {}

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

  /** JSON is YAML too, so that readers of YAML take it. */
  static byte[] bytes(JsonNode node) {
    return node.toString().getBytes(StandardCharsets.UTF_8);
  }

  static JsonNode read(JsonNode node, Reading reading) {
    if (node instanceof ObjectNode map) {
      ObjectNode out = MAKE.objectNode();
      map.properties().forEach(e -> out.set(e.getKey(), read(e.getValue(), reading)));
      return out;
    }
    if (node instanceof ArrayNode list) {
      ArrayNode out = MAKE.arrayNode();
      list.forEach(i -> out.add(read(i, reading)));
      return out;
    }
    return scalar(node.asText(), reading);
  }

  private static JsonNode scalar(String text, Reading reading) {
    if (reading == Reading.TEXT) {
      return MAKE.textNode(text);
    }
    if (List.of("true", "false").contains(text)) {
      return MAKE.booleanNode(text.equals("true"));
    }
    if (reading == Reading.OLD && List.of("yes", "no", "Yes", "No", "YES", "NO").contains(text)) {
      return MAKE.booleanNode(text.equalsIgnoreCase("yes"));
    }
    if (text.matches("[-+]?(0|[1-9][0-9]{0,8})")) {
      return MAKE.numberNode(Integer.parseInt(text));
    }
    if (text.matches("[-+]?[0-9]{1,9}?\\.[0-9]{1,9}|\\.[0-9]{1,9}")) {
      return MAKE.numberNode(Double.parseDouble(text));
    }
    return MAKE.textNode(text);
  }
}
