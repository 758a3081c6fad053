package org.swathbook.rules.mixture;

import java.util.List;
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
          "At the loading pad: three products or more, a dry product with an emulsion, liquid"
              + " fertilizer as the carrier, or less than 10 gal/acre. A warning where liquid"
              + " fertilizer carries a dry product or a solution. Never where a partner's label"
              + " forbids the test, as newest labels of paraquat do. Silent in a plan.",
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
    if (facts.job().isEmpty() || doses.size() < 2 || isForbidden(facts)) {
      return;
    }
    SprayJob job = facts.job().get();
    boolean fertilizer = job.carrier().liquid() == Carrier.Liquid.LIQUID_FERTILIZER;
    boolean dry = doses.stream().anyMatch(d -> MixingOrder.isDry(d.product().formulation()));
    boolean oil = doses.stream().anyMatch(d -> MixingOrder.isEmulsion(d.product().formulation()));
    boolean solution = doses.stream().anyMatch(d -> d.product().formulation().equals("SL"));
    double gallons = job.mix().gallonsPerAcre().orElse(Double.NaN);
    String why =
        fertilizer
            ? "liquid fertilizer carries it"
            : dry && oil
                ? "a dry product meets an emulsion"
                : doses.size() >= MANY
                    ? doses.size() + " products meet"
                    : gallons < LOW_GALLONS ? "it is mixed in less than 10 gal/acre" : "";
    if (!why.isEmpty()) {
      out.add(
          this,
          fertilizer && (dry || solution) ? Severity.WARN : Severity.NOTE,
          facts.about(),
          () -> text(why, gallons));
    }
  }

  private static boolean isForbidden(PassFacts facts) {
    return facts.actives().stream()
        .map(ActiveUse::terms)
        .anyMatch(t -> t.tank().jarTestRefused().find().orElse(false));
  }

  private static Text text(String why, double gallons) {
    String volume = Double.isNaN(gallons) ? "the spray volume" : Math.round(gallons) + " gal/acre";
    return Text.of(
            "Try the mix in a jar first, at "
                + volume
                + " and in the order of mixing, with the water of the load: "
                + why
                + ".",
            Say.COMMON_PRACTICE)
        .compared("not tried", "a jar that stays mixed for 15 to 30 minutes")
        .cleared("a jar test that shows no flakes, gel, heat or layers");
  }
}
