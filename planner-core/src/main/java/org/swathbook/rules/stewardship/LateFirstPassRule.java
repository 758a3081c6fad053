package org.swathbook.rules.stewardship;

import java.util.List;
import java.util.Optional;
import org.swathbook.catalog.Position;
import org.swathbook.growth.SeasonTrace;
import org.swathbook.measure.Money;
import org.swathbook.measure.Quantity;
import org.swathbook.rules.About;
import org.swathbook.rules.Findings;
import org.swathbook.rules.PassPositions;
import org.swathbook.rules.ProgramFacts;
import org.swathbook.rules.ProgramRule;
import org.swathbook.rules.RuleCard;
import org.swathbook.rules.RuleId;
import org.swathbook.rules.Say;
import org.swathbook.rules.Severity;
import org.swathbook.rules.Text;
import org.swathbook.season.loss.LateRemoval;
import org.swathbook.season.outcome.PassOutcome;
import org.swathbook.season.outcome.PassWeed;
import org.swathbook.season.outcome.WeedOutcome;
import org.swathbook.season.outcome.YearOutcome;

/** A first pass over the crop that comes when the weeds have already cost yield. */
public final class LateFirstPassRule implements ProgramRule {
  /** Below this share of the weed's season a late pass costs little. */
  private static final double DENSE = 0.1;

  /** What has been lost by then and no pass brings back. */
  private static final double LOST = 0.02;

  public static final RuleCard CARD =
      new RuleCard(
          new RuleId("late-first-pass"),
          Severity.WARN,
          "Does the first pass over the crop come in time?",
          "In most weather years the first pass over the crop is past the critical time of removal, by"
              + " row spacing and later where a layer held when the crop came up, while more than 10 %"
              + " of a weed's season stands; or whatever its stage, what stands has by then cost more"
              + " than 2 % of the yield, in the mean of the weather years. Never a block."
              + " What the next day adds is told.",
          List.of("Knezevic et al. 2003, critical times of removal by row spacing"),
          "foxtail at 25 plants/m² under corn of V8 without a residual",
          "the same pass with hardly any foxtail left");

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void judge(ProgramFacts facts, Findings out) {
    Optional<PassOutcome> first =
        facts.season().passes().stream()
            .filter(
                p ->
                    PassPositions.of(facts.traces(), p.timing()).stream()
                        .anyMatch(q -> q.phase() == Position.Phase.IN_CROP))
            .findFirst();
    if (first.isPresent()
        && !judgeStage(facts, first.get(), out)
        && Quantity.exceeds(first.get().late().lossShare(), LOST)) {
      out.warn(this, About.PROGRAM.withPass(first.get().index()), () -> lost(first.get()));
    }
  }

  private static Text lost(PassOutcome pass) {
    String share = Say.share(pass.late().lossShare());
    return Text.of(
            "The first pass over the crop comes at " + pass.cropStage() + "." + cost(pass),
            "Knezevic et al. 2003, Cousens 1985")
        .compared(share + " of the yield lost", "at most " + Say.share(LOST))
        .cleared("an earlier first pass, or a residual before it");
  }

  private static String cost(PassOutcome pass) {
    String later =
        pass.late().perDayLater().compareTo(Money.ofDollars(0.01)) < 0
            ? "."
            : ", and each day later costs $" + pass.late().perDayLater() + "/acre.";
    return " What stands then has cost "
        + Say.share(pass.late().lossShare())
        + " of the yield"
        + later;
  }

  /** Whether something was found. */
  private boolean judgeStage(ProgramFacts facts, PassOutcome first, Findings out) {
    if (!isLate(facts, first)) {
      return false;
    }
    boolean found = false;
    for (PassWeed w : first.weeds()) {
      WeedOutcome weed = facts.season().weed(w.weed());
      double share = w.medianPerM2() / weed.pressure().perM2();
      if (w.stands() && Quantity.exceeds(share, DENSE)) {
        found = true;
        out.warn(
            this,
            About.PROGRAM.withPass(first.index()).withWeed(w.weed()),
            () ->
                Text.of(
                        "The first pass over the crop comes at "
                            + first.cropStage()
                            + ", past the time by which weeds must be out, and "
                            + Say.share(share)
                            + " of the season's "
                            + weed.pressure().weed().name()
                            + " stands."
                            + cost(first),
                        "Knezevic et al. 2003")
                    .compared(
                        first.cropStage() + ", " + Say.share(share) + " standing",
                        "earlier, or at most " + Say.share(DENSE) + " standing")
                    .cleared("an earlier first pass, or a residual before it"));
      }
    }
    return found;
  }

  private static boolean isLate(ProgramFacts facts, PassOutcome pass) {
    int late = 0;
    for (int y = 0; y < facts.traces().years().size(); y++) {
      SeasonTrace trace = facts.traces().years().get(y);
      int day = Math.min(pass.timing().years().get(y).day(), trace.days() - 1);
      YearOutcome outcome = facts.season().years().get(y);
      boolean held =
          outcome.layers().stream()
              .anyMatch(
                  l -> l.fromDay() <= trace.emergenceDay() && l.toDay() >= trace.emergenceDay());
      if (LateRemoval.isLate(
          facts.traces().crop(), facts.field().rowSpacingCm(), trace.leafStages(day), held)) {
        late++;
      }
    }
    return 2 * late > facts.traces().years().size();
  }
}
