package org.swathbook.rules.mixture;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedSet;
import java.util.TreeSet;
import org.swathbook.book.InsecticideClass;
import org.swathbook.catalog.AdjuvantKind;
import org.swathbook.catalog.Position;
import org.swathbook.catalog.SoilTexture;
import org.swathbook.program.SprayWeather;
import org.swathbook.rules.ActiveUse;
import org.swathbook.rules.Findings;
import org.swathbook.rules.PassFacts;
import org.swathbook.rules.PassRule;
import org.swathbook.rules.RuleCard;
import org.swathbook.rules.RuleId;
import org.swathbook.rules.Say;
import org.swathbook.rules.SeasonInsecticides;
import org.swathbook.rules.SeasonInsecticides.Named;
import org.swathbook.rules.Severity;
import org.swathbook.rules.Text;

/** Partners that are safe by themselves and injure the crop together or in this weather. */
public final class CropInjuryStackRule implements PassRule {
  private static final double LOW_OM_PCT = 1.5;
  private static final double MUCH_RAIN_IN = 0.5;
  private static final double COLD_DAY_F = 60;
  private static final double COLD_NIGHT_F = 40;
  private static final double HOT_F = 90;

  public static final RuleCard CARD =
      new RuleCard(
          new RuleId("crop-injury-stack"),
          Severity.WARN,
          "Do several partners together injure the crop?",
          "Before emergence: site 14 with site 15 or 5 in the soil of a field with at most 1.5 %"
              + " organic matter or a coarse texture, or with half an inch of rain or a day under 60 F"
              + " ahead. Over the crop: site 14 on leaves with an oil above 90 F; site 2 on a day under"
              + " 60 F or after a night under 40 F; site 27 on leaves with an organophosphate in the tank"
              + " or on the field this season, unless its label forbids that outright.",
          List.of(
              "Jewett et al. 2008, Crop Management: mesotrione after terbufos, 34 % injury",
              Say.COMMON_PRACTICE),
          "flumioxazin, pyroxasulfone and metribuzin on soil of 1.3 % organic matter",
          "flumioxazin by itself on the same soil");

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void judge(PassFacts facts, Findings out) {
    String before = inSoil(facts);
    String over = overCrop(facts);
    withOrganophosphate(facts, out);
    for (String why : List.of(before, over)) {
      if (!why.isEmpty()) {
        out.warn(
            this,
            facts.about(),
            () ->
                Text.of(why, Say.COMMON_PRACTICE)
                    .compared("together", "one of them, or other weather")
                    .cleared(remedy(facts)));
      }
    }
  }

  private static String remedy(PassFacts facts) {
    if (!facts.isInCrop()) {
      return "one partner less, a lower rate, or spraying some days before planting";
    }
    return isBurning(facts)
        ? "a surfactant in the place of the oil, or another day"
        : "a day when the crop has had some warm ones, or a partner of another site";
  }

  /** Both are broken down by the same enzymes of the crop. */
  private void withOrganophosphate(PassFacts facts, Findings out) {
    Optional<Named> insecticide = SeasonInsecticides.of(facts).organophosphate();
    if (!facts.isInCrop() || insecticide.isEmpty()) {
      return;
    }
    List<String> slowed =
        facts.actives().stream()
            .filter(a -> a.ingredient().site().number() == 27 && a.ingredient().hasFoliarActivity())
            .filter(a -> !isRefused(a))
            .map(a -> a.ingredient().name())
            .distinct()
            .toList();
    if (!slowed.isEmpty()) {
      out.warn(
          this,
          facts.about(),
          () ->
              Text.of(
                      "An organophosphate"
                          + insecticide.get().where()
                          + " keeps the crop from breaking down "
                          + Say.list(slowed)
                          + ": leaves bleach and the crop stands still.",
                      "Jewett et al. 2008, Crop Management, of mesotrione after terbufos")
                  .compared("together", "one of them")
                  .cleared("an active of another site than 27"));
    }
  }

  private static boolean isRefused(ActiveUse a) {
    return a.terms()
        .tank()
        .insecticides()
        .find()
        .filter(l -> l.refused().contains(InsecticideClass.ORGANOPHOSPHATE))
        .isPresent();
  }

  private static String inSoil(PassFacts facts) {
    SortedSet<Integer> sites = new TreeSet<>();
    for (ActiveUse a : facts.actives()) {
      if (a.ingredient().hasSoilActivity()) {
        sites.add(a.ingredient().site().number());
      }
    }
    boolean atCracking =
        facts.positions().contains(Position.PRE) || facts.positions().contains(Position.PREPLANT);
    if (!atCracking || !sites.contains(14) || !(sites.contains(15) || sites.contains(5))) {
      return "";
    }
    OptionalDouble om =
        facts.field().organicMatterPct().stream().mapToDouble(Double::doubleValue).min();
    SprayWeather weather = weather(facts);
    String where =
        om.isPresent() && om.getAsDouble() <= LOW_OM_PCT
            ? "soil of " + Say.pct(om.getAsDouble()) + " organic matter"
            : facts.field().soilTextures().stream().anyMatch(CropInjuryStackRule::isCoarse)
                ? "coarse soil"
                : weather.rainNext48hIn().orElse(0) >= MUCH_RAIN_IN
                    ? "wet soil with more rain ahead"
                    : weather.highF().orElse(100) < COLD_DAY_F ? "cold soil" : "";
    return where.isEmpty()
        ? ""
        : "Sites "
            + Say.list(
                sites.stream()
                    .filter(s -> s == 14 || s == 15 || s == 5)
                    .map(String::valueOf)
                    .toList())
            + " together splash on and hold back seedlings that come up through "
            + where
            + ".";
  }

  private static boolean isCoarse(SoilTexture t) {
    return t == SoilTexture.SAND || t == SoilTexture.LOAMY_SAND || t == SoilTexture.SANDY_LOAM;
  }

  private static String overCrop(PassFacts facts) {
    if (!facts.isInCrop()) {
      return "";
    }
    SprayWeather weather = weather(facts);
    if (isBurning(facts)) {
      return "Site 14 with an oil at "
          + Math.round(highF(weather))
          + " F burns leaves of the crop.";
    }
    boolean cold =
        weather.highF().orElse(100) < COLD_DAY_F
            || weather.coldestNightF().orElse(100) < COLD_NIGHT_F;
    return cold && has(facts, 2)
        ? "A crop that is slowed by cold breaks site 2 down slowly and yellows."
        : "";
  }

  /** Site 14 on leaves, with an oil, in heat. */
  private static boolean isBurning(PassFacts facts) {
    boolean oil =
        facts.pass().mix().adjuvants().stream()
            .flatMap(a -> AdjuvantKind.find(a.kind()).stream())
            .anyMatch(k -> k == AdjuvantKind.CROP_OIL || k == AdjuvantKind.METHYLATED_SEED_OIL);
    return oil && highF(weather(facts)) > HOT_F && has(facts, 14);
  }

  private static double highF(SprayWeather weather) {
    return Math.max(weather.highF().orElse(0), weather.temperatureF().orElse(0));
  }

  private static boolean has(PassFacts facts, int site) {
    return facts.actives().stream()
        .anyMatch(
            a -> a.ingredient().site().number() == site && a.ingredient().hasFoliarActivity());
  }

  private static SprayWeather weather(PassFacts facts) {
    return facts.job().map(j -> j.weather()).orElse(SprayWeather.UNKNOWN);
  }
}
