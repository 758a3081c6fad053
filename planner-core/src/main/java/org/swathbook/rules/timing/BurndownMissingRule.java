package org.swathbook.rules.timing;

import java.util.List;
import java.util.Optional;
import org.swathbook.book.Tillage;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.WeedId;
import org.swathbook.growth.CohortSet;
import org.swathbook.growth.SeasonTrace;
import org.swathbook.measure.Numbers;
import org.swathbook.rules.About;
import org.swathbook.rules.Findings;
import org.swathbook.rules.ProgramFacts;
import org.swathbook.rules.ProgramRule;
import org.swathbook.rules.RuleCard;
import org.swathbook.rules.RuleId;
import org.swathbook.rules.Say;
import org.swathbook.rules.Severity;
import org.swathbook.rules.Text;
import org.swathbook.season.PassOutcome;

/** Weeds that stand when the crop is planted and that nothing takes for weeks. */
public final class BurndownMissingRule implements ProgramRule {
  public static final RuleCard CARD =
      new RuleCard(
          new RuleId("burndown-missing"),
          Severity.WARN,
          "Is what stands at planting taken out before the crop comes up?",
          "No tillage, weeds standing at planting in the median year (a driver from 0.1 plants/m² or"
              + " 1 % of its emergence, another from 1 plant/m²), no pass before planting or within"
              + " 14 days after it that takes half or more of them through their leaves.",
          List.of("Norsworthy et al. 2012, best management practices: start weed-free"),
          "no-till sorghum with kochia standing at planting and no burndown",
          "a tilled field");

  private static final int SOON_DAYS = 14;
  private static final double STANDS_PER_M2 = 0.1;
  private static final double STANDS_SHARE = 0.01;
  private static final double OTHERS_PER_M2 = 1;

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void judge(ProgramFacts facts, Findings out) {
    if (facts.field().tillage() != Tillage.NO_TILL) {
      return;
    }
    if (journalHasBurndown(facts)) {
      return;
    }
    for (int w = 0; w < facts.traces().weeds().size(); w++) {
      WeedPressure pressure = facts.traces().weeds().get(w);
      Optional<PassOutcome> first =
          facts.season().passes().stream().filter(p -> takes(p, pressure.weed().id())).findFirst();
      if (first.isPresent() && first.get().daysAfterPlanting() <= SOON_DAYS) {
        continue;
      }
      double standing = medianAtPlanting(facts, w);
      double least =
          pressure.driver().isDriver()
              ? Math.max(STANDS_PER_M2, STANDS_SHARE * pressure.perM2())
              : OTHERS_PER_M2;
      if (standing >= least) {
        out.warn(
            this,
            About.PROGRAM.withWeed(pressure.weed().id()),
            () -> text(facts, pressure, standing, first));
      }
    }
  }

  /** Whether a pass works on the standing plants of a weed: at least half of them. */
  private static boolean takes(PassOutcome pass, WeedId weed) {
    return pass.weeds().stream()
        .filter(w -> w.weed().equals(weed))
        .flatMap(w -> w.foliar().stream())
        .anyMatch(s -> s.effective() || s.half());
  }

  private static boolean journalHasBurndown(ProgramFacts facts) {
    return facts.book().journal().of(facts.field().id()).stream()
        .filter(a -> a.season() == facts.book().season())
        .filter(a -> !a.date().isAfter(facts.field().plantDate().plusDays(SOON_DAYS)))
        .anyMatch(
            a -> a.dose().actives().stream().anyMatch(x -> x.ingredient().hasFoliarActivity()));
  }

  private static double medianAtPlanting(ProgramFacts facts, int weed) {
    double[] perM2 =
        facts.traces().years().stream().mapToDouble(t -> standing(t, weed)).sorted().toArray();
    return perM2[(perM2.length - 1) / 2];
  }

  private static double standing(SeasonTrace trace, int weed) {
    CohortSet cohorts = trace.cohorts(weed);
    return java.util.stream.IntStream.range(0, cohorts.count())
        .mapToDouble(c -> cohorts.standing(c, trace.plantingDay(), trace.plantingDay()))
        .sum();
  }

  private static Text text(
      ProgramFacts facts, WeedPressure pressure, double standing, Optional<PassOutcome> first) {
    String plants = Numbers.decimals(standing, 1) + " plants/m²";
    return Text.of(
            Say.start(pressure.weed().name())
                + " stands at planting ("
                + plants
                + " in the median year) and "
                + first
                    .map(
                        p ->
                            "the first pass that takes it comes "
                                + Say.days(p.daysAfterPlanting())
                                + " later.")
                    .orElse("no pass takes it through its leaves."),
            Say.COMMON_PRACTICE)
        .compared(plants, "none standing")
        .cleared(
            "a burndown before "
                + Say.date(facts.field().plantDate())
                + ", its planting interval kept; or tillage");
  }
}
