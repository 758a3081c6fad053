package org.swathbook.check;

import java.util.List;
import org.swathbook.book.Book;
import org.swathbook.growth.PassTiming;
import org.swathbook.growth.TraceSet;
import org.swathbook.program.Dose;
import org.swathbook.program.Mix;
import org.swathbook.rules.About;
import org.swathbook.rules.ActiveUse;
import org.swathbook.rules.Findings;
import org.swathbook.rules.PairRule;
import org.swathbook.rules.RuleBook;

/** Pair rules on the actives of one tank. */
public final class PairJudge {
  private static final List<PairRule> RULES = RuleBook.ofScope(PairRule.class);

  private PairJudge() {}

  /**
   * Every pair of actives once, in the order of the mix. What one product holds is one label's own
   * affair and is no pair.
   */
  public static void judge(List<ActiveUse> tank, About about, Findings out) {
    for (int i = 0; i < tank.size(); i++) {
      for (int j = i + 1; j < tank.size(); j++) {
        if (!tank.get(i).isOfOneProductWith(tank.get(j))) {
          for (PairRule rule : RULES) {
            rule.judge(tank.get(i), tank.get(j), about, out);
          }
        }
      }
    }
    for (PairRule rule : RULES) {
      rule.ask(tank, about, out);
    }
  }

  /** Whether two doses may not stand in one tank on a date of the book's season; makes no words. */
  public static boolean blocks(
      Book book, TraceSet traces, PassTiming timing, Dose first, Dose second) {
    List<ActiveUse> tank =
        UseJudge.facts(book, traces, 0, timing, Mix.of(List.of(first, second))).stream()
            .map(f -> new ActiveUse(f.dose(), f.active(), UseJudge.choose(f)))
            .toList();
    Findings out = Findings.counting();
    judge(tank, About.PROGRAM, out);
    return out.isBlocked();
  }
}
