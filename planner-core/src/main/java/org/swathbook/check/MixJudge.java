package org.swathbook.check;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.program.SprayJob;
import org.swathbook.rules.About;
import org.swathbook.rules.ActiveUse;
import org.swathbook.rules.DayFacts;
import org.swathbook.rules.DayRule;
import org.swathbook.rules.Findings;
import org.swathbook.rules.PassFacts;
import org.swathbook.rules.PassPositions;
import org.swathbook.rules.PassRule;
import org.swathbook.rules.RuleBook;
import org.swathbook.rules.UseFacts;
import org.swathbook.weather.SunTimes;

/**
 * Judges a tank on its day in its field by every rule on uses, pairs, passes, days and sequences.
 * What was seen takes the place of what is modelled; the journal is what was sprayed before.
 */
public final class MixJudge {
  private static final List<PassRule> PASS_RULES = RuleBook.ofScope(PassRule.class);
  private static final List<DayRule> DAY_RULES = RuleBook.ofScope(DayRule.class);

  private final Field field;
  private final MixScene scene;
  private final Optional<SunTimes> sun;

  private MixJudge(Field field, MixScene scene, Optional<SunTimes> sun) {
    this.field = field;
    this.scene = scene;
    this.sun = sun;
  }

  /**
   * A judge of jobs that differ from this one in their tank, sprayer or weather alone.
   *
   * @param sun of the day of the job at the field; empty when the field's place is not known
   * @throws IllegalArgumentException in words, when the day lies outside the field's season or the
   *     book lacks weather or a price that the walk needs
   */
  public static MixJudge of(
      Book book, Field field, SprayJob job, LocalDate today, Optional<SunTimes> sun) {
    return new MixJudge(field, MixScene.of(book, field, job, today), sun);
  }

  public JudgedMix judge(SprayJob job) {
    MixScene.Walked walked = scene.walk(job);
    Findings out = Findings.all();
    RuleBook.nextCrop().judgeJournal(scene.book(), field, out);
    List<ActiveUse> actives = uses(job, walked, out);
    PairJudge.judge(actives, about(walked), out);
    PassFacts facts =
        new PassFacts(
            scene.book(),
            scene.traces(),
            walked.season(),
            walked.pass(),
            PassPositions.of(scene.traces(), walked.pass().timing()),
            actives,
            Optional.of(job));
    for (PassRule rule : PASS_RULES) {
      rule.judge(facts, out);
    }
    out.addAll(dayFindings(facts, job, sun));
    out.addAll(
        SequenceJudge.judge(
            scene.book(),
            field,
            List.of(
                new DatedMix(walked.pass().index(), job.date(), facts.positions(), job.mix()))));
    Judgement judgement =
        Judgement.of(out.withoutPass(), List.of(), List.of(JudgedTank.of(actives)));
    return new JudgedMix(job, facts, judgement);
  }

  /** What the rules on the day alone say. */
  static Findings dayFindings(PassFacts facts, SprayJob job, Optional<SunTimes> sun) {
    Findings out = Findings.all();
    DayFacts day = new DayFacts(facts, job, sun);
    for (DayRule rule : DAY_RULES) {
      rule.judge(day, out);
    }
    return out;
  }

  private List<ActiveUse> uses(SprayJob job, MixScene.Walked walked, Findings out) {
    List<ActiveUse> actives = new ArrayList<>();
    for (UseFacts facts :
        UseJudge.facts(
            scene.book(), scene.traces(), walked.pass().index(), walked.pass().timing(), job)) {
      out.addAll(UseJudge.judge(facts));
      actives.add(new ActiveUse(facts.dose(), facts.active(), UseJudge.choose(facts)));
    }
    return actives;
  }

  private static About about(MixScene.Walked walked) {
    return About.PROGRAM.withPass(walked.pass().index());
  }
}
