package org.swathbook.cli.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import org.swathbook.catalog.CropId;
import org.swathbook.catalog.TankTerms.Rinse;
import org.swathbook.measure.Quantity;
import org.swathbook.tank.CleanOuts;
import org.swathbook.tank.JarTest;
import org.swathbook.tank.LoadSheet;
import org.swathbook.tank.WaterTreatment;

/** What a load sheet says besides its loads: water, jar test, clean-out. */
final class LoadFactsJson {
  private LoadFactsJson() {}

  /** All keys in every state; null or empty where one says nothing. */
  static void water(ObjectNode node, WaterTreatment water) {
    List<String> acids = List.of();
    Optional<WaterTreatment.AmmoniumSulfateFacts> facts = Optional.empty();
    Optional<WaterTreatment.Tested> tested = Optional.empty();
    String state = water instanceof WaterTreatment.NoWater ? "no-water" : "no-weak-acid";
    if (water instanceof WaterTreatment.Tested t) {
      state = t.hard() ? "hard" : "soft";
      acids = t.acids();
      facts = Optional.of(t.facts());
      tested = Optional.of(t);
    } else if (water instanceof WaterTreatment.Untested u) {
      state = "untested";
      acids = u.acids();
      facts = Optional.of(u.facts());
    }
    node.put("state", state);
    node.set("tiesUp", Json.texts(acids));
    node.set(
        "hardnessPpmCaCo3",
        Json.fixed(tested.map(WaterTreatment.Tested::hardnessPpmCaCo3).orElse(Double.NaN), 0));
    node.put("ironTested", tested.map(WaterTreatment.Tested::ironTested).orElse(null));
    node.set(
        "ammoniumSulfateForSaltsLbPer100Gal",
        Json.fixed(tested.map(WaterTreatment.Tested::lbPer100Gal).orElse(Double.NaN), 2));
    node.set(
        "ammoniumSulfateAskedLbPer100Gal",
        Json.fixed(tested.map(WaterTreatment.Tested::askedLbPer100Gal).orElse(Double.NaN), 2));
    node.set(
        "ammoniumSulfateHeldLbPer100Gal",
        Json.fixed(facts.map(f -> f.held().orElse(Double.NaN)).orElse(Double.NaN), 2));
    node.put(
        "waterConditionerHeld",
        facts.map(WaterTreatment.AmmoniumSulfateFacts::conditioner).orElse(null));
    node.set(
        "ammoniumSulfateRefusedBy",
        Json.texts(facts.map(WaterTreatment.AmmoniumSulfateFacts::refusedBy).orElse(List.of())));
  }

  /** All keys in every state; null or empty where one says nothing. */
  static void jar(ObjectNode node, JarTest jar) {
    Optional<JarTest.Recipe> recipe =
        jar instanceof JarTest.Recipe r ? Optional.of(r) : Optional.empty();
    List<String> by = jar instanceof JarTest.Forbidden f ? f.by() : List.of();
    node.put("state", recipe.isPresent() ? "recipe" : by.isEmpty() ? "one-thing" : "forbidden");
    node.set("forbiddenBy", Json.texts(by));
    node.set("jarGallons", Json.fixed(JarTest.JAR_GALLONS, 2));
    node.set("acres", Json.significant(recipe.map(JarTest.Recipe::acres).orElse(Double.NaN), 4));
    node.set("carrierMl", Json.fixed(recipe.map(JarTest.Recipe::carrierMl).orElse(Double.NaN), 0));
    ArrayNode portions = node.putArray("portions");
    for (JarTest.Portion p : recipe.map(JarTest.Recipe::portions).orElse(List.of())) {
      ObjectNode portion = portions.addObject();
      portion.put("what", p.what());
      portion.set("amount", Json.fixed(p.amount().map(Quantity::value).orElse(Double.NaN), 2));
      portion.put("unit", p.amount().map(q -> q.unit().symbol()).orElse(null));
    }
  }

  static void before(ObjectNode node, LoadSheet sheet) {
    node.put("known", sheet.before().isPresent());
    node.put("cleaned", sheet.job().tank().cleaned().map(Rinse::spelling).orElse(null));
    rows(node, sheet.before().map(CleanOuts::rows).orElse(List.of()));
  }

  static void after(ObjectNode node, CleanOuts after) {
    node.put("least", after.strictest().map(Rinse::spelling).orElse(null));
    rows(node, after.rows());
  }

  private static void rows(ObjectNode node, List<CleanOuts.Row> rows) {
    ArrayNode array = node.putArray("actives");
    for (CleanOuts.Row r : rows) {
      ObjectNode row = array.addObject();
      row.put("ingredient", r.ingredient().name());
      row.put("known", !r.stated().isUnknown());
      row.put("least", r.stated().find().map(c -> c.least().spelling()).orElse(null));
      row.set(
          "sensitive",
          Json.texts(
              r.stated().find().stream()
                  .flatMap(c -> c.sensitive().stream())
                  .map(CropId::value)
                  .toList()));
      row.put("source", r.stated().findSource().map(Object::toString).orElse(null));
    }
  }
}
