package org.swathbook.cli.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import org.swathbook.check.CatalogImpact;
import org.swathbook.cli.report.ReportHead;
import org.swathbook.rules.Finding;

/** The result of {@code catalog impact}. */
public final class ImpactJson {
  private ImpactJson() {}

  public static String of(ReportHead head, List<CatalogImpact.Hit> hits) {
    ObjectNode root = Json.document("catalog-impact", head);
    ArrayNode array = root.putArray("hits");
    for (CatalogImpact.Hit h : hits) {
      ObjectNode node = array.addObject();
      node.put("field", h.field().id().value());
      node.put("program", h.program().orElse(null));
      node.put("application", h.application().orElse(null));
      node.put("rule", h.rule().value());
      node.put("before", word(h.before()));
      node.put("after", word(h.after()));
      node.put("message", h.after().or(h::before).map(Finding::message).orElseThrow());
    }
    return Json.write(root);
  }

  private static String word(Optional<Finding> finding) {
    return finding.map(f -> f.severity().word()).orElse("silent");
  }
}
