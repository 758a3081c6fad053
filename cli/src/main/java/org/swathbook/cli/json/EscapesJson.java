package org.swathbook.cli.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.swathbook.book.Field;
import org.swathbook.book.Scouting;
import org.swathbook.book.file.WatchFile;
import org.swathbook.cli.report.ReportHead;
import org.swathbook.escapes.DueLook;
import org.swathbook.escapes.EscapeReport;
import org.swathbook.escapes.RefusedRespray;
import org.swathbook.escapes.ResprayOption;
import org.swathbook.escapes.Suspicion;
import org.swathbook.escapes.WeedReading;

/** What was seen after a pass, and looks that are due. */
public final class EscapesJson {
  private EscapesJson() {}

  public static String of(
      ReportHead head, Field field, EscapeReport report, List<WatchFile.Entry> watch) {
    ObjectNode root = Json.document("escapes", head);
    root.put("field", field.id().value());
    root.put("sprayed", report.seen().sprayed().toString());
    root.put("seen", report.seen().seen().toString());
    root.put("inJournal", report.seen().inJournal());
    PassJson.mix(root.putArray("sprayedMix"), report.seen().mix().doses());
    ArrayNode weeds = root.putArray("weeds");
    report.weeds().forEach(w -> weed(weeds.addObject(), report, w));
    root.put("action", report.action().word());
    root.set("why", Json.texts(report.why()));
    root.put("lookAgain", report.lookAgain().map(Object::toString).orElse(null));
    root.set("lossPerAcre", Json.money(report.cost().lossPerAcre()));
    ArrayNode respray = root.putArray("respray");
    report.respray().forEach(o -> option(respray.addObject(), o));
    ArrayNode refused = root.putArray("refused");
    for (RefusedRespray r : report.refused()) {
      refused
          .addObject()
          .put("ingredient", r.active().name())
          .put("reason", r.reason().word())
          .put("why", r.why());
    }
    root.set("withoutSprayer", Json.texts(report.beside()));
    ArrayNode entries = root.putArray("watch");
    for (WatchFile.Entry e : watch) {
      entries
          .addObject()
          .put("field", e.field().value())
          .put("weed", e.weed().value())
          .put("site", e.site().number())
          .put("since", e.since().toString())
          .put("reason", e.reason());
    }
    return Json.write(root);
  }

  public static String due(ReportHead head, List<DueLook> looks) {
    ObjectNode root = Json.document("escapes", head);
    ArrayNode due = root.putArray("due");
    for (DueLook d : looks) {
      ObjectNode node = due.addObject();
      node.put("field", d.field().id().value());
      node.put("sprayed", d.sprayed().toString());
      node.put("from", d.from().toString());
      node.put("to", d.to().toString());
      node.put("when", d.when().word());
      node.set("ingredients", Json.texts(d.actives()));
      ArrayNode scouted = node.putArray("scouted");
      for (Scouting s : d.scouted()) {
        scouted
            .addObject()
            .put("date", s.date().toString())
            .put("weed", s.weed().orElseThrow().value())
            .set("plantsPerM2", Json.fixed(s.count().orElseThrow().perM2(), 2));
      }
    }
    return Json.write(root);
  }

  private static void weed(ObjectNode node, EscapeReport report, WeedReading w) {
    node.put("weed", w.weed().value());
    node.putObject("reading")
        .put("dead", w.dead())
        .put("dying", w.dying())
        .put("undecided", w.undecided())
        .put("recovering", w.recovering())
        .put("missed", w.missed());
    node.set("controlledPct", Json.percent(100 * w.controlled().share()));
    node.set("controlledLowPct", Json.percent(100 * w.controlled().low()));
    node.set("controlledHighPct", Json.percent(100 * w.controlled().high()));
    ArrayNode sites = node.putArray("sites");
    w.sites().forEach(s -> sites.add(s.number()));
    node.put("judgedFrom", w.judgedFrom().toString());
    node.put("deadBy", w.deadBy().toString());
    node.put("tooEarly", w.tooEarly());
    node.putObject("weatherSince")
        .put("days", w.since().days())
        .put("known", w.since().known())
        .set("warmDays", Json.fixed(w.since().warm(), 1));
    node.set(
        "seedsPerM2", Json.significant(report.cost().seedsPerM2().getOrDefault(w.weed(), 0.0), 1));
    node.set("lookFor", Json.texts(w.yetToTell()));
    Suspicion s = w.suspicion();
    ObjectNode suspicion = node.putObject("suspicion");
    suspicion.put("level", s.level().word());
    suspicion.set("for", Json.texts(s.evidenceFor()));
    suspicion.set("against", Json.texts(s.evidenceAgainst()));
    suspicion.set("notKnown", Json.texts(s.unknown()));
  }

  private static void option(ObjectNode node, ResprayOption o) {
    PassJson.mix(node.putArray("mix"), o.doses());
    node.put("failedSite", o.failedSite());
    ArrayNode effective = node.putArray("effectiveSites");
    o.effective().forEach(s -> effective.add(s.number()));
    node.put("earliest", o.earliest().toString());
    node.put("latest", o.latest().toString());
    node.set("heightIn", Json.inches(o.heightCm()));
    node.set("tooTall", Json.texts(o.tooTall()));
    node.set("controlPct", Json.percent(o.controlPct()));
    node.set("costPerAcre", Json.money(o.costPerAcre()));
    node.set("savesPerAcre", Json.money(o.savesPerAcre()));
    node.put("published", o.published().orElse(null));
  }
}
