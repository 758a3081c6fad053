package org.swathbook.cli.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.swathbook.rules.RulePage;

/** The result of {@code rules}. */
public final class RulesJson {
  private RulesJson() {}

  public static String of(List<RulePage> pages) {
    ObjectNode root = Json.NODES.objectNode();
    root.put("format", "swathbook.rules/1");
    ArrayNode rules = root.putArray("rules");
    for (RulePage r : pages) {
      ObjectNode rule = rules.addObject();
      rule.put("id", r.id().value());
      rule.put("scope", r.scope());
      rule.put("severity", r.severity().word());
      rule.put("question", r.question());
      rule.put("trigger", r.trigger());
      rule.put("source", String.join("; ", r.sources()));
      rule.put("trips", r.trips());
      rule.put("silent", r.silent());
    }
    return Json.write(root);
  }
}
