package org.swathbook.cli.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.util.List;
import org.swathbook.catalog.review.Remark;

/** The result of {@code catalog lint}. */
public final class LintJson {
  private LintJson() {}

  /** Errors first. */
  public static String of(LocalDate today, List<Remark> remarks) {
    ObjectNode root = Json.NODES.objectNode();
    root.put("format", "swathbook.catalog-lint/1");
    root.put("today", today.toString());
    ArrayNode problems = root.putArray("problems");
    for (Remark r : remarks) {
      ObjectNode node = problems.addObject();
      node.put("file", r.problem().mark().file());
      node.put("line", r.problem().mark().line());
      node.put("column", r.problem().mark().column());
      node.put("severity", r.severity().word());
      node.put("what", r.problem().what());
      node.put("right", r.problem().right());
    }
    return Json.write(root);
  }
}
