package org.swathbook.cli.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import org.swathbook.audit.PassMatch;
import org.swathbook.audit.PlannedAndApplied;
import org.swathbook.audit.PlannedAndApplied.Account;
import org.swathbook.audit.PlannedAndApplied.Seen;
import org.swathbook.audit.PlannedAndApplied.Stand;
import org.swathbook.cli.report.ReportHead;

/** A program beside the journal of its season. */
public final class PlannedJson {
  private PlannedJson() {}

  public static String of(ReportHead head, PlannedAndApplied compared) {
    ObjectNode root = Json.document("audit", head);
    ObjectNode node = root.putObject("planned");
    node.put("program", compared.program().name());
    node.put("field", compared.field().id().value());
    node.put("season", compared.season());
    ArrayNode passes = node.putArray("passes");
    compared.passes().forEach(p -> pass(passes.addObject(), p));
    ArrayNode accounts = node.putArray("accounts");
    compared.accounts().forEach(a -> account(accounts.addObject(), a));
    ArrayNode seen = node.putArray("seen");
    for (Seen s : compared.seen()) {
      seen.addObject()
          .put("weed", s.weed().weed().id().value())
          .put("date", s.date().toString())
          .set("plantsPerAcre", Json.fixed(s.perAcre(), 0));
    }
    node.set("remarks", Json.texts(compared.notes()));
    return Json.write(root);
  }

  private static void pass(ObjectNode node, PassMatch p) {
    node.put("fate", p.fate().word());
    node.put("due", p.planned().map(LocalDate::toString).orElse(null));
    node.put("made", p.made().map(LocalDate::toString).orElse(null));
    node.put("application", p.application().orElse(null));
    node.put("daysLate", p.days());
    node.set("leftOut", Json.texts(p.leftOut()));
    node.set("added", Json.texts(p.added()));
    node.set("rates", Json.texts(p.rates()));
  }

  private static void account(ObjectNode node, Account a) {
    node.put("account", a.kind().words());
    node.put("years", a.years());
    node.set("costPerAcre", Json.money(a.cost()));
    node.set("netPerAcre", Json.money(a.net()));
    ArrayNode weeds = node.putArray("weeds");
    for (Stand s : a.weeds()) {
      ObjectNode weed = weeds.addObject();
      weed.put("weed", s.weed().weed().id().value());
      weed.set("controlPct", Json.percent(s.controlPct()));
      weed.set("metFewerThanTwoPct", Json.percent(s.metFewerThanTwoPct()));
      weed.set("survivorsPerAcre", Json.fixed(s.survivorsPerAcre(), 0));
    }
  }
}
