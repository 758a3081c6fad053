package org.swathbook.cli.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.swathbook.book.Book;
import org.swathbook.catalog.ProductId;
import org.swathbook.cli.report.OrderReport;
import org.swathbook.cli.report.OrderedField;
import org.swathbook.cli.report.ReportHead;
import org.swathbook.cli.report.SubstituteWords;
import org.swathbook.plan.change.JudgedChange;
import org.swathbook.plan.change.OwnWork;
import org.swathbook.program.Dose;
import org.swathbook.season.outcome.WeedOutcome;
import org.swathbook.supply.OrderLine;

/** The result of {@code order}. */
public final class OrderJson {
  private OrderJson() {}

  public static String of(Book book, ReportHead head, OrderReport report) {
    ObjectNode root = Json.document("order", head);
    ArrayNode fields = root.putArray("fields");
    for (OrderedField f : report.fields()) {
      ObjectNode node = fields.addObject();
      node.put("field", f.field().id().value());
      node.put("grower", f.field().grower());
      node.set("acres", Json.fixed(f.field().acres(), 1));
      node.put("program", f.program());
      node.put("verdict", f.verdict().word());
      node.set(
          "restrictedUse", Json.texts(f.restrictedUse().stream().map(ProductId::value).toList()));
    }
    ArrayNode out = root.putArray("leftOut");
    for (OrderReport.LeftOut l : report.leftOut()) {
      ObjectNode node = out.addObject();
      node.set("fields", Json.texts(l.fields()));
      node.put("why", l.why());
    }
    ArrayNode lines = root.putArray("lines");
    ArrayNode totals = root.putArray("totals");
    report
        .order()
        .byGrower()
        .forEach(
            (grower, of) -> {
              of.forEach(l -> line(lines.addObject(), grower, l));
              totals(totals.addObject(), grower, of, report.acres(grower));
            });
    ArrayNode pooled = root.putArray("pooled");
    report.order().pooled().forEach(l -> line(pooled.addObject(), null, l));
    totals(
        totals.addObject(),
        null,
        report.order().pooled(),
        report.fields().stream().mapToDouble(f -> f.field().acres()).sum());
    ArrayNode adjuvants = root.putArray("adjuvants");
    report.adjuvants().forEach(a -> AdjuvantJson.into(adjuvants.addObject(), a));
    ArrayNode tooOld = root.putArray("tooOld");
    report
        .order()
        .unfit()
        .forEach(
            u -> {
              ObjectNode node = tooOld.addObject();
              node.put("product", u.stock().product().value());
              node.put("grower", u.stock().grower().orElse(null));
              node.put("amount", u.stock().amount().toString());
              node.put("goodUntil", u.stock().goodUntil().map(Object::toString).orElse(null));
              node.put("field", u.field().value());
              node.put("pass", u.date().toString());
            });
    if (report.substitutesAsked()) {
      substitutes(book, root.putArray("substitutes"), report);
    }
    return Json.write(root);
  }

  private static void line(ObjectNode node, @Nullable String grower, OrderLine l) {
    node.put("grower", grower);
    node.put("product", l.product().id().value());
    node.set("needed", Json.fixed(l.needed(), 3));
    node.put("unit", l.unit().symbol());
    node.set("onHand", Json.fixed(l.onHand(), 3));
    node.set("toBuy", Json.fixed(l.toBuy(), 3));
    node.put("packages", l.packages().isPresent() ? (Long) l.packages().getAsLong() : null);
    node.set(
        "packageSize", Json.fixed(l.packageSize().map(q -> q.in(l.unit())).orElse(Double.NaN), 3));
    node.set("leftOver", Json.fixed(l.leftOver(), 3));
    node.set(
        "pricePerUnit",
        Json.fixed(l.price().map(p -> p.dollarsPer(l.unit())).orElse(Double.NaN), 2));
    node.set("cost", Json.money(l.cost()));
    node.set("leftOverWorth", Json.money(l.worthOfLeftOver()));
  }

  private static void totals(
      ObjectNode node, @Nullable String grower, List<OrderLine> lines, double acres) {
    OrderReport.Totals totals = OrderReport.totals(lines);
    node.put("grower", grower);
    node.set("acres", Json.fixed(acres, 1));
    node.set("cost", Json.money(totals.cost()));
    node.set("productsPerAcre", Json.fixed(totals.worthOfNeeded().dollars() / acres, 2));
    node.set("unpriced", Json.texts(totals.unpriced()));
  }

  private static void substitutes(Book book, ArrayNode all, OrderReport report) {
    for (OrderedField f : report.fields()) {
      for (OrderedField.InItsPlace s : f.substitutes()) {
        ObjectNode node = all.addObject();
        node.put("field", f.field().id().value());
        node.put("pass", s.pass());
        node.put("product", s.out().product().id().value());
        node.put("failing", s.failing().map(OwnWork::words).orElse(null));
        ArrayNode changes = node.putArray("instead");
        s.changes().forEach(c -> change(book, changes.addObject(), f, c));
      }
    }
  }

  private static void change(Book book, ObjectNode node, OrderedField f, JudgedChange c) {
    Dose in = c.change().in().get(0);
    node.put("product", in.product().id().value());
    node.set("rate", Json.fixed(in.rate().amount(), 4));
    node.put("unit", in.rate().unitText());
    node.set("costPerAcre", Json.money(c.cost()));
    node.set("netPerAcre", Json.money(c.net()));
    node.put("verdict", c.judgement().verdict().word());
    ObjectNode control = node.putObject("controlPct");
    for (WeedOutcome w : f.outcome().weeds()) {
      control.set(
          w.pressure().weed().id().value(),
          Json.percent(c.outcome().weed(w.pressure().weed().id()).controlPct()));
    }
    node.set("breaksHouseRules", Json.texts(c.breaks()));
    node.set("findings", new FindingJson(book.catalog()).findings(SubstituteWords.findings(c)));
  }
}
