package org.swathbook.rules.weather;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.swathbook.catalog.AdjuvantKind;
import org.swathbook.measure.Numbers;
import org.swathbook.measure.Quantity;
import org.swathbook.program.Adjuvant;
import org.swathbook.program.Carrier;
import org.swathbook.rules.ActiveUse;
import org.swathbook.rules.DayFacts;
import org.swathbook.rules.DayRule;
import org.swathbook.rules.Findings;
import org.swathbook.rules.RuleCard;
import org.swathbook.rules.RuleId;
import org.swathbook.rules.Say;
import org.swathbook.rules.Severity;
import org.swathbook.rules.Text;
import org.swathbook.tank.AmmoniumSulfate;
import org.swathbook.tank.HardWater;
import org.swathbook.tank.InHundredGallons;
import org.swathbook.tank.WaterConditioner;

/** Salts of hard water that tie up weak acids, and water in which an active breaks down. */
public final class WaterQualityRule implements DayRule {
  private static final String BY_SALTS =
      "North Dakota State University, ammonium sulfate by water salts (from memory)";

  public static final RuleCard CARD =
      new RuleCard(
          new RuleId("water-quality"),
          Severity.WARN,
          "Does the water tie up or break down a partner?",
          "The water is harder than 150 ppm, as CaCO3, or has more than 5 ppm of iron, a"
              + " weak acid is on leaves (sites 9, 1 and 10, salts of site 4), and no conditioner is in"
              + " the tank, or less ammonium sulfate than the salts take. The pH of the water is outside"
              + " the range in which a partner keeps. A note where the water was not tested, and where"
              + " its pH is below 5 or above 8 and the catalog has no range for a partner.",
          List.of(
              "North Dakota State University, ammonium sulfate by water salts, 0.009 lb a ppm of calcium"
                  + " and 0.042 lb a ppm of iron (from memory)",
              "Purdue University, hard from 150 ppm CaCO3 on (from memory)",
              "the labels' own ranges of pH",
              Say.COMMON_PRACTICE),
          "glyphosate in water of 600 ppm CaCO3 without ammonium sulfate",
          "2,4-D choline with ammonium sulfate at 320 ppm CaCO3");

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void judge(DayFacts facts, Findings out) {
    Carrier water = facts.job().carrier();
    if (water.liquid() != Carrier.Liquid.WATER) {
      return;
    }
    WaterPh.judge(this, facts, water.ph(), out);
    List<String> acids =
        facts.pass().actives().stream()
            .filter(WaterQualityRule::isWeakAcid)
            .map(a -> a.ingredient().name())
            .distinct()
            .toList();
    if (!acids.isEmpty()) {
      salts(facts, acids, water, out);
    }
  }

  private static boolean isWeakAcid(ActiveUse a) {
    return HardWater.tiesUp(a.ingredient(), a.dose().product().formulation());
  }

  private void salts(DayFacts facts, List<String> acids, Carrier water, Findings out) {
    boolean iron = HardWater.hasMuchIron(water);
    if (water.hardnessPpmCaCo3().isEmpty() && !iron) {
      out.note(
          this,
          facts.pass().about(),
          () ->
              Text.of(
                  "The water was not tested; hard water ties up " + Say.list(acids) + ".",
                  Say.COMMON_PRACTICE));
      return;
    }
    boolean hard = HardWater.isHard(water);
    if (!hard && !iron || has(facts, AdjuvantKind.WATER_CONDITIONER)) {
      return;
    }
    String met =
        hard
            ? Math.round(water.hardnessPpmCaCo3().orElseThrow()) + " ppm CaCO3"
            : Numbers.decimals(water.ironPpm().orElse(0), 1) + " ppm of iron";
    if (!has(facts, AdjuvantKind.AMMONIUM_SULFATE)) {
      out.warn(this, facts.pass().about(), () -> none(facts, acids, met, hard, water));
      return;
    }
    OptionalDouble held = sulfate(facts);
    double needed =
        AmmoniumSulfate.lbPer100Gal(water.hardnessPpmCaCo3().orElse(0), water.ironPpm().orElse(0));
    if (held.isPresent() && Quantity.exceeds(needed, held.getAsDouble())) {
      out.warn(
          this,
          facts.pass().about(),
          () ->
              Text.of(
                      "Water with "
                          + met
                          + " takes "
                          + pounds(needed)
                          + " of ammonium sulfate before any is left for "
                          + Say.list(acids)
                          + ".",
                      BY_SALTS)
                  .compared(pounds(held.getAsDouble()), "at least " + pounds(needed))
                  .cleared(remedy(facts, water)));
    }
  }

  private static boolean has(DayFacts facts, AdjuvantKind kind) {
    return facts.job().mix().adjuvants().stream()
        .anyMatch(a -> AdjuvantKind.find(a.kind()).equals(Optional.of(kind)));
  }

  /** Ammonium sulfate in 100 gal, lb; empty when its rate does not say. */
  private static OptionalDouble sulfate(DayFacts facts) {
    double most = 0;
    for (Adjuvant a : facts.job().mix().adjuvants()) {
      if (AdjuvantKind.find(a.kind()).equals(Optional.of(AdjuvantKind.AMMONIUM_SULFATE))) {
        Optional<Quantity> amount =
            InHundredGallons.least(a.rate(), facts.job().mix().gallonsPerAcre());
        if (amount.isEmpty()) {
          return OptionalDouble.empty();
        }
        most = Math.max(most, AmmoniumSulfate.pounds(amount.get()));
      }
    }
    return OptionalDouble.of(most);
  }

  private static Text none(
      DayFacts facts, List<String> acids, String met, boolean hard, Carrier water) {
    return Text.of(
            "Water with "
                + met
                + " ties up "
                + Say.list(acids)
                + ", and no conditioner is in the tank.",
            BY_SALTS)
        .compared(met, hard ? "150 ppm CaCO3" : "5 ppm of iron")
        .cleared(remedy(facts, water));
  }

  private static String remedy(DayFacts facts, Carrier water) {
    Optional<Adjuvant> conditioner =
        WaterConditioner.of(
            water, facts.pass().actives().stream().map(ActiveUse::partner).toList());
    List<String> refusing =
        facts.pass().actives().stream()
            .filter(
                a ->
                    a.terms()
                        .tank()
                        .adjuvantRefused()
                        .find()
                        .filter(r -> r.contains(AdjuvantKind.AMMONIUM_SULFATE))
                        .isPresent())
            .map(a -> a.ingredient().name())
            .distinct()
            .toList();
    if (refusing.isEmpty()) {
      return conditioner.orElseThrow().kind()
          + " at "
          + conditioner.orElseThrow().rate()
          + ", first into the water";
    }
    String without =
        "ammonium, which " + Say.list(refusing) + (refusing.size() == 1 ? " refuses" : " refuse");
    return conditioner
        .map(c -> c.kind() + ", one without " + without)
        .orElse("softer water: a partner refuses every conditioner, also those without " + without);
  }

  private static String pounds(double lb) {
    return Numbers.decimals(lb, 2) + " lb in 100 gal";
  }
}
