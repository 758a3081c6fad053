package org.swathbook.rules.weather;

import java.util.ArrayList;
import java.util.List;
import org.swathbook.catalog.AdjuvantKind;
import org.swathbook.measure.Numbers;
import org.swathbook.measure.Quantity;
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

/** Salts of hard water that tie up weak acids. */
public final class WaterQualityRule implements DayRule {
  private static final double CA_PER_CACO3 = 0.4;
  private static final double MOST_CA_PPM = 150;
  private static final double MOST_IRON_PPM = 5;

  /** Pounds of ammonium sulfate in 100 gal for a ppm of calcium. */
  private static final double AMS_PER_CA = 0.009;

  /** What labels of glyphosate ask for at least, lb in 100 gal. */
  private static final double LEAST_AMS = 8.5;

  public static final RuleCard CARD =
      new RuleCard(
          new RuleId("water-quality"),
          Severity.WARN,
          "Does the water tie up a partner?",
          "The water has more than 150 ppm of calcium (0.4 of its hardness as CaCO3) or 5 ppm of iron, a"
              + " weak acid is on leaves (sites 9, 1 and 10, salts of site 4), and no conditioner is in"
              + " the tank. A note where the water was not tested.",
          List.of(
              "North Dakota State University, ammonium sulfate by water salts, 0.009 lb a ppm of calcium"
                  + " (from memory)",
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
    List<String> acids = new ArrayList<>();
    for (ActiveUse a : facts.pass().actives()) {
      if (isWeakAcid(a) && !acids.contains(a.ingredient().name())) {
        acids.add(a.ingredient().name());
      }
    }
    if (acids.isEmpty() || water.liquid() != Carrier.Liquid.WATER) {
      return;
    }
    boolean iron = Quantity.exceeds(water.ironPpm().orElse(0), MOST_IRON_PPM);
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
    double calcium = CA_PER_CACO3 * water.hardnessPpmCaCo3().orElse(0);
    boolean hard = Quantity.exceeds(calcium, MOST_CA_PPM);
    if ((hard || iron) && !hasConditioner(facts)) {
      out.warn(this, facts.pass().about(), () -> text(facts, acids, calcium, hard, water));
    }
  }

  private static boolean isWeakAcid(ActiveUse a) {
    int site = a.ingredient().site().number();
    boolean salt = a.dose().product().formulation().equals("SL");
    return a.ingredient().hasFoliarActivity()
        && (site == 9 || site == 10 || site == 1 || site == 4 && salt);
  }

  private static boolean hasConditioner(DayFacts facts) {
    return facts.job().mix().adjuvants().stream()
        .flatMap(a -> AdjuvantKind.find(a.kind()).stream())
        .anyMatch(k -> k == AdjuvantKind.AMMONIUM_SULFATE);
  }

  private static Text text(
      DayFacts facts, List<String> acids, double calcium, boolean hard, Carrier water) {
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
    double pounds = Math.max(LEAST_AMS, Math.ceil(10 * AMS_PER_CA * calcium) / 10);
    String met =
        hard
            ? Math.round(calcium) + " ppm of calcium"
            : Numbers.decimals(water.ironPpm().orElse(0), 1) + " ppm of iron";
    return Text.of(
            "Water with "
                + met
                + " ties up "
                + Say.list(acids)
                + ", and no conditioner is in the tank.",
            "North Dakota State University, ammonium sulfate by water salts (from memory)")
        .compared(met, hard ? "150 ppm of calcium" : "5 ppm of iron")
        .cleared(
            refusing.isEmpty()
                ? "ammonium-sulfate at "
                    + Numbers.decimals(pounds, 1)
                    + " lb/100 gal, first into the water"
                : "a conditioner without ammonium, which "
                    + Say.list(refusing)
                    + (refusing.size() == 1 ? " refuses" : " refuse"));
  }
}
