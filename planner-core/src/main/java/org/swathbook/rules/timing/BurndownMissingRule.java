package org.swathbook.rules.timing;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.swathbook.book.Tillage;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.WeedId;
import org.swathbook.growth.CohortSet;
import org.swathbook.growth.SeasonTrace;
import org.swathbook.measure.Numbers;
import org.swathbook.measure.Quantity;
import org.swathbook.rules.About;
import org.swathbook.rules.Findings;
import org.swathbook.rules.ProgramFacts;
import org.swathbook.rules.ProgramRule;
import org.swathbook.rules.RuleCard;
import org.swathbook.rules.RuleId;
import org.swathbook.rules.Say;
import org.swathbook.rules.Severity;
import org.swathbook.rules.Text;
import org.swathbook.season.Standing;
import org.swathbook.season.outcome.LayerSpan;
import org.swathbook.season.outcome.PassOutcome;
import org.swathbook.season.outcome.PassWeed;

/** Weeds that stand when the crop is planted and that nothing takes for weeks. */
public final class BurndownMissingRule implements ProgramRule {
  public static final RuleCard CARD =
      new RuleCard(
          new RuleId("burndown-missing"),
          Severity.WARN,
          "Is what stands at planting taken out before the crop comes up?",
          "No tillage, weeds standing at planting in the median year, by the model or as counted (a"
              + " driver from 0.1 plants/m², as at every pass, another from 1 plant/m²; what came"
              + " up under a layer is not counted), and no pass up to planting that takes half"
              + " or more of them through their leaves: where the first pass that does comes more"
              + " than 14 days after planting, or finds them taller than the labels say of all"
              + " partners that are counted on for them.",
          List.of("Norsworthy et al. 2012, best management practices: start weed-free"),
          "no-till sorghum with kochia standing at planting and no burndown",
          "a tilled field");

  private static final int SOON_DAYS = 14;

  /** Fewer of a weed that is no driver may stand at planting (default, ours). */
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
    for (int w = 0; w < facts.traces().weeds().size(); w++) {
      WeedPressure pressure = facts.traces().weeds().get(w);
      Optional<PassOutcome> first =
          facts.season().passes().stream().filter(p -> takes(p, pressure.weed().id())).findFirst();
      Optional<LabelHeights.Tallest> over = first.flatMap(p -> outgrown(facts, p, pressure));
      if (first.isPresent()
          && first.get().daysAfterPlanting() <= SOON_DAYS
          && (first.get().daysAfterPlanting() <= 0 || over.isEmpty())) {
        continue;
      }
      double standing = medianAtPlanting(facts, w);
      if (pressure.driver().isDriver() ? Standing.isStand(standing) : standing >= OTHERS_PER_M2) {
        out.warn(
            this,
            About.PROGRAM.withWeed(pressure.weed().id()),
            () -> text(facts, pressure, standing, first, over));
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

  /** The tallest that labels allow of a weed that is taller than that at a pass. */
  private static Optional<LabelHeights.Tallest> outgrown(
      ProgramFacts facts, PassOutcome pass, WeedPressure pressure) {
    return LabelHeights.tallest(facts, pass, pressure)
        .filter(t -> Quantity.exceeds(height(pass, pressure), t.cm()));
  }

  /** NaN where none stand, which exceeds nothing. */
  private static double height(PassOutcome pass, WeedPressure pressure) {
    return pass.weeds().stream()
        .filter(w -> w.weed().equals(pressure.weed().id()))
        .mapToDouble(PassWeed::p90Cm)
        .findFirst()
        .orElse(Double.NaN);
  }

  private static double medianAtPlanting(ProgramFacts facts, int weed) {
    double[] perM2 =
        IntStream.range(0, facts.traces().years().size())
            .mapToDouble(y -> standing(facts, y, weed))
            .sorted()
            .toArray();
    return perM2[(perM2.length - 1) / 2];
  }

  private static double standing(ProgramFacts facts, int year, int weed) {
    SeasonTrace trace = facts.traces().years().get(year);
    CohortSet cohorts = trace.cohorts(weed);
    List<LayerSpan> layers =
        facts.season().years().get(year).layers().stream()
            .filter(l -> l.weed().equals(facts.traces().weeds().get(weed).weed().id()))
            .toList();
    return IntStream.range(0, cohorts.count())
        .filter(c -> cohorts.isCounted(c) || layers.stream().noneMatch(l -> holds(l, cohorts, c)))
        .mapToDouble(c -> cohorts.standing(c, trace.plantingDay(), trace.plantingDay()))
        .sum();
  }

  private static boolean holds(LayerSpan layer, CohortSet cohorts, int cohort) {
    return layer.fromDay() <= cohorts.emergedOn(cohort)
        && cohorts.emergedOn(cohort) <= layer.toDay();
  }

  private static Text text(
      ProgramFacts facts,
      WeedPressure pressure,
      double standing,
      Optional<PassOutcome> first,
      Optional<LabelHeights.Tallest> over) {
    String plants = Numbers.decimals(standing, 1) + " plants/m²";
    return Text.of(
            Say.start(pressure.weed().name())
                + " stands at planting ("
                + plants
                + " in the median year) and "
                + first
                    .map(p -> after(facts, pressure, p, over))
                    .orElse("no pass takes it through its leaves."),
            Say.COMMON_PRACTICE)
        .compared(plants, "none standing")
        .cleared(
            "a burndown before "
                + Say.date(facts.field().plantDate())
                + ", its planting interval kept; or tillage");
  }

  private static String after(
      ProgramFacts facts,
      WeedPressure pressure,
      PassOutcome first,
      Optional<LabelHeights.Tallest> over) {
    return "the first pass that takes it comes "
        + Say.days(first.daysAfterPlanting())
        + " later"
        + over.map(
                t ->
                    ", when "
                        + Say.share(facts.book().house().sizePercentile())
                        + " of the plants are up to "
                        + Say.inches(height(first, pressure))
                        + " tall and the label of "
                        + t.active().name()
                        + " says up to "
                        + Say.inches(t.cm())
                        + ".")
            .orElse(".");
  }
}
