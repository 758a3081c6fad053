package org.swathbook.cli.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.swathbook.book.Book;
import org.swathbook.catalog.ProductId;
import org.swathbook.catalog.WeedId;
import org.swathbook.cli.report.AdjuvantNeed;
import org.swathbook.cli.report.FarmOrder;
import org.swathbook.cli.report.PlannedField;
import org.swathbook.cli.report.ReportHead;
import org.swathbook.plan.Effort;
import org.swathbook.plan.FrontProgram;
import org.swathbook.plan.LiftedLimit;
import org.swathbook.plan.PlannedProgram;
import org.swathbook.plan.Refusal;
import org.swathbook.plan.Relaxation;
import org.swathbook.plan.WhyNot;
import org.swathbook.plan.WithoutPart;

/** The result of {@code plan}. */
public final class PlanJson {
  private PlanJson() {}

  public static String of(Book book, ReportHead head, List<PlannedField> plans) {
    ObjectNode root = Json.document("plan", head);
    ArrayNode fields = root.putArray("fields");
    for (PlannedField p : plans) {
      field(book, fields.addObject(), p);
    }
    growers(book, root.putArray("growers"), plans);
    return Json.write(root);
  }

  /** What the first programs of each grower's fields take, and cost with their passes. */
  private static void growers(Book book, ArrayNode growers, List<PlannedField> plans) {
    Map<String, List<PlannedField>> byGrower = new LinkedHashMap<>();
    plans.forEach(p -> byGrower.computeIfAbsent(p.field().grower(), g -> new ArrayList<>()).add(p));
    byGrower.forEach(
        (grower, of) -> {
          ObjectNode node = growers.addObject();
          node.put("grower", grower);
          ArrayNode order = node.putArray("order");
          for (FarmOrder o : FarmOrder.of(book, of)) {
            ObjectNode line = order.addObject();
            line.put("product", o.product().id().value());
            line.set("needed", Json.fixed(o.amount(), 1));
            line.put("unit", o.unit().symbol());
            line.set("cost", Json.money(o.cost()));
          }
          ArrayNode adjuvants = node.putArray("adjuvants");
          AdjuvantNeed.ofPlans(of).forEach(a -> AdjuvantJson.into(adjuvants.addObject(), a));
          node.set("cost", Json.money(FarmOrder.cost(book, of)));
        });
  }

  private static void field(Book book, ObjectNode node, PlannedField plan) {
    FieldJson.into(node, plan.field());
    plan.refusal().ifPresent(r -> refusal(book, node.putObject("refusal"), r, plan.limits()));
    node.set("houseRulesCostPerAcre", Json.money(plan.houseRulesCost()));
    ArrayNode programs = node.putArray("programs");
    ProgramJson json = new ProgramJson(book, plan.field());
    for (PlannedProgram p : plan.programs()) {
      ObjectNode program = programs.addObject();
      program.put("name", p.name());
      program.put("recommended", p.recommended());
      program.put("givesUp", p.givesUp());
      json.into(program, p.outcome(), p.judgement());
    }
    ArrayNode without = node.putArray("without");
    plan.without().forEach(w -> without(without.addObject(), w));
    ArrayNode front = node.putArray("front");
    plan.front().forEach(p -> front(front.addObject(), p));
    if (!plan.whyNot().isEmpty()) {
      ArrayNode answers = node.putArray("whyNot");
      for (WhyNot w : plan.whyNot()) {
        ObjectNode answer = answers.addObject();
        answer.put("ingredient", w.active().name());
        answer.put("inFirst", w.inFirst());
        answer.set("netPerAcre", Json.money(w.with().flatMap(p -> p.outcome().net())));
        if (w.with().isPresent()) {
          PlannedProgram with = w.with().get();
          ObjectNode program = answer.putObject("with");
          program.put("name", with.name());
          program.put("recommended", with.recommended());
          json.into(program, with.outcome(), with.judgement());
        }
        answer.put("givesUp", w.givesUp());
        answer.put("missed", w.missed());
        limits(answer.putArray("limits"), w.limits());
        answer.set("leftOut", Json.texts(w.leftOut()));
        answer.set("findings", new FindingJson(book.catalog()).findings(w.blocks()));
      }
    }
    ObjectNode search = node.putObject("search");
    search.put("effort", word(plan.search().effort()));
    search.put("options", plan.search().options());
    search.put("dates", plan.search().dates());
    search.put("labels", plan.search().labels());
    search.put("combined", plan.search().combined());
    search.put("exact", plan.search().exact());
    search.set("gap", Json.money(plan.search().gap()));
    search.set("gapOfAll", Json.money(plan.search().gapOfAll()));
    search.set("proved", Json.texts(plan.search().proved()));
    search.put("frontExact", plan.search().frontExact());
    search.put("frontPasses", plan.search().frontPasses());
    search.set("leftOut", Json.texts(plan.search().leftOut()));
    plan.millis().ifPresent(ms -> search.put("millis", ms));
  }

  private static void without(ObjectNode node, WithoutPart w) {
    node.put("pass", w.pass() + 1);
    node.put("product", w.dose().map(d -> d.product().id().value()).orElse(null));
    node.set("netChangePerAcre", Json.money(w.net()));
    node.put("weed", w.worstHit().map(WeedId::value).orElse(null));
    node.set("controlPct", Json.percent(w.controlPct()));
    node.set("controlPctWithout", Json.percent(w.controlPctWithout()));
    node.set("breaks", Json.texts(w.breaks()));
  }

  private static void front(ObjectNode node, FrontProgram p) {
    node.set("costPerAcre", Json.money(p.cost()));
    node.set("lossPerAcre", Json.money(p.loss()));
    node.set("netPerAcre", Json.money(p.net()));
    node.set("controlPctWithoutWeakest", Json.percent(p.weakestControlPct()));
    ArrayNode passes = node.putArray("passes");
    for (FrontProgram.Trip pass : p.passes()) {
      ObjectNode at = passes.addObject();
      at.put("date", pass.planned().toString());
      at.set("products", Json.texts(pass.products().stream().map(ProductId::value).toList()));
    }
    node.set("breaksHouseRules", Json.texts(p.brokenRules()));
  }

  static String word(Effort effort) {
    return effort.name().toLowerCase(Locale.ROOT);
  }

  private static void limits(ArrayNode node, List<LiftedLimit> limits) {
    for (LiftedLimit l : limits) {
      ObjectNode limit = node.addObject();
      limit.put("key", l.key());
      limit.put("limit", l.limit());
      limit.put("met", l.met());
      limit.put("best", l.best());
      limit.put("recommended", l.program().recommended());
      limit.set("netPerAcre", Json.money(l.program().outcome().net()));
      limit.set("costPerAcre", Json.money(l.program().outcome().cost()));
      limit.set("breaksHouseRules", Json.texts(l.program().judgement().brokenNames()));
    }
  }

  private static void refusal(
      Book book, ObjectNode node, Refusal refusal, List<LiftedLimit> limits) {
    Set<String> rules = new LinkedHashSet<>();
    refusal.because().forEach(f -> rules.add(f.rule().value()));
    refusal.broken().forEach(b -> rules.add(b.name()));
    node.put("ofAsked", refusal.isOfAsked());
    node.set("rules", Json.texts(rules));
    ArrayNode relaxations = node.putArray("relaxations");
    for (Relaxation r : refusal.relaxations()) {
      ObjectNode relaxation = relaxations.addObject();
      relaxation.put("rule", r.rule());
      relaxation.put("from", r.from());
      relaxation.put("to", r.to());
      relaxation.set("netPerAcre", Json.money(r.netPerAcre()));
      ObjectNode control = relaxation.putObject("controlPct");
      r.controlPct().forEach((weed, pct) -> control.set(weed.value(), Json.percent(pct)));
    }
    node.set("noHelp", Json.texts(refusal.noHelp()));
    limits(node.putArray("limits"), limits);
    node.set("findings", new FindingJson(book.catalog()).findings(refusal.because()));
  }
}
