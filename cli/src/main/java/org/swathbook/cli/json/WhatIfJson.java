package org.swathbook.cli.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.swathbook.audit.FieldChange;
import org.swathbook.audit.FieldChange.Outcome;
import org.swathbook.audit.WhatIfResult;
import org.swathbook.cli.report.ReportHead;

/** Changes of the last season's passes and what they would have done: one object a change. */
public final class WhatIfJson {
  private WhatIfJson() {}

  public static String of(ReportHead head, List<WhatIfResult> results) {
    ObjectNode root = Json.document("audit", head);
    ArrayNode all = root.putArray("whatIf");
    for (WhatIfResult r : results) {
      ObjectNode node = all.addObject();
      node.put("change", r.change().spelling());
      node.put("words", r.change().words());
      node.put("fieldsImproved", r.count(Outcome.IMPROVED));
      node.put("fieldsNoBetter", r.count(Outcome.NO_BETTER));
      node.put("fieldsForbidden", r.count(Outcome.FORBIDDEN));
      node.put("fieldsNotNeeded", r.count(Outcome.NOT_NEEDED));
      node.put("fieldsNotTried", r.count(Outcome.NOT_TRIED));
      node.set("acresImproved", Json.fixed(r.acresImproved(), 1));
      node.set("costPerAcreImproved", Json.money(r.costPerAcreImproved()));
      node.set("cost", Json.money(r.cost()));
      ArrayNode fields = node.putArray("fields");
      r.fields().forEach(f -> field(fields.addObject(), f));
    }
    return Json.write(root);
  }

  private static void field(ObjectNode node, FieldChange f) {
    node.put("field", f.field().id().value());
    if (f.season() == 0) {
      node.putNull("season");
    } else {
      node.put("season", f.season());
    }
    node.put("outcome", f.outcome().word());
    node.set("changes", Json.texts(f.changes()));
    node.set("why", Json.texts(f.why()));
    node.set("costPerAcre", Json.money(f.costPerAcre()));
    node.set("cost", Json.money(f.costOfField()));
    ArrayNode weeds = node.putArray("weeds");
    for (FieldChange.WeedEffect e : f.weeds()) {
      ObjectNode weed = weeds.addObject();
      weed.put("weed", e.weed().weed().id().value());
      figures(weed.putObject("before"), e.before());
      figures(weed.putObject("after"), e.after());
    }
    node.set("notKnown", Json.texts(f.notKnown()));
  }

  private static void figures(ObjectNode node, FieldChange.Figures f) {
    node.set("metFewerThanTwoPct", Json.percent(f.fewerThanTwoPct()));
    node.set("controlPct", Json.percent(f.controlPct()));
    node.set("controlPctWithoutWeakest", Json.percent(f.withoutPct()));
  }
}
