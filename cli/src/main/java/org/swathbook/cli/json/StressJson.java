package org.swathbook.cli.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.swathbook.catalog.Catalog;
import org.swathbook.measure.Money;
import org.swathbook.plan.change.JudgedChange;
import org.swathbook.season.outcome.SeasonOutcome;
import org.swathbook.season.outcome.WeedOutcome;
import org.swathbook.stress.FallenPass;
import org.swathbook.stress.Remedy;
import org.swathbook.stress.StressResult;
import org.swathbook.stress.StressedWalk;

/** What happens to a program when the season goes wrong. */
final class StressJson {
  private final FindingJson findings;
  private final SeasonOutcome plain;

  StressJson(Catalog catalog, SeasonOutcome plain) {
    this.findings = new FindingJson(catalog);
    this.plain = plain;
  }

  void into(ArrayNode array, List<StressResult> results) {
    results.forEach(r -> result(array.addObject(), r));
  }

  private void result(ObjectNode node, StressResult r) {
    node.put("name", r.name());
    node.put("what", r.title());
    if (r.whyNot().isPresent()) {
      node.put("notPut", r.whyNot().get());
      return;
    }
    node.set("notes", Json.texts(r.notes()));
    StressedWalk worst = r.worstWalk();
    walk(node, worst);
    node.set("newFindings", findings.findings(worst.breaks().findings()));
    ArrayNode missed = node.putArray("passesMissed");
    worst.fallen().forEach(f -> fallen(missed.addObject(), f));
    worst.watered().ifPresent(o -> figures(node.putObject("wateredIn"), o));
    node.put("knownFrom", r.knownFrom().map(Object::toString).orElse(null));
    ArrayNode remedies = node.putArray("remedies");
    r.remedies().forEach(x -> remedy(remedies.addObject(), x));
    ArrayNode variants = node.putArray("variants");
    r.walks().stream().filter(w -> !w.of().isEmpty()).forEach(w -> walk(variants.addObject(), w));
  }

  private void walk(ObjectNode node, StressedWalk w) {
    if (!w.of().isEmpty()) {
      node.put("of", w.of());
    }
    node.put("verdict", w.judgement().verdict().word());
    figures(node, w.outcome());
    node.set("netChangePerAcre", Json.money(change(w.outcome().net(), plain.net())));
    node.set("breaks", Json.texts(w.breaks().names()));
    w.milder().ifPresent(o -> figures(node.putObject("halfResistant"), o));
  }

  private static void figures(ObjectNode node, SeasonOutcome o) {
    drivers(node, "controlPct", o, WeedOutcome::controlPct);
    drivers(node, "worstYearControlPct", o, WeedOutcome::worstYearControlPct);
    drivers(node, "exposedEmergencePct", o, WeedOutcome::exposedPct);
    node.set("lossPerAcre", Json.money(o.loss()));
    node.set("netPerAcre", Json.money(o.net()));
  }

  /** All weeds, as everywhere else in the document. */
  private static void drivers(
      ObjectNode node, String key, SeasonOutcome o, ToDoubleFunction<WeedOutcome> value) {
    ObjectNode weeds = node.putObject(key);
    for (WeedOutcome w : o.weeds()) {
      JsonNode pct = Json.percent(value.applyAsDouble(w));
      weeds.set(w.pressure().weed().id().value(), pct);
    }
  }

  private static Optional<Money> change(Optional<Money> now, Optional<Money> before) {
    return now.flatMap(n -> before.map(n::minus));
  }

  private static void fallen(ObjectNode node, FallenPass f) {
    node.put("pass", f.pass() + 1);
    node.put("date", f.planned().toString());
    node.put("years", f.missed());
    node.put("yearsAsPlanned", f.before());
  }

  private static void remedy(ObjectNode node, Remedy remedy) {
    JudgedChange c = remedy.change();
    ChangeJson.into(node, c.change());
    node.put("verdict", c.judgement().verdict().word());
    figures(node, c.outcome());
    node.set("netGainPerAcre", Json.money(c.net()));
    node.set("addedCostPerAcre", Json.money(c.cost()));
    node.set("netGainWithoutTroublePerAcre", Json.money(remedy.netWithoutTrouble()));
    node.set("mends", Json.texts(c.mends()));
    node.set("breaks", Json.texts(c.breaks()));
    c.near()
        .ifPresentOrElse(
            n -> node.put("daysToNextPass", n.days()), () -> node.putNull("daysToNextPass"));
  }
}
