package org.swathbook.check;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.swathbook.book.Book;
import org.swathbook.catalog.Use;
import org.swathbook.growth.TraceSet;
import org.swathbook.rules.About;
import org.swathbook.rules.ActiveUse;
import org.swathbook.rules.Findings;
import org.swathbook.rules.PassFacts;
import org.swathbook.rules.PassPositions;
import org.swathbook.rules.PassRule;
import org.swathbook.rules.ProgramFacts;
import org.swathbook.rules.ProgramRule;
import org.swathbook.rules.RuleBook;
import org.swathbook.rules.TankOffers;
import org.swathbook.rules.UseFacts;
import org.swathbook.season.outcome.PassOutcome;
import org.swathbook.season.outcome.SeasonOutcome;

/**
 * All rules on a program and the season that it makes. Passes that are made count in all of it, in
 * sums and intervals by the journal; they are not judged again themselves, for nothing can change
 * them.
 */
public final class ProgramJudge {
  private static final List<PassRule> PASS_RULES = RuleBook.ofScope(PassRule.class);
  private static final List<ProgramRule> PROGRAM_RULES = RuleBook.ofScope(ProgramRule.class);

  private ProgramJudge() {}

  public static Judgement judge(Book book, TraceSet traces, SeasonOutcome season, LocalDate today) {
    Findings out = Findings.all();
    RuleBook.nextCrop().judgeJournal(book, traces.field(), out);
    TankOffers offers = new TankOffers(book, traces);
    List<DatedMix> dated = new ArrayList<>();
    List<JudgedTank> tanks = new ArrayList<>();
    for (PassOutcome pass : season.passes()) {
      if (pass.made()) {
        tanks.add(JudgedTank.of(List.of()));
        continue;
      }
      tanks.add(JudgedTank.of(judgePass(book, traces, season, pass, offers, out)));
      dated.add(
          new DatedMix(
              pass.index(),
              pass.timing().medianDate(),
              pass.planned(),
              PassPositions.of(traces, pass.timing()),
              pass.mix()));
    }
    out.addAll(SequenceJudge.judge(book, traces.field(), dated));
    ProgramFacts facts = new ProgramFacts(book, traces, season, today);
    for (ProgramRule rule : PROGRAM_RULES) {
      rule.judge(facts, out);
    }
    return Judgement.of(toCome(season, out), HouseRuleCheck.broken(book, offers, season), tanks);
  }

  /** Without what is said of passes that are made. */
  private static Findings toCome(SeasonOutcome season, Findings out) {
    return out.without(
        f ->
            f.about().pass().isPresent()
                && season.passes().get(f.about().pass().getAsInt()).made());
  }

  /** Judges the pass and returns the use of each of its actives. */
  private static List<ActiveUse> judgePass(
      Book book,
      TraceSet traces,
      SeasonOutcome season,
      PassOutcome pass,
      TankOffers offers,
      Findings out) {
    List<ActiveUse> actives = new ArrayList<>();
    for (UseFacts facts : UseJudge.facts(book, traces, pass.index(), pass.timing(), pass.mix())) {
      Optional<Use> use = UseJudge.choose(facts);
      out.addAll(UseJudge.judge(facts, use, Findings.all()));
      actives.add(new ActiveUse(facts.dose(), facts.active(), use));
    }
    PairJudge.judge(actives, About.PROGRAM.withPass(pass.index()), out);
    PassFacts facts =
        new PassFacts(
            book,
            traces,
            season.walkedPasses(),
            pass,
            PassPositions.of(traces, pass.timing()),
            actives,
            Optional.empty(),
            offers);
    for (PassRule rule : PASS_RULES) {
      rule.judge(facts, out);
    }
    return actives;
  }
}
