package org.swathbook.cli.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import org.swathbook.book.Book;
import org.swathbook.check.QueuedPass;
import org.swathbook.cli.report.OrderReport;
import org.swathbook.cli.report.QueueReport;
import org.swathbook.cli.report.ReportHead;
import org.swathbook.season.outcome.PassWeed;

/** The result of {@code plan --queue}. */
public final class QueueJson {
  private QueueJson() {}

  public static String of(Book book, ReportHead head, QueueReport report) {
    ObjectNode root = Json.document("queue", head);
    ArrayNode queue = root.putArray("queue");
    report.rows().forEach(r -> row(book, queue.addObject(), r));
    ArrayNode out = root.putArray("leftOut");
    for (OrderReport.LeftOut l : report.leftOut()) {
      ObjectNode node = out.addObject();
      node.set("fields", Json.texts(l.fields()));
      node.put("why", l.why());
    }
    return Json.write(root);
  }

  private static void row(Book book, ObjectNode node, QueueReport.Row row) {
    QueuedPass p = row.pass();
    boolean looked = !p.cropStage().isEmpty();
    node.put("field", row.field().id().value());
    node.set("acres", Json.fixed(row.field().acres(), 1));
    node.put("program", row.program());
    node.put("pass", p.pass() == 0 ? null : (Integer) p.pass());
    node.put("state", p.state().word());
    node.put("date", p.date().toString());
    node.set(
        "ingredients",
        Json.texts(p.mix().actives().stream().map(a -> a.ingredient().name()).distinct().toList()));
    node.put("lastDay", p.lastDay().map(Object::toString).orElse(null));
    node.put("opens", p.opens().map(Object::toString).orElse(null));
    node.set("findings", new FindingJson(book.catalog()).findings(p.why()));
    node.set("warnedToday", new FindingJson(book.catalog()).findings(p.warned()));
    node.put("cropStage", looked ? p.cropStage() : null);
    ArrayNode weeds = node.putArray("weeds");
    for (PassWeed w : p.weeds()) {
      ObjectNode weed = weeds.addObject();
      weed.put("weed", w.weed().value());
      weed.put("stands", w.stands());
      weed.set("heightInP50", Json.inches(w.p50Cm()));
      weed.set("heightInP90", Json.inches(w.p90Cm()));
    }
    node.set("sprayDays", Json.fixed(looked ? p.sprayDays() : Double.NaN, 1));
    row.hours()
        .ifPresentOrElse(
            h -> {
              ArrayNode hours = node.putArray("openHours");
              h.spans()
                  .forEach(
                      s -> {
                        ObjectNode span = hours.addObject();
                        span.put("from", s.from().toString());
                        span.put("to", s.to().toString());
                      });
            },
            () -> node.putNull("openHours"));
  }
}
