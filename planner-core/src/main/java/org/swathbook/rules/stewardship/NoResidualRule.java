package org.swathbook.rules.stewardship;

import java.util.List;
import org.swathbook.catalog.WeedId;
import org.swathbook.growth.CohortSet;
import org.swathbook.growth.SeasonTrace;
import org.swathbook.rules.About;
import org.swathbook.rules.Findings;
import org.swathbook.rules.ProgramFacts;
import org.swathbook.rules.ProgramRule;
import org.swathbook.rules.RuleCard;
import org.swathbook.rules.RuleId;
import org.swathbook.rules.Say;
import org.swathbook.rules.Severity;
import org.swathbook.rules.Text;
import org.swathbook.season.WeedOutcome;

/** A driver weed much of which is still to come, and nothing in the soil against it. */
public final class NoResidualRule implements ProgramRule {
  private static final double MUCH = 0.2;

  public static final RuleCard CARD =
      new RuleCard(
          new RuleId("no-residual"),
          Severity.WARN,
          "Is there any layer where much is still to come up?",
          "More than 20 % of a driver weed comes up after planting, in the mean of the weather years,"
              + " and in most years no layer of the season holds it.",
          List.of(Say.COMMON_PRACTICE),
          "glyphosate twice on Palmer amaranth",
          "kochia nearly all of which is up before planting, with a burndown alone");

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void judge(ProgramFacts facts, Findings out) {
    int w = 0;
    for (WeedOutcome weed : facts.season().weeds()) {
      double toCome = toCome(facts, w++);
      WeedId id = weed.pressure().weed().id();
      if (weed.pressure().driver().isDriver() && toCome > MUCH && !hasLayer(facts, id)) {
        out.warn(
            this,
            About.PROGRAM.withWeed(id),
            () ->
                Text.of(
                        Say.share(toCome)
                            + " of "
                            + weed.pressure().weed().name()
                            + " comes up after planting, and nothing in the soil holds it.",
                        Say.COMMON_PRACTICE)
                    .compared(Say.share(toCome) + ", no layer", "a layer above " + Say.share(MUCH))
                    .cleared("a residual of an effective site at planting or with the first post"));
      }
    }
  }

  private static double toCome(ProgramFacts facts, int weed) {
    double sum = 0;
    for (SeasonTrace trace : facts.traces().years()) {
      CohortSet set = trace.cohorts(weed);
      double later = 0;
      double all = 0;
      for (int c = 0; c < set.count(); c++) {
        all += set.perM2(c);
        later += set.emergedOn(c) > trace.plantingDay() ? set.perM2(c) : 0;
      }
      sum += all > 0 ? later / all : 0;
    }
    return sum / facts.traces().years().size();
  }

  private static boolean hasLayer(ProgramFacts facts, WeedId weed) {
    long with =
        facts.season().years().stream()
            .filter(y -> y.layers().stream().anyMatch(l -> l.weed().equals(weed)))
            .count();
    return 2 * with >= facts.season().years().size();
  }
}
