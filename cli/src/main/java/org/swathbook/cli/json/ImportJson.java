package org.swathbook.cli.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.swathbook.cli.report.ImportedPass;
import org.swathbook.cli.report.ReportHead;

/** The result of {@code record --import}. */
public final class ImportJson {
  private ImportJson() {}

  public static String of(ReportHead head, List<ImportedPass> passes, List<String> addedColumns) {
    ObjectNode root = Json.document("record", head);
    ArrayNode all = root.putArray("imported");
    for (ImportedPass p : passes) {
      ObjectNode pass = all.addObject();
      pass.put("id", p.id());
      pass.put("field", p.field().id().value());
      pass.put("date", p.date().toString());
      ArrayNode rows = pass.putArray("rows");
      p.rows().forEach(a -> RecordJson.row(rows.addObject(), a));
      RecordJson.federal(pass.putObject("federalRecord"), p.federal(), head);
    }
    root.set("columnsAdded", Json.texts(addedColumns));
    return Json.write(root);
  }
}
