package org.swathbook.rules.timing;

import java.util.ArrayList;
import java.util.List;
import org.swathbook.catalog.Position;
import org.swathbook.catalog.Use;
import org.swathbook.growth.SeasonTrace;
import org.swathbook.growth.UseFinder;
import org.swathbook.growth.WindowCheck;
import org.swathbook.measure.Rate;
import org.swathbook.rules.Findings;
import org.swathbook.rules.LabelUses;
import org.swathbook.rules.Lookup;
import org.swathbook.rules.RuleCard;
import org.swathbook.rules.RuleId;
import org.swathbook.rules.Severity;
import org.swathbook.rules.UseFacts;
import org.swathbook.rules.UseRule;
import org.swathbook.rules.Where;
import org.swathbook.rules.YearShare;

/** Crop stage, crop height, days around planting and dates between which a use is allowed. */
public final class StageWindowRule implements UseRule {
  public static final RuleCard CARD =
      new RuleCard(
          new RuleId("stage-window"),
          Severity.BLOCK,
          "Is the crop at a stage and height at which this use is allowed?",
          "Stage and height are compared apart, the first limit reached binds: 'through V8' lasts"
              + " until the ninth collar, 'before 12 in' refuses 12. Blocks when the pass is outside"
              + " in most weather years, warns when it is in more than one year of five, or when the"
              + " modelled crop is within one leaf stage, 2 in, or 3 days of emergence of a limit. A"
              + " year in which the crop comes up sooner or later counts as inside, and that day is no"
              + " limit, when another use allows the rate there and asks for no trait that the field"
              + " lacks.",
          List.of(
              "Schug & Vollmer 2025, University of Maryland Extension, postemergence cutoffs in"
                  + " corn",
              "Iowa State University 2017, flumioxazin within three days of planting"),
          "atrazine on corn of 12 in with 'before 12 in'; flumioxazin 5 days after planting, where 3 are the most;"
              + " imazethapyr at R1 with 'before R1'",
          "clethodim at R2 with 75 days to harvest");

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void judge(UseFacts facts, Findings out) {
    if (facts.chosen().isEmpty()) {
      return;
    }
    Use use = facts.chosen().get();
    List<WindowCheck.Answer> answers = answers(facts, use);
    YearShare share =
        new YearShare(
            (int) answers.stream().filter(WindowCheck.Answer::inside).count(), answers.size());
    if (!share.isMetInMost()) {
      out.block(this, facts.about(), () -> StageWindowWords.outside(facts, use, answers));
    } else if (share.isRisky()) {
      out.warn(this, facts.about(), () -> StageWindowWords.inSomeYears(facts, use, share));
    } else if (CloseToLimit.isClose(facts, use, () -> others(facts))) {
      out.warn(this, facts.about(), () -> StageWindowWords.close(facts, use));
    }
    ask(facts, use, answers, out);
  }

  /** A year in which the day is another use's, for this dose and these traits, is inside. */
  private static List<WindowCheck.Answer> answers(UseFacts facts, Use use) {
    List<Use> others = null;
    List<WindowCheck.Answer> answers = new ArrayList<>();
    for (int y = 0; y < facts.traces().years().size(); y++) {
      SeasonTrace trace = facts.traces().years().get(y);
      int day = facts.timing().years().get(y).day();
      WindowCheck.Answer own = WindowCheck.check(use, trace, day);
      if (own.inside()) {
        answers.add(own);
        continue;
      }
      // Looked for at last: mostly a pass is inside its own window.
      others = others == null ? others(facts) : others;
      answers.add(
          others.stream()
              .map(u -> WindowCheck.check(u, trace, day))
              .filter(WindowCheck.Answer::inside)
              .findFirst()
              .orElse(own));
    }
    return answers;
  }

  /** A pass around emergence may be one use in early years and another in late ones. */
  private static List<Use> others(UseFacts facts) {
    double kgPerHa = Rate.lbPerAcre(facts.mixLbPerAcre(), facts.ingredient().rateBasis()).kgPerHa();
    Position.Phase phase = LabelUses.phase(facts.positions());
    return UseFinder.open(
            facts.ingredient(), facts.dose().product().formulation(), facts.field(), kgPerHa)
        .stream()
        .filter(u -> !u.isIn(phase) && LabelUses.hasTraits(u, facts.field()))
        .toList();
  }

  private void ask(UseFacts facts, Use use, List<WindowCheck.Answer> answers, Findings out) {
    if (use.timing().isUnknown()) {
      out.ask(this, facts.about(), () -> missing(facts, use, "timing", "crop stages"));
    } else {
      answers.stream()
          .flatMap(a -> a.unknown().stream())
          .filter(u -> u.startsWith("day on which"))
          .findFirst()
          .ifPresent(
              u ->
                  out.ask(
                      this,
                      facts.about(),
                      () ->
                          new Lookup(
                              u,
                              "stages of catalog/crops/" + facts.traces().crop().id() + ".yaml")));
    }
    if (use.cropHeightCm().isUnknown() && facts.isInCrop()) {
      out.ask(this, facts.about(), () -> missing(facts, use, "cropHeight", "crop stages"));
    }
  }

  private static Lookup missing(UseFacts facts, Use use, String key, String section) {
    String what = key.equals("timing") ? "crop stages" : "crop height";
    return new Lookup(
        what + " between which " + facts.ingredient().name() + " may go on " + facts.cropName(),
        Where.use(facts.ingredient(), use, key, section));
  }
}
