package org.swathbook.cli.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.swathbook.book.Book;
import org.swathbook.cli.report.KeptField;
import org.swathbook.cli.report.ReportHead;
import org.swathbook.plan.Refusal;
import org.swathbook.plan.compare.ComparedProgram;
import org.swathbook.plan.keep.Kept;
import org.swathbook.plan.keep.KeptProgram;
import org.swathbook.plan.keep.KeptWithout;

/** The result of {@code plan --keep}: a plan whose first programs are a written one, changed. */
public final class KeepJson {
  private final ProgramJson program;
  private final FindingJson findings;

  private KeepJson(ProgramJson program, FindingJson findings) {
    this.program = program;
    this.findings = findings;
  }

  public static String of(Book book, ReportHead head, KeptField field) {
    ObjectNode root = Json.document("plan", head);
    ObjectNode node = root.putArray("fields").addObject();
    FieldJson.into(node, field.field());
    new KeepJson(new ProgramJson(book, field.field()), new FindingJson(book.catalog()))
        .into(node, field);
    return Json.write(root);
  }

  private void into(ObjectNode node, KeptField field) {
    Kept kept = field.kept();
    ObjectNode keep = node.putObject("keep");
    keep.put("program", field.asked());
    keep.put("needsNothing", kept.needsNothing());
    keep.set("notes", Json.texts(kept.notes()));
    keep.set("wanting", Json.texts(kept.wanting()));
    keep.set("findings", findings.findings(kept.noPlan().map(Refusal::because).orElse(List.of())));
    ArrayNode without = keep.putArray("without");
    for (KeptWithout w : field.without()) {
      ObjectNode limit = without.addObject();
      limit.put("key", w.key());
      limit.put("limit", w.limit());
      limit.put("thingsChanged", w.program().size());
      limit.set("netPerAcre", Json.money(w.program().judged().outcome().net()));
    }
    keep.put("tried", kept.tried());
    keep.put("effort", PlanJson.word(field.effort()));
    ObjectNode written = keep.putObject("written");
    judged(written, kept.written().name(), kept.written().judged());
    ArrayNode programs = node.putArray("programs");
    kept.programs().forEach(p -> program(programs.addObject(), p));
    kept.anew()
        .ifPresent(
            p -> {
              ObjectNode anew = keep.putObject("anew");
              anew.put("name", p.name());
              anew.put("recommended", p.recommended());
              program.into(anew, p.outcome(), p.judgement());
            });
  }

  private void program(ObjectNode node, KeptProgram p) {
    node.put("name", p.name());
    node.put("recommended", p.meetsHouseRules());
    node.put("thingsChanged", p.size());
    ArrayNode changes = node.putArray("changes");
    p.changes().forEach(c -> ChangeJson.into(changes.addObject(), c));
    node.put("givesUp", String.join("; ", p.against().givesUp()));
    node.put("gains", String.join("; ", p.against().gains()));
    node.set("newlyBroken", Json.texts(p.newlyBroken()));
    node.set("worstYearNetPerAcre", Json.money(p.judged().worstYearNet()));
    program.into(node, p.judged().outcome(), p.judged().judgement());
  }

  private void judged(ObjectNode node, String name, ComparedProgram.Judged j) {
    node.put("name", name);
    node.set("worstYearNetPerAcre", Json.money(j.worstYearNet()));
    program.into(node, j.outcome(), j.judgement());
  }
}
