package org.swathbook.cli.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;
import org.swathbook.book.Application;
import org.swathbook.book.Book;
import org.swathbook.book.FederalRecord;
import org.swathbook.cli.report.RecordedPass;
import org.swathbook.cli.report.ReportHead;
import org.swathbook.measure.Quantity;
import org.swathbook.measure.Rate;
import org.swathbook.program.Dose;

/** The result of {@code record}. */
public final class RecordJson {
  private RecordJson() {}

  public static String of(Book book, ReportHead head, RecordedPass pass) {
    ObjectNode root = Json.document("record", head);
    FieldJson.into(root, pass.field());
    root.put("id", pass.written().ids().get(0));
    root.set("written", Json.texts(pass.written().keys()));
    root.put("date", pass.date().toString());
    ArrayNode rows = root.putArray("rows");
    pass.written().rows().forEach(a -> row(rows.addObject(), a));
    root.set("columnsAdded", Json.texts(pass.written().addedColumns()));
    federal(root.putObject("federalRecord"), pass.federal(), head);
    FindingJson findings = new FindingJson(book.catalog());
    root.put("verdict", pass.judgement().map(j -> j.verdict().word()).orElse(null));
    pass.judgement()
        .ifPresent(
            j -> {
              root.set("findings", findings.findings(j.findings()));
              root.set("asks", findings.asks(j.asks()));
            });
    return Json.write(root);
  }

  static void federal(ObjectNode node, FederalRecord record, ReportHead head) {
    node.set("restricted", Json.texts(record.restricted()));
    node.set("restrictedUnknown", Json.texts(record.unknown()));
    node.set("missing", Json.texts(record.missing()));
    node.put("due", record.due().toString());
    node.put("daysLeft", record.daysLeft(head.today()));
  }

  static void row(ObjectNode node, Application a) {
    Dose d = a.dose();
    Rate rate = d.named() ? d.actives().get(0).rate() : d.rate();
    node.put("line", a.line());
    node.put("product", d.named() ? null : d.product().id().value());
    node.set(
        "ingredients", Json.texts(d.actives().stream().map(x -> x.ingredient().name()).toList()));
    node.set("rate", Json.significant(rate.amount(), 6));
    node.put("unit", rate.unitText());
    node.set("acres", Json.fixed(a.acres().orElse(Double.NaN), 2));
    Optional<Quantity> total = RecordedPass.total(a);
    node.set("total", Json.significant(total.map(Quantity::value).orElse(Double.NaN), 6));
    node.put("totalUnit", total.map(q -> q.unit().symbol()).orElse(null));
  }
}
