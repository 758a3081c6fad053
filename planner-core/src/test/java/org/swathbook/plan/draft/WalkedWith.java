package org.swathbook.plan.draft;

import java.util.List;
import org.swathbook.check.BrokenHouseRule;
import org.swathbook.measure.Money;
import org.swathbook.season.outcome.SeasonSums;

/** Walked drafts of which other things are said than what came of them. */
public final class WalkedWith {
  private WalkedWith() {}

  /** Invented: nothing was walked. */
  public static Walked invented(
      Draft draft, SeasonSums outcome, List<BrokenHouseRule> broken, Money cost) {
    return new Walked(draft, outcome, broken, 0, cost);
  }

  public static Walked broken(Walked walked, List<BrokenHouseRule> broken) {
    return new Walked(walked.draft(), walked.outcome(), broken, walked.lacking(), walked.cost());
  }

  static Walked lacking(Walked walked, int actives) {
    return new Walked(walked.draft(), walked.outcome(), walked.broken(), actives, walked.cost());
  }
}
