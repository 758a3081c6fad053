package org.swathbook.check;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.swathbook.program.SprayJob;
import org.swathbook.rules.ActiveUse;
import org.swathbook.rules.Finding;
import org.swathbook.rules.Findings;
import org.swathbook.rules.PassFacts;
import org.swathbook.rules.PassRule;
import org.swathbook.rules.RuleId;
import org.swathbook.rules.Severity;

/**
 * Looks for tanks against which less stands than against one that was judged, and at each of the
 * others only until it is known to be none of them: whatever else a rule finds takes nothing back.
 */
final class MixGlance {
  private final MixJudge judge;
  private final Objections than;

  /** Rules that object to the tank that was judged: they are likely to object to the next. */
  private final List<PassRule> first = new ArrayList<>();

  private final List<PassRule> others = new ArrayList<>();

  /** What labels say of its actives: most of the other tanks hold them too. */
  private final List<UseVerdict> uses;

  MixGlance(MixJudge judge, JudgedMix than) {
    this.judge = judge;
    this.than = Objections.of(than.judgement());
    this.uses = judge.uses(than.job(), List.of(), Findings.places());
    Set<RuleId> object = new HashSet<>();
    for (Finding f : than.judgement().findings()) {
      if (f.severity() == Severity.BLOCK || f.severity() == Severity.WARN) {
        object.add(f.rule());
      }
    }
    for (PassRule rule : MixJudge.PASS_RULES) {
      (object.contains(rule.id()) ? first : others).add(rule);
    }
  }

  /**
   * Which rules object and where, without their words; empty when no less stands against the job.
   *
   * @param byBlocks whether fewer warnings do not count as less
   */
  Optional<JudgedMix> less(SprayJob job, boolean byBlocks) {
    Objections bar = byBlocks ? than.byBlocks() : than;
    Findings out = Findings.places();
    List<ActiveUse> actives = judge.ofLabels(job, uses, out);
    if (!Objections.atLeast(out).areFewerThan(bar)) {
      return Optional.empty();
    }
    PassFacts facts = judge.facts(job, actives);
    first.forEach(r -> r.judge(facts, out));
    if (!Objections.atLeast(out).areFewerThan(bar)) {
      return Optional.empty();
    }
    others.forEach(r -> r.judge(facts, out));
    judge.ofDay(facts, job, out);
    judge.ofSequence(job, out);
    JudgedMix judged = MixJudge.judged(job, facts, out);
    return Optional.of(judged).filter(j -> Objections.of(j.judgement()).areFewerThan(bar));
  }
}
