package org.swathbook.cli.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.catalog.ProductId;
import org.swathbook.catalog.ProtectiveItem;
import org.swathbook.check.JudgedMix;
import org.swathbook.cli.report.LoadWords;
import org.swathbook.cli.report.ReportHead;
import org.swathbook.measure.Quantity;
import org.swathbook.program.Carrier;
import org.swathbook.tank.LoadSheet;
import org.swathbook.tank.LoadedAdjuvant;
import org.swathbook.tank.LoadedProduct;
import org.swathbook.tank.MixingStep;
import org.swathbook.tank.PouredAmount;
import org.swathbook.tank.ProtectiveEquipment;
import org.swathbook.tank.TankLoad;

/** The result of {@code load}. */
public final class LoadJson {
  private final ObjectNode root;
  private final LoadSheet sheet;

  private LoadJson(ObjectNode root, LoadSheet sheet) {
    this.root = root;
    this.sheet = sheet;
  }

  /**
   * @param sheet empty for a blocked tank: then the verdict is all
   */
  public static String of(
      Book book, ReportHead head, Field field, JudgedMix judged, Optional<LoadSheet> sheet) {
    ObjectNode root = Json.document("load", head);
    FieldJson.into(root, field);
    root.set("fieldAcres", Json.fixed(field.acres(), 1));
    root.put("verdict", judged.judgement().verdict().word());
    FindingJson findings = new FindingJson(book.catalog());
    root.set("findings", findings.findings(judged.judgement().findings()));
    root.set("asks", findings.asks(judged.judgement().asks()));
    JobJson.into(root.putObject("mix"), judged.job());
    sheet.ifPresent(s -> new LoadJson(root, s).body());
    return Json.write(root);
  }

  private void body() {
    root.set("acres", Json.fixed(sheet.acres(), 1));
    root.set("gallonsPerAcre", Json.fixed(sheet.gallonsPerAcre(), 1));
    root.set("tankGallons", Json.fixed(sheet.tankGallons(), 1));
    root.put("carrier", sheet.job().carrier().liquid().spelling());
    root.put("split", LoadWords.way(sheet.split().way()));
    root.put("splitWords", LoadWords.split(sheet));
    ArrayNode loads = root.putArray("loads");
    sheet.loads().forEach(l -> load(loads.addObject(), l));
    load(root.putObject("together"), sheet.together());
    order();
    LoadFactsJson.water(root.putObject("water"), sheet.water());
    LoadFactsJson.jar(root.putObject("jarTest"), sheet.jar());
    ObjectNode cleanOut = root.putObject("cleanOut");
    LoadFactsJson.before(cleanOut.putObject("before"), sheet);
    LoadFactsJson.after(cleanOut.putObject("after"), sheet.after());
    root.set("reentryHours", Json.fixed(sheet.reentry().hours().orElse(Double.NaN), 1));
    root.set("reentryUnknown", Json.texts(sheet.reentry().unknown()));
    protection(sheet.protection());
    root.set("restrictedUse", Json.texts(sheet.restricted().restricted()));
    root.set("restrictedUseUnknown", Json.texts(sheet.restricted().unknown()));
    root.set("otherPartners", Json.texts(sheet.job().others()));
    root.set("signOff", Json.texts(LoadWords.SIGN_OFF));
  }

  private void protection(ProtectiveEquipment worn) {
    if (worn.stated().isEmpty()) {
      root.putNull("protectiveEquipment");
    } else {
      ObjectNode node = root.putObject("protectiveEquipment");
      node.set("handlers", Json.texts(spelled(worn.handlers())));
      node.set("mixing", Json.texts(spelled(worn.mixing())));
    }
    root.set("protectiveEquipmentUnknown", Json.texts(ids(worn.unknown())));
  }

  private static List<String> spelled(Collection<ProtectiveItem> items) {
    return items.stream().map(ProtectiveItem::spelling).toList();
  }

  private static List<String> ids(List<ProductId> products) {
    return products.stream().map(ProductId::value).toList();
  }

  private void load(ObjectNode node, TankLoad load) {
    node.set("gallons", Json.fixed(load.size().gallons(), 1));
    node.set("acres", Json.fixed(load.size().acres(), 2));
    boolean water = sheet.job().carrier().liquid() == Carrier.Liquid.WATER;
    node.set("waterGallons", Json.fixed(water ? load.carrierGallons() : Double.NaN, 1));
    node.set("carrierGallons", Json.fixed(load.carrierGallons(), 1));
    node.set("liquidGallons", Json.fixed(load.liquidGallons(), 2));
    node.put("roomReckoned", !load.hasUnreckonedRoom());
    ArrayNode products = node.putArray("products");
    for (LoadedProduct p : load.products()) {
      ObjectNode product = products.addObject();
      product.put("product", p.product().id().value());
      amount(product, Optional.of(p.amount()), Optional.of(p.poured()));
      product.put("packages", p.packageSize().flatMap(p.poured()::inPackages).orElse(null));
      product.set(
          "acresPerPackage",
          Json.fixed(p.acresPerPackage(load.size().acres()).orElse(Double.NaN), 2));
    }
    ArrayNode adjuvants = node.putArray("adjuvants");
    for (LoadedAdjuvant a : load.adjuvants()) {
      ObjectNode adjuvant = adjuvants.addObject();
      adjuvant.put("kind", a.kind());
      adjuvant.set("rates", Json.texts(a.rates()));
      amount(adjuvant, a.amount(), a.poured());
    }
  }

  private static void amount(
      ObjectNode node, Optional<Quantity> amount, Optional<PouredAmount> poured) {
    node.set("amount", Json.significant(amount.map(Quantity::value).orElse(Double.NaN), 6));
    node.put("unit", amount.map(q -> q.unit().symbol()).orElse(null));
    node.put("measure", poured.map(PouredAmount::words).orElse(null));
  }

  private void order() {
    ArrayNode order = root.putArray("order");
    int n = 0;
    for (MixingStep s : sheet.order().sequence()) {
      n++;
      ObjectNode node = order.addObject();
      node.put("step", n);
      node.put("what", s.what());
      node.put("formulation", s.formulation().orElse(null));
      node.put("form", s.form().orElse(null));
      node.put("source", LoadWords.source(s));
    }
    root.set("orderDisagreements", Json.texts(sheet.order().disagreements()));
    root.set("orderByLabel", Json.texts(sheet.order().byLabel()));
    root.set("orderCircles", Json.texts(sheet.order().circles()));
  }
}
