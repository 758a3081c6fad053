package org.swathbook.check;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.catalog.Use;
import org.swathbook.growth.PassTiming;
import org.swathbook.growth.Timings;
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
import org.swathbook.rules.TankOffers;
import org.swathbook.rules.UseFacts;
import org.swathbook.season.PassOutcome;
import org.swathbook.season.WalkedPasses;
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
  private final TankOffers offers;

  /** What the journal alone forbids, whatever is in the tank. */
  private final Findings ofJournal = Findings.all();

  private MixJudge(Field field, MixScene scene, Optional<SunTimes> sun) {
    this.field = field;
    this.scene = scene;
    this.sun = sun;
    this.offers = new TankOffers(scene.book(), scene.traces());
    RuleBook.nextCrop().judgeJournal(scene.book(), field, ofJournal);
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
    return judge(job, withoutWalk(job, Findings.all()));
  }

  /**
   * Which rules object and where, without their words; or nothing when labels and journal alone
   * block the job more often than so many times: nobody then needs to know what it would do to the
   * weeds.
   */
  Optional<JudgedMix> glance(SprayJob job, long mostBlocks) {
    WithoutWalk known = withoutWalk(job, Findings.places());
    return Judgement.leastBlocks(known.ofUses(), known.ofSequence()) > mostBlocks
        ? Optional.empty()
        : Optional.of(judge(job, known));
  }

  /** What is found of a job without walking the season. */
  private record WithoutWalk(List<ActiveUse> actives, Findings ofUses, Findings ofSequence) {}

  private WithoutWalk withoutWalk(SprayJob job, Findings out) {
    PassTiming timing = Timings.on(scene.traces(), job.date());
    out.addAll(ofJournal);
    List<ActiveUse> actives = uses(job, timing, out);
    PairJudge.judge(actives, About.PROGRAM.withPass(scene.passIndex()), out);
    Findings sequence =
        SequenceJudge.judgeTank(
            scene.book(),
            field,
            new DatedMix(
                scene.passIndex(), job.date(), PassPositions.of(scene.traces(), timing), job.mix()),
            out.fresh());
    return new WithoutWalk(actives, out, sequence);
  }

  private JudgedMix judge(SprayJob job, WithoutWalk known) {
    WalkedPasses walked = scene.with(job.mix());
    PassOutcome pass = MixScene.pass(walked);
    PassFacts facts =
        new PassFacts(
            scene.book(),
            scene.traces(),
            walked,
            pass,
            PassPositions.of(scene.traces(), pass.timing()),
            known.actives(),
            Optional.of(job),
            offers);
    Findings out = known.ofUses();
    for (PassRule rule : PASS_RULES) {
      rule.judge(facts, out);
    }
    out.addAll(dayFindings(facts, job, sun, out.fresh()));
    out.addAll(known.ofSequence());
    Judgement judgement =
        Judgement.of(out.withoutPass(), List.of(), List.of(JudgedTank.of(known.actives())));
    return new JudgedMix(job, facts, judgement);
  }

  /** What the rules on the day alone say. */
  public static Findings dayFindings(PassFacts facts, SprayJob job, Optional<SunTimes> sun) {
    return dayFindings(facts, job, sun, Findings.all());
  }

  /** The same, put into a collector. */
  public static Findings dayFindings(
      PassFacts facts, SprayJob job, Optional<SunTimes> sun, Findings out) {
    DayFacts day = new DayFacts(facts, job, sun);
    for (DayRule rule : DAY_RULES) {
      rule.judge(day, out);
    }
    return out;
  }

  private List<ActiveUse> uses(SprayJob job, PassTiming timing, Findings out) {
    List<ActiveUse> actives = new ArrayList<>();
    for (UseFacts facts :
        UseJudge.facts(scene.book(), scene.traces(), scene.passIndex(), timing, job)) {
      Optional<Use> use = UseJudge.choose(facts);
      out.addAll(UseJudge.judge(facts, use, out.fresh()));
      actives.add(new ActiveUse(facts.dose(), facts.active(), use));
    }
    return actives;
  }
}
