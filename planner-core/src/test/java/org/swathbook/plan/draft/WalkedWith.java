package org.swathbook.plan.draft;

import java.util.List;
import org.swathbook.check.BrokenHouseRule;

/** A walked draft of which other things are said than what came of it. */
public final class WalkedWith {
  private WalkedWith() {}

  public static Walked broken(Walked walked, List<BrokenHouseRule> broken) {
    return new Walked(walked.draft(), walked.outcome(), broken, walked.lacking(), walked.cost());
  }

  static Walked lacking(Walked walked, int actives) {
    return new Walked(walked.draft(), walked.outcome(), walked.broken(), actives, walked.cost());
  }
}
