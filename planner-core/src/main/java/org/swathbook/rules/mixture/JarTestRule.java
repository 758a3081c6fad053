package org.swathbook.rules.mixture;

import java.util.List;
import org.swathbook.catalog.AdjuvantKind;
import org.swathbook.measure.Numbers;
import org.swathbook.measure.Quantity;
import org.swathbook.program.Carrier;
import org.swathbook.program.Dose;
import org.swathbook.program.SprayJob;
import org.swathbook.rules.ActiveUse;
import org.swathbook.rules.Findings;
import org.swathbook.rules.PassFacts;
import org.swathbook.rules.PassRule;
import org.swathbook.rules.RuleCard;
import org.swathbook.rules.RuleId;
import org.swathbook.rules.Say;
import org.swathbook.rules.Severity;
import org.swathbook.rules.Text;
import org.swathbook.tank.MixingOrder;

/** Whether a mix should be tried in a jar before it is loaded. */
public final class JarTestRule implements PassRule {
  private static final int MANY = 3;
  private static final double LOW_GALLONS = 10;

  public static final RuleCard CARD =
      new RuleCard(
          new RuleId("jar-test"),
          Severity.WARN,
          "Should the mix be tried in a jar first?",
          "At the loading pad: three products or more, a dry product with an emulsion or an oil"
              + " concentrate, liquid fertilizer as the carrier, two products in less than 10 gal/acre,"
              + " or a pair of which nobody says anything: no guide has a place for a formulation, or"
              + " the catalog lacks a label's list of partners. A warning where liquid fertilizer"
              + " carries a dry product or a solution. Never where a partner's label forbids the test,"
              + " as newest labels of paraquat do. Silent in a plan.",
          List.of("Utah State University Extension 2012, Using a Jar Test", Say.COMMON_PRACTICE),
          "a granule and a concentrate in liquid fertilizer",
          "two solutions in water; a mix with paraquat");

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void judge(PassFacts facts, Findings out) {
    List<Dose> doses = facts.pass().mix().doses();
    if (facts.job().isEmpty() || isForbidden(facts)) {
      return;
    }
    SprayJob job = facts.job().get();
    boolean several = doses.size() > 1;
    boolean fertilizer = job.carrier().liquid() == Carrier.Liquid.LIQUID_FERTILIZER;
    boolean dry = doses.stream().anyMatch(d -> MixingOrder.isDry(d.product().formulation()));
    boolean emulsion =
        doses.stream().anyMatch(d -> MixingOrder.isEmulsion(d.product().formulation()));
    boolean oil =
        job.mix().adjuvants().stream()
            .flatMap(a -> AdjuvantKind.find(a.kind()).stream())
            .anyMatch(k -> k == AdjuvantKind.CROP_OIL || k == AdjuvantKind.METHYLATED_SEED_OIL);
    boolean solution = doses.stream().anyMatch(d -> d.product().formulation().equals("SL"));
    double gallons = job.mix().gallonsPerAcre().orElse(Double.NaN);
    String why =
        fertilizer
            ? "liquid fertilizer carries it"
            : dry && (emulsion || oil)
                ? "a dry product meets an " + (emulsion ? "emulsion" : "oil concentrate")
                : doses.size() >= MANY
                    ? doses.size() + " products meet"
                    : several && Quantity.exceeds(LOW_GALLONS, gallons)
                        ? "it is mixed in less than 10 gal/acre"
                        : several ? unknownPair(facts) : "";
    if (!why.isEmpty()) {
      out.add(
          this,
          fertilizer && (dry || solution) ? Severity.WARN : Severity.NOTE,
          facts.about(),
          () -> text(why, gallons));
    }
  }

  /** What nobody says of two products that meet; empty when guides and labels do. */
  private static String unknownPair(PassFacts facts) {
    for (Dose d : facts.pass().mix().doses()) {
      if (!MixingOrder.isNamedByGuides(d.product().formulation())) {
        return "guides have no place for the formulation of " + d.product().name();
      }
    }
    return facts.actives().stream()
        .filter(a -> a.terms().tank().partners().isUnknown())
        .map(a -> "whether " + a.ingredient().name() + " goes with the others is not known")
        .findFirst()
        .orElse("");
  }

  private static boolean isForbidden(PassFacts facts) {
    return facts.actives().stream()
        .map(ActiveUse::terms)
        .anyMatch(t -> t.tank().jarTestRefused().find().orElse(false));
  }

  private static Text text(String why, double gallons) {
    String volume =
        Double.isNaN(gallons) ? "the spray volume" : Numbers.decimals(gallons, 1) + " gal/acre";
    return Text.of(
            "Try the mix in a jar first, at "
                + volume
                + " and in the order of mixing, with the carrier of the load: "
                + why
                + ".",
            Say.COMMON_PRACTICE)
        .compared("not tried", "a jar that stays mixed for 15 to 30 minutes")
        .cleared("a jar test that shows no flakes, gel, heat or layers");
  }
}
