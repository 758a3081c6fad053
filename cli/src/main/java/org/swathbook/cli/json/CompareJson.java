package org.swathbook.cli.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import org.swathbook.book.Book;
import org.swathbook.cli.report.ComparedField;
import org.swathbook.cli.report.ReportHead;
import org.swathbook.plan.compare.ComparedProgram;

/** The result of {@code plan --compare}: a plan whose field holds programs side by side. */
public final class CompareJson {
  private CompareJson() {}

  public static String of(Book book, ReportHead head, ComparedField compared) {
    ObjectNode root = Json.document("plan", head);
    ObjectNode field = root.putArray("fields").addObject();
    FieldJson.into(field, compared.field());
    field.set("notes", Json.texts(compared.notes()));
    ArrayNode programs = field.putArray("compare");
    ProgramJson json = new ProgramJson(book, compared.field());
    for (ComparedProgram p : compared.programs()) {
      ObjectNode node = programs.addObject();
      node.put("asked", p.asked());
      node.put("name", p.judged().outcome().program().name());
      node.put("recommended", p.recommended());
      node.put("givesUp", String.join("; ", p.against().givesUp()));
      node.put("gains", String.join("; ", p.against().gains()));
      node.set("notes", Json.texts(p.notes()));
      node.set("worstYearNetPerAcre", Json.money(p.judged().worstYearNet()));
      json.into(node, p.judged().outcome(), p.judged().judgement());
    }
    return Json.write(root);
  }
}
