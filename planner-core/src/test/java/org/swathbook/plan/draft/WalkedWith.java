package org.swathbook.plan.draft;

import java.util.List;
import org.swathbook.check.BrokenHouseRule;

/** A walked draft of which other house rules are said to be broken than those that are. */
public final class WalkedWith {
  private WalkedWith() {}

  public static Walked broken(Walked walked, List<BrokenHouseRule> broken) {
    return new Walked(walked.draft(), walked.outcome(), broken, walked.lacking(), walked.cost());
  }
}
