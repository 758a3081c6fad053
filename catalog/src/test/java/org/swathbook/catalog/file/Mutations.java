package org.swathbook.catalog.file;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.Function;

/** Mistakes made in a document, one at a time. */
final class Mutations {
  private static final JsonNodeFactory MAKE = JsonNodeFactory.instance;

  enum Kind {
    RENAMED_KEY,
    DROPPED_KEY,
    UNKNOWN_KEY,
    SCALAR_NONSENSE,
    SCALAR_TO_MAP,
    LIST_TO_SCALAR,
    LIST_TO_MAP,
    MAP_TO_SCALAR,
    MAP_TO_LIST
  }

  /**
   * A document with one mistake.
   *
   * @param place keys and indexes that lead to it; for keys the map that has or had them
   */
  record Mutant(Kind kind, List<String> place, JsonNode document) {
    @Override
    public String toString() {
      return kind + " at " + String.join(".", place);
    }
  }

  private record Plan(Kind kind, List<String> place, Function<JsonNode, JsonNode> change) {}

  private Mutations() {}

  /** So many mistakes, chosen by the seed; all when there are no more. */
  static List<Mutant> of(JsonNode document, int most, long seed) {
    List<Plan> plans = new ArrayList<>();
    plan(document, List.of(), plans);
    Collections.shuffle(plans, new Random(seed));
    return plans.stream()
        .limit(most)
        .map(p -> new Mutant(p.kind(), p.place(), changed(document, p.place(), 0, p.change())))
        .toList();
  }

  private static void plan(JsonNode node, List<String> place, List<Plan> plans) {
    JsonNode nonsense = MAKE.textNode("nonsense!");
    JsonNode map = MAKE.objectNode().put("nonsense", "1");
    if (node instanceof ObjectNode keys) {
      plans.add(new Plan(Kind.UNKNOWN_KEY, place, n -> withKey(n, "unheardOf")));
      if (!place.isEmpty()) {
        plans.add(new Plan(Kind.MAP_TO_SCALAR, place, n -> nonsense));
        plans.add(new Plan(Kind.MAP_TO_LIST, place, n -> MAKE.arrayNode().add(nonsense)));
      }
      keys.properties()
          .forEach(
              e -> {
                String key = e.getKey();
                plans.add(new Plan(Kind.DROPPED_KEY, place, n -> renamed(n, key, "")));
                plans.add(new Plan(Kind.RENAMED_KEY, place, n -> renamed(n, key, key + "s")));
                plan(e.getValue(), then(place, key), plans);
              });
    } else if (node instanceof ArrayNode items) {
      plans.add(new Plan(Kind.LIST_TO_SCALAR, place, n -> nonsense));
      plans.add(new Plan(Kind.LIST_TO_MAP, place, n -> map));
      for (int i = 0; i < items.size(); i++) {
        plan(items.get(i), then(place, Integer.toString(i)), plans);
      }
    } else {
      plans.add(new Plan(Kind.SCALAR_NONSENSE, place, n -> nonsense));
      plans.add(new Plan(Kind.SCALAR_TO_MAP, place, n -> map));
    }
  }

  private static List<String> then(List<String> place, String step) {
    List<String> more = new ArrayList<>(place);
    more.add(step);
    return List.copyOf(more);
  }

  private static JsonNode withKey(JsonNode map, String key) {
    return ((ObjectNode) map.deepCopy()).put(key, "1");
  }

  /** The keys in their order, one of them renamed or, with an empty name, left out. */
  private static JsonNode renamed(JsonNode map, String key, String name) {
    ObjectNode out = MAKE.objectNode();
    for (var e : map.properties()) {
      String now = e.getKey().equals(key) ? name : e.getKey();
      if (!now.isEmpty()) {
        out.set(now, e.getValue());
      }
    }
    return out;
  }

  private static JsonNode changed(
      JsonNode node, List<String> place, int step, Function<JsonNode, JsonNode> change) {
    if (step == place.size()) {
      return change.apply(node);
    }
    if (node instanceof ObjectNode map) {
      ObjectNode out = MAKE.objectNode();
      map.properties()
          .forEach(
              e ->
                  out.set(
                      e.getKey(),
                      e.getKey().equals(place.get(step))
                          ? changed(e.getValue(), place, step + 1, change)
                          : e.getValue()));
      return out;
    }
    ArrayNode out = MAKE.arrayNode();
    for (int i = 0; i < node.size(); i++) {
      boolean here = i == Integer.parseInt(place.get(step));
      out.add(here ? changed(node.get(i), place, step + 1, change) : node.get(i));
    }
    return out;
  }
}
