package org.swathbook.cli.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import org.swathbook.catalog.review.Change;

/** The result of {@code catalog diff}. */
public final class DiffJson {
  private DiffJson() {}

  /** A missing side is null. */
  public static String of(String before, String after, List<Change> changes) {
    ObjectNode root = Json.NODES.objectNode();
    root.put("format", "swathbook.catalog-diff/1");
    root.put("from", before);
    root.put("to", after);
    ArrayNode list = root.putArray("changes");
    for (Change c : changes) {
      ObjectNode node = list.addObject();
      node.put("kind", c.kind());
      node.put("entry", c.entry());
      node.put("part", c.part());
      node.put("what", c.what());
      put(node, "before", c.before());
      put(node, "after", c.after());
      node.put("words", c.words());
    }
    return Json.write(root);
  }

  private static void put(ObjectNode node, String key, Optional<String> text) {
    text.ifPresentOrElse(t -> node.put(key, t), () -> node.putNull(key));
  }
}
