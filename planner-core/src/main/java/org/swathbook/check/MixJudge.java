package org.swathbook.check;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.catalog.Position;
import org.swathbook.program.ActiveDose;
import org.swathbook.program.Dose;
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
import org.swathbook.season.outcome.WalkedPasses;
import org.swathbook.weather.SunTimes;

/**
 * Judges a tank on its day in its field by every rule on uses, pairs, passes, days and sequences.
 * What was seen takes the place of what is modelled; the journal is what was sprayed before.
 */
public final class MixJudge {
  static final List<PassRule> PASS_RULES = RuleBook.ofScope(PassRule.class);
  private static final List<DayRule> DAY_RULES = RuleBook.ofScope(DayRule.class);

  private final Field field;
  private final MixScene scene;
  private final Optional<SunTimes> sun;
  private final TankOffers offers;
  private final Set<Position> positions;

  /** What the journal alone forbids, whatever is in the tank. */
  private final Findings ofJournal = Findings.all();

  private MixJudge(Field field, MixScene scene, Optional<SunTimes> sun) {
    this.field = field;
    this.scene = scene;
    this.sun = sun;
    this.positions = PassPositions.of(scene.traces(), scene.timing());
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
    Findings out = Findings.all();
    PassFacts facts = facts(job, ofLabels(job, List.of(), out));
    PASS_RULES.forEach(r -> r.judge(facts, out));
    ofDay(facts, job, out);
    ofSequence(job, out);
    return judged(job, facts, out);
  }

  /**
   * Each active with the use that speaks, after what journal and labels say of it and of pairs.
   *
   * @param known what was said of actives of this job with other tanks or droplets, kept as the
   *     collector keeps it
   */
  List<ActiveUse> ofLabels(SprayJob job, List<UseVerdict> known, Findings out) {
    out.addAll(ofJournal);
    List<ActiveUse> actives = new ArrayList<>();
    for (UseVerdict said : uses(job, known, out)) {
      out.addAll(said.findings());
      actives.add(said.active());
    }
    PairJudge.judge(actives, About.PROGRAM.withPass(scene.passIndex()), out);
    return actives;
  }

  /**
   * What the use rules say of each active, in the order of the mix; nothing is added to what is.
   */
  List<UseVerdict> uses(SprayJob job, List<UseVerdict> known, Findings like) {
    List<UseVerdict> out = new ArrayList<>();
    for (Dose dose : job.mix().doses()) {
      for (ActiveDose active : dose.actives()) {
        out.add(use(job, dose, active, known, like));
      }
    }
    return out;
  }

  private UseVerdict use(
      SprayJob job, Dose dose, ActiveDose active, List<UseVerdict> known, Findings like) {
    for (UseVerdict said : known) {
      if (said.holds(dose, active, job.mix())) {
        return said;
      }
    }
    UseFacts facts =
        UseJudge.facts(
            scene.book(),
            scene.traces(),
            scene.passIndex(),
            scene.timing(),
            positions,
            dose,
            active,
            job.mix(),
            Optional.of(job));
    return UseVerdict.of(facts, like);
  }

  /** The job's pass as it is walked: what it does to the weeds that stand. */
  PassFacts facts(SprayJob job, List<ActiveUse> actives) {
    WalkedPasses walked = scene.with(job.mix());
    return new PassFacts(
        scene.book(),
        scene.traces(),
        walked,
        MixScene.pass(walked),
        positions,
        actives,
        Optional.of(job),
        offers);
  }

  void ofDay(PassFacts facts, SprayJob job, Findings out) {
    out.addAll(dayFindings(facts, job, sun, out.fresh()));
  }

  void ofSequence(SprayJob job, Findings out) {
    DatedMix tank = new DatedMix(scene.passIndex(), job.date(), positions, job.mix());
    out.addAll(SequenceJudge.judgeTank(scene.book(), field, tank, out.fresh()));
  }

  static JudgedMix judged(SprayJob job, PassFacts facts, Findings out) {
    return new JudgedMix(
        job,
        facts,
        Judgement.of(out.withoutPass(), List.of(), List.of(JudgedTank.of(facts.actives()))));
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
}
