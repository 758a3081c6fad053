package org.swathbook.cli.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.swathbook.catalog.Catalog;
import org.swathbook.rules.About;
import org.swathbook.rules.Ask;
import org.swathbook.rules.Finding;

/** Findings and the rows of what is not known. */
final class FindingJson {
  private final Catalog catalog;

  FindingJson(Catalog catalog) {
    this.catalog = catalog;
  }

  ArrayNode findings(List<Finding> findings) {
    ArrayNode all = Json.NODES.arrayNode();
    for (Finding f : findings) {
      ObjectNode node = all.addObject();
      node.put("rule", f.rule().value());
      node.put("severity", f.severity().word());
      node.put("message", f.message());
      node.put("limit", f.limit());
      node.put("actual", f.actual());
      node.put("source", f.source());
      node.put("remedy", f.remedy());
      node.set("about", about(f.about()));
    }
    return all;
  }

  ArrayNode asks(List<Ask> asks) {
    ArrayNode all = Json.NODES.arrayNode();
    for (Ask a : asks) {
      ObjectNode node = all.addObject();
      node.put("rule", a.rule().value());
      node.put("what", a.what());
      node.put("where", a.where());
      node.set("about", about(a.about()));
    }
    return all;
  }

  /** Only what the finding is about; passes count from 1. */
  private ObjectNode about(About about) {
    ObjectNode node = Json.NODES.objectNode();
    about.ingredient().ifPresent(i -> node.put("ingredient", catalog.ingredient(i).name()));
    about.product().ifPresent(p -> node.put("product", p.value()));
    about.weed().ifPresent(w -> node.put("weed", w.value()));
    about.pass().ifPresent(p -> node.put("pass", p + 1));
    about.neighbor().ifPresent(n -> node.put("neighbor", n));
    return node;
  }
}
