package org.swathbook.cli.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.function.Function;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.check.Judgement;
import org.swathbook.cli.report.CostSplit;
import org.swathbook.cli.report.LossByYear;
import org.swathbook.season.outcome.SeasonOutcome;
import org.swathbook.season.outcome.WeedOutcome;
import org.swathbook.season.outcome.YearOutcome;

/** A walked and judged program: the same keys in a plan and as the summary of a season. */
final class ProgramJson {
  private final Book book;
  private final Field field;
  private final FindingJson findings;

  ProgramJson(Book book, Field field) {
    this.book = book;
    this.field = field;
    this.findings = new FindingJson(book.catalog());
  }

  /** Adds all keys but the name to a node. */
  void into(ObjectNode node, SeasonOutcome outcome, Judgement judgement) {
    node.put("verdict", judgement.verdict().word());
    ArrayNode passes = node.putArray("passes");
    PassJson pass = new PassJson(book, field, outcome);
    outcome.passes().forEach(p -> passes.add(pass.of(p, judgement.tanks().get(p.index()))));
    CostSplit cost = CostSplit.of(book, outcome);
    node.set("productsPerAcre", Json.money(cost.products()));
    node.set("passesPerAcre", Json.money(cost.passes()));
    node.set("costPerAcre", Json.money(outcome.cost()));
    node.set("lossPerAcre", Json.money(outcome.loss()));
    YearOutcome worst = LossByYear.worst(outcome);
    node.set("worstYearLossPerAcre", Json.money(LossByYear.of(book, field).in(worst)));
    node.put("worstYear", worst.year());
    node.set("untreatedLossPerAcre", Json.money(outcome.untreatedLoss()));
    node.set("netPerAcre", Json.money(outcome.net()));
    byWeed(node, "controlPct", outcome, w -> Json.percent(w.controlPct()));
    byWeed(node, "worstYearControlPct", outcome, w -> Json.percent(w.worstYearControlPct()));
    byWeed(node, "exposedEmergencePct", outcome, w -> Json.percent(w.exposedPct()));
    byWeed(
        node,
        "worstFifthExposedEmergencePct",
        outcome,
        w -> Json.percent(w.exposedWorstFifthPct()));
    byWeed(
        node,
        "worstYearExposedEmergencePct",
        outcome,
        w -> Json.percent(LossByYear.worstExposedPct(outcome, w.pressure().weed().id())));
    byWeed(node, "emergenceMetByNothingPct", outcome, w -> Json.percent(w.exposedToNothingPct()));
    byWeed(node, "survivorsPerAcre", outcome, ProgramJson::survivors);
    byWeed(node, "seedReturn", outcome, ProgramJson::seedReturn);
    byWeed(node, "weakestSite", outcome, ProgramJson::weakest);
    byWeed(node, "emergenceMetPct", outcome, ProgramJson::met);
    byWeed(node, "unknownActives", outcome, w -> Json.texts(w.unknownActives()));
    node.set("windowConfidencePct", Json.percent(outcome.windowConfidencePct()));
    node.set("breaksHouseRules", Json.texts(judgement.brokenNames()));
    node.set("findings", findings.findings(judgement.findings()));
    node.set("asks", findings.asks(judgement.asks()));
  }

  private static void byWeed(
      ObjectNode node, String key, SeasonOutcome outcome, Function<WeedOutcome, JsonNode> value) {
    ObjectNode weeds = node.putObject(key);
    outcome.weeds().forEach(w -> weeds.set(w.pressure().weed().id().value(), value.apply(w)));
  }

  private static JsonNode survivors(WeedOutcome w) {
    ObjectNode node = Json.NODES.objectNode();
    node.set("beforeNeededUntil", Json.fixed(w.survivorsPerAcre(), 0));
    node.set("all", Json.fixed(w.allSurvivorsPerAcre(), 0));
    return node;
  }

  /** Two digits at most: the figures are orders of magnitude. */
  private static JsonNode seedReturn(WeedOutcome w) {
    ObjectNode node = Json.NODES.objectNode();
    node.set("seedsPerM2", Json.significant(w.seedReturnPerM2(), 2));
    node.set("seedbankFactor", Json.significant(w.seedbankFactor(), 2));
    return node;
  }

  /** Null when no site works on the weed. */
  private static JsonNode weakest(WeedOutcome w) {
    if (w.weakestSite().isEmpty()) {
      return Json.NODES.nullNode();
    }
    ObjectNode node = Json.NODES.objectNode();
    node.put("site", w.weakestSite().get().number());
    node.set("controlPctWithoutIt", Json.percent(w.controlPctWithoutWeakest()));
    return node;
  }

  private static JsonNode met(WeedOutcome w) {
    ObjectNode node = Json.NODES.objectNode();
    node.set("none", Json.percent(w.metNonePct()));
    node.set("one", Json.percent(w.metOnePct()));
    node.set("twoOrMore", Json.percent(w.metTwoOrMorePct()));
    return node;
  }
}
