package org.swathbook.cli.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.swathbook.audit.ActiveLedger;
import org.swathbook.audit.OpenIntervals;
import org.swathbook.book.Field;
import org.swathbook.catalog.Position;
import org.swathbook.cli.report.ReportHead;

/** The ledger of {@code audit}: one object a field, active and cap. */
public final class LedgerJson {
  private LedgerJson() {}

  public static String of(ReportHead head, Map<Field, List<ActiveLedger>> ledgers) {
    ObjectNode root = Json.document("audit", head);
    ArrayNode all = root.putArray("ledger");
    ledgers.forEach((field, actives) -> into(all, field, actives));
    return Json.write(root);
  }

  static void into(ArrayNode all, Field field, List<ActiveLedger> actives) {
    actives.forEach(a -> active(all, field, a));
  }

  private static void active(ArrayNode all, Field field, ActiveLedger a) {
    if (a.caps().isEmpty()) {
      line(all.addObject(), field, a, Optional.empty());
    }
    a.caps().forEach(c -> line(all.addObject(), field, a, Optional.of(c)));
  }

  private static void line(
      ObjectNode node, Field field, ActiveLedger a, Optional<ActiveLedger.CapLine> cap) {
    node.put("field", field.id().value());
    node.put("ingredient", a.ingredient().name());
    node.put("counts", cap.map(ActiveLedger.CapLine::counts).orElse(null));
    node.put(
        "basis",
        cap.map(c -> c.sum().cap().amount().basis())
            .orElse(a.ingredient().rateBasis())
            .name()
            .toLowerCase(Locale.ROOT));
    node.put("per", cap.map(c -> c.sum().cap().per().spelling()).orElse(null));
    node.set(
        "positions",
        Json.texts(
            cap.map(c -> c.sum().cap().counts().stream().map(Position::spelling).toList())
                .orElse(List.of())));
    node.set("used", lb(cap.map(c -> c.sum().used().lbPerAcre())));
    node.set("cap", lb(cap.map(c -> c.sum().cap().amount().lbPerAcre())));
    node.set("left", lb(cap.map(c -> c.sum().left().lbPerAcre())));
    node.put("source", cap.map(ActiveLedger.CapLine::source).orElse(null));
    node.put("applications", a.made());
    node.put("applicationsLeft", a.left().isPresent() ? a.left().getAsInt() : null);
    until(node.putObject("until"), a.until());
    node.set("notKnown", Json.texts(a.notKnown()));
  }

  private static JsonNode lb(Optional<Double> lbPerAcre) {
    return Json.fixed(lbPerAcre.orElse(Double.NaN), 4);
  }

  private static void until(ObjectNode node, OpenIntervals open) {
    node.put("reentry", open.reentry().map(Object::toString).orElse(null));
    ObjectNode harvest = node.putObject("harvest");
    open.harvest()
        .forEach(
            (c, d) ->
                harvest.put(
                    c.name().toLowerCase(Locale.ROOT),
                    d.getYear() > 9999 ? "never" : d.toString()));
    node.put("repeat", open.repeat().map(Object::toString).orElse(null));
    ObjectNode next = node.putObject("nextCrop");
    open.nextCrop()
        .forEach((c, d) -> next.put(c.value(), d.getYear() > 9999 ? "never" : d.toString()));
  }
}
