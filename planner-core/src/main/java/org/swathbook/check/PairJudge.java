package org.swathbook.check;

import java.util.List;
import java.util.Set;
import org.swathbook.book.Book;
import org.swathbook.catalog.Position;
import org.swathbook.growth.PassTiming;
import org.swathbook.growth.TraceSet;
import org.swathbook.program.Dose;
import org.swathbook.program.Mix;
import org.swathbook.rules.About;
import org.swathbook.rules.ActiveUse;
import org.swathbook.rules.Findings;
import org.swathbook.rules.PairRule;
import org.swathbook.rules.PassPositions;
import org.swathbook.rules.RuleBook;
import org.swathbook.tank.TankNeeds;

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
    Set<Position> positions = PassPositions.of(traces, timing);
    return blocks(tank(book, traces, timing, positions, first, second));
  }

  /**
   * Whether two doses may not stand in one tank, or one of them goes without what its label asks
   * for because the other refuses it: a tank that may be sprayed, and that nobody would plan.
   */
  public static boolean spoils(
      Book book,
      TraceSet traces,
      PassTiming timing,
      Set<Position> positions,
      Dose first,
      Dose second) {
    List<ActiveUse> tank = tank(book, traces, timing, positions, first, second);
    return blocks(tank)
        || !TankNeeds.of(tank.stream().map(ActiveUse::partner).toList()).unmet().isEmpty();
  }

  private static List<ActiveUse> tank(
      Book book,
      TraceSet traces,
      PassTiming timing,
      Set<Position> positions,
      Dose first,
      Dose second) {
    return UseJudge.facts(book, traces, timing, positions, Mix.of(List.of(first, second))).stream()
        .map(f -> new ActiveUse(f.dose(), f.active(), UseJudge.choose(f)))
        .toList();
  }

  private static boolean blocks(List<ActiveUse> tank) {
    Findings out = Findings.counting();
    judge(tank, About.PROGRAM, out);
    return out.isBlocked();
  }
}
