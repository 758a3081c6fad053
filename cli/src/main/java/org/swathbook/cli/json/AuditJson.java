package org.swathbook.cli.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Collection;
import java.util.List;
import org.swathbook.audit.JournalFinding;
import org.swathbook.audit.LeaningAcres;
import org.swathbook.audit.RankedSites;
import org.swathbook.audit.SeasonSites;
import org.swathbook.audit.SiteAudit;
import org.swathbook.audit.SprayedPass;
import org.swathbook.catalog.Catalog;
import org.swathbook.catalog.Site;
import org.swathbook.cli.report.ReportHead;

/** The sites of fields through the seasons of the journal: one object a field, weed and season. */
public final class AuditJson {
  private AuditJson() {}

  /** Says that a result is to follow, some seconds from now. */
  public static void begin() {
    Json.begin();
  }

  public static String of(Catalog catalog, ReportHead head, SiteAudit audit) {
    ObjectNode root = Json.document("audit", head);
    // Of a long book they are thousands, and none knows of another.
    root.putArray("fields").addAll(audit.ranked().parallelStream().map(AuditJson::row).toList());
    FindingJson json = new FindingJson(catalog);
    root.putArray("findings")
        .addAll(audit.findings().parallelStream().map(f -> finding(json, f)).toList());
    ArrayNode growers = root.putArray("growers");
    audit.growers().forEach((name, acres) -> acres(growers.addObject().put("grower", name), acres));
    acres(root, audit.acres());
    root.set("notAudited", Json.texts(audit.notAudited()));
    return Json.write(root);
  }

  private static void acres(ObjectNode node, LeaningAcres acres) {
    node.set("acresAudited", Json.fixed(acres.acres(), 1));
    node.set("acresOnOneEffectiveSitePct", Json.percent(acres.onOnePct()));
    node.set("acresOnNoEffectiveSitePct", Json.percent(acres.onNonePct()));
  }

  private static ObjectNode finding(FindingJson json, JournalFinding f) {
    ObjectNode node = Json.NODES.objectNode();
    node.put("field", f.field().id().value());
    node.put("season", f.season());
    node.put("application", f.application());
    node.put("date", f.date().toString());
    node.setAll((ObjectNode) json.findings(List.of(f.finding())).get(0));
    return node;
  }

  private static ObjectNode row(RankedSites ranked) {
    ObjectNode node = Json.NODES.objectNode();
    SeasonSites s = ranked.sites();
    ranked.rank().ifPresentOrElse(r -> node.put("rank", r), () -> node.putNull("rank"));
    node.put("field", s.field().id().value());
    node.put("weed", s.weed().weed().id().value());
    node.put("season", s.season());
    node.put("crop", s.field().crop().value());
    node.set("sitesApplied", sites(s.applied()));
    node.set("effectiveSites", sites(s.effective()));
    node.set("effectiveSiteNumber", Json.fixed(s.effectiveNumber(), 2));
    node.set("effectiveSiteNumberSimpson", Json.fixed(s.inverseSimpson(), 2));
    ArrayNode foliar = node.putArray("foliarSitesPerPass");
    ArrayNode soil = node.putArray("soilSitesPerPass");
    ArrayNode passes = node.putArray("passes");
    for (SprayedPass p : s.passes()) {
      if (p.weedStood()) {
        foliar.add(p.effectiveFoliar().size());
      } else {
        foliar.addNull();
      }
      soil.add(p.effectiveSoil().size());
      ObjectNode pass = passes.addObject();
      pass.put("application", p.id());
      pass.put("date", p.date().toString());
      pass.set("foliarSites", sites(p.effectiveFoliar()));
      pass.set("soilSites", sites(p.effectiveSoil()));
      pass.put("byResponseTable", p.byTable());
    }
    node.put("dominantSite", s.dominant().map(Site::number).orElse(null));
    node.set("dominantShare", Json.fixed(s.dominantShare(), 2));
    node.put("streakYears", ranked.streakYears());
    node.set("singleSiteExposedPct", percent(s.met().map(SeasonSites.Met::onePct)));
    ObjectNode met = node.putObject("emergenceMetPct");
    met.set("none", percent(s.met().map(SeasonSites.Met::nonePct)));
    met.set("one", percent(s.met().map(SeasonSites.Met::onePct)));
    met.set("twoOrMore", percent(s.met().map(SeasonSites.Met::twoOrMorePct)));
    ObjectNode weakest = node.putObject("weakestSite");
    weakest.put("site", s.dependence().map(d -> d.site().number()).orElse(null));
    weakest.set("controlPct", percent(s.dependence().map(SeasonSites.Dependence::controlPct)));
    weakest.set(
        "controlPctWithoutIt", percent(s.dependence().map(SeasonSites.Dependence::withoutPct)));
    node.set("siteTurnover", Json.fixed(ranked.turnover().orElse(Double.NaN), 2));
    node.put("reason", ranked.reason());
    node.set("notes", Json.texts(s.notes()));
    return node;
  }

  private static JsonNode percent(java.util.Optional<Double> pct) {
    return Json.percent(pct.orElse(Double.NaN));
  }

  private static ArrayNode sites(Collection<Site> sites) {
    ArrayNode out = Json.NODES.arrayNode();
    sites.forEach(s -> out.add(s.number()));
    return out;
  }
}
