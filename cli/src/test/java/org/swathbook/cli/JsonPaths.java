package org.swathbook.cli;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * The keys of JSON documents as {@code object.key}: every kind of object has a name of its own,
 * whether a plan or a season holds it, and maps by weed or station have {@code WEED} and {@code
 * STATION} for a key.
 */
final class JsonPaths {
  /** Which kind of object lies under a key, by {@code object.key} or by the key alone. */
  private static final Map<String, String> KINDS =
      Map.ofEntries(
          Map.entry("fields", "field"),
          Map.entry("programs", "program"),
          Map.entry("compare", "program"),
          Map.entry("without", "without"),
          Map.entry("front", "frontProgram"),
          Map.entry("frontProgram.passes", "frontPass"),
          Map.entry("keep", "keep"),
          Map.entry("keep.written", "program"),
          Map.entry("keep.anew", "program"),
          Map.entry("keep.without", "keptWithout"),
          Map.entry("program.changes", "change"),
          Map.entry("change.products", "changeProduct"),
          Map.entry("summary", "program"),
          Map.entry("program.passes", "pass"),
          Map.entry("year.passes", "yearPass"),
          Map.entry("mix", "dose"),
          Map.entry("adjuvants", "adjuvant"),
          Map.entry("adjuvantsUnmet", "unmetAdjuvant"),
          Map.entry("findings", "finding"),
          Map.entry("asks", "ask"),
          Map.entry("about", "about"),
          Map.entry("refusal", "refusal"),
          Map.entry("relaxations", "relaxation"),
          Map.entry("limits", "limit"),
          Map.entry("search", "search"),
          Map.entry("whyNot", "whyNot"),
          Map.entry("whyNot.with", "program"),
          Map.entry("plan.growers", "farm"),
          Map.entry("farm.order", "farmProduct"),
          Map.entry("years", "year"),
          Map.entry("yearPass.weeds", "yearPassWeed"),
          Map.entry("year.layers", "layer"),
          Map.entry("gaps", "gap"),
          Map.entry("season.calendar", "calendar"),
          Map.entry("calendar.stages", "stageDates"),
          Map.entry("calendar.emergence", "emergence"),
          Map.entry("emergence.weeks", "emergenceWeek"),
          Map.entry("calendar.windows", "window"),
          Map.entry("window.open", "openDays"),
          Map.entry("season.stress", "stress"),
          Map.entry("stress.newFindings", "finding"),
          Map.entry("stress.passesMissed", "passMissed"),
          Map.entry("stress.remedies", "remedy"),
          Map.entry("stress.variants", "variant"),
          Map.entry("stress.wateredIn", "wateredIn"),
          Map.entry("halfResistant", "halfResistant"),
          Map.entry("check.mix", "job"),
          Map.entry("check.rainFree", "rainFree"),
          Map.entry("job.products", "dose"),
          Map.entry("remedyMix.products", "dose"),
          Map.entry("remedyMix", "remedyMix"),
          Map.entry("met", "met"),
          Map.entry("met.weeds", "metWeed"),
          Map.entry("load.mix", "job"),
          Map.entry("load.loads", "tankLoad"),
          Map.entry("load.together", "tankLoad"),
          Map.entry("tankLoad.products", "loadedProduct"),
          Map.entry("tankLoad.adjuvants", "loadedAdjuvant"),
          Map.entry("load.order", "mixingStep"),
          Map.entry("loadOrder.order", "orderedLoad"),
          Map.entry("load.water", "waterTreatment"),
          Map.entry("load.jarTest", "jarTest"),
          Map.entry("jarTest.portions", "jarPortion"),
          Map.entry("load.cleanOut", "cleanOut"),
          Map.entry("cleanOut.before", "cleanOutBefore"),
          Map.entry("cleanOut.after", "cleanOutAfter"),
          Map.entry("actives", "cleanOutActive"),
          Map.entry("audit.ledger", "ledgerLine"),
          Map.entry("checkProgram.ledger", "ledgerLine"),
          Map.entry("checkProgram.sharedSites", "sharedSite"),
          Map.entry("sharedSite.uses", "siteUse"),
          Map.entry("auditSites.fields", "seasonSites"),
          Map.entry("seasonSites.passes", "sprayedPass"),
          Map.entry("auditSites.findings", "journalFinding"),
          Map.entry("auditSites.growers", "growerAcres"),
          Map.entry("auditPlanned.planned", "plannedAndApplied"),
          Map.entry("plannedAndApplied.passes", "passMatch"),
          Map.entry("plannedAndApplied.accounts", "account"),
          Map.entry("account.weeds", "stand"),
          Map.entry("plannedAndApplied.seen", "countedWeed"),
          Map.entry("auditWhatIf.whatIf", "triedChange"),
          Map.entry("triedChange.fields", "fieldChange"),
          Map.entry("fieldChange.weeds", "weedEffect"),
          Map.entry("ledgerLine.until", "openUntil"),
          Map.entry("escapes.sprayedMix", "dose"),
          Map.entry("escapes.weeds", "escapedWeed"),
          Map.entry("escapedWeed.reading", "reading"),
          Map.entry("escapedWeed.suspicion", "suspicion"),
          Map.entry("escapes.respray", "respray"),
          Map.entry("escapes.refused", "refusedRespray"),
          Map.entry("escapes.watch", "watchRow"),
          Map.entry("escapesDue.due", "dueLook"),
          Map.entry("dueLook.scouted", "scoutedCount"),
          Map.entry("escapedWeed.weatherSince", "weatherSince"),
          Map.entry("record.rows", "recordedRow"),
          Map.entry("queue.queue", "queuedPass"),
          Map.entry("queuedPass.weeds", "queuedWeed"),
          Map.entry("queuedPass.openHours", "openSpan"),
          Map.entry("queue.leftOut", "leftOut"),
          Map.entry("order.fields", "orderedField"),
          Map.entry("order.leftOut", "leftOut"),
          Map.entry("order.lines", "orderLine"),
          Map.entry("order.pooled", "orderLine"),
          Map.entry("order.totals", "orderTotal"),
          Map.entry("order.adjuvants", "adjuvantNeed"),
          Map.entry("farm.adjuvants", "adjuvantNeed"),
          Map.entry("order.tooOld", "tooOld"),
          Map.entry("order.substitutes", "inItsPlace"),
          Map.entry("inItsPlace.instead", "substitute"),
          Map.entry("substitute.findings", "finding"),
          Map.entry("federalRecord", "federalRecord"),
          Map.entry("recordImport.imported", "importedPass"),
          Map.entry("importedPass.rows", "recordedRow"),
          Map.entry("rules.rules", "rule"));

  private final Set<String> paths = new TreeSet<>();

  /** The keys of documents, each with the name of its command. */
  static Set<String> of(Map<String, String> documents) {
    JsonPaths all = new JsonPaths();
    documents.forEach(
        (command, text) -> {
          try {
            all.object(command, new ObjectMapper().readTree(text));
          } catch (JsonProcessingException e) {
            throw new AssertionError(command + " is no JSON", e);
          }
        });
    return all.paths;
  }

  private void object(String kind, JsonNode node) {
    node.fieldNames().forEachRemaining(key -> value(kind, key, node.get(key)));
  }

  private void value(String kind, String key, JsonNode node) {
    String path = kind + "." + named(kind, key);
    paths.add(path);
    String child = KINDS.getOrDefault(kind + "." + key, KINDS.getOrDefault(key, path));
    if (node.isObject()) {
      object(child, node);
    }
    for (JsonNode item : node) {
      if (node.isArray() && item.isObject()) {
        object(child, item);
      }
    }
  }

  private static String named(String kind, String key) {
    if (kind.equals("openUntil.harvest")) {
      return "HARVEST";
    }
    if (kind.equals("openUntil.nextCrop")) {
      return "CROP";
    }
    return kind.endsWith(".weatherYears") ? "STATION" : key.matches("[A-Z]{5}") ? "WEED" : key;
  }
}
