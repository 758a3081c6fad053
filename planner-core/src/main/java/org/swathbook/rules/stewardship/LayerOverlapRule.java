package org.swathbook.rules.stewardship;

import java.util.List;
import org.swathbook.catalog.WeedId;
import org.swathbook.measure.Numbers;
import org.swathbook.rules.About;
import org.swathbook.rules.Findings;
import org.swathbook.rules.HouseTests;
import org.swathbook.rules.ProgramFacts;
import org.swathbook.rules.ProgramRule;
import org.swathbook.rules.RuleCard;
import org.swathbook.rules.RuleId;
import org.swathbook.rules.Say;
import org.swathbook.rules.Severity;
import org.swathbook.rules.Text;
import org.swathbook.season.outcome.PassOutcome;
import org.swathbook.season.outcome.WeedOutcome;

/** A layer that starts too late to take over from the one before it. */
public final class LayerOverlapRule implements ProgramRule {
  public static final RuleCard CARD =
      new RuleCard(
          new RuleId("layer-overlap"),
          Severity.WARN,
          "Does the next layer hold before the last one ends?",
          "Two consecutive layers on a driver weed overlap by fewer days than the house asks in the"
              + " median year, or leave a hole in more than one year of five. Silent when less than"
              + " 2 % of the emergence is still to come, and where the first lasts until the canopy"
              + " closes.",
          List.of(Say.COMMON_PRACTICE),
          "the first layer ends on 10 Jun and the next gets its rain on 14 Jun, a hole of 4 days",
          "the next gets its rain on 3 Jun, an overlap of 7 days");

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void judge(ProgramFacts facts, Findings out) {
    for (WeedOutcome weed : facts.season().weeds()) {
      if (weed.pressure().driver().isDriver()) {
        WeedId id = weed.pressure().weed().id();
        for (WeedOutcome.LayerOverlap o : HouseTests.shortOverlaps(facts.book().house(), weed)) {
          out.warn(
              this, About.PROGRAM.withWeed(id).withPass(o.nextPass()), () -> text(facts, weed, o));
        }
      }
    }
  }

  private static Text text(ProgramFacts facts, WeedOutcome weed, WeedOutcome.LayerOverlap o) {
    int asked = facts.book().house().minLayerOverlapDays();
    PassOutcome next = facts.season().passes().get(o.nextPass());
    boolean never = Double.isNaN(o.medianDays());
    String overlap =
        never
            ? "the next layer does not start"
            : o.medianDays() < 0
                ? "a hole of " + Numbers.decimals(-o.medianDays(), 1) + " days"
                : "an overlap of " + Numbers.decimals(o.medianDays(), 1) + " days";
    long earlier = never ? asked : (long) Math.ceil(asked - o.medianDays());
    String remedy =
        earlier > 0
            ? "the next layer sprayed by "
                + Say.date(next.timing().medianDate().minusDays(earlier))
                + ", irrigation, or a longer first layer"
            : "the next layer sprayed earlier, irrigation, or a longer first layer";
    return Text.of(
            Say.start(weed.pressure().weed().name())
                + ": "
                + overlap
                + " between two layers in the median year, a hole in "
                + Say.share(o.negativeShare())
                + " of the years; the house asks for "
                + Say.days(asked)
                + ".",
            "house rule minLayerOverlap")
        .compared(never ? "none" : Numbers.decimals(o.medianDays(), 1) + " days", Say.days(asked))
        .cleared(remedy);
  }
}
