package org.swathbook.check;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.swathbook.rules.Finding;
import org.swathbook.rules.Findings;
import org.swathbook.rules.Severity;
import org.swathbook.rules.label.RateBelowUseRule;

/** How much stands against a tank: the places at which rules object, whatever words they have. */
record Objections(long blocks, long warnings) {

  static Objections of(Judgement judgement) {
    return of(judgement.findings());
  }

  /** Those that stand at least in a judgement, whatever else is found of the tank. */
  static Objections atLeast(Findings found) {
    // A judgement may leave out the rule that is left out here: see there.
    return of(found.stream().filter(f -> !f.rule().equals(RateBelowUseRule.CARD.id())).toList());
  }

  private static Objections of(List<Finding> findings) {
    Set<Finding> blocks = new HashSet<>();
    Set<Finding> warnings = new HashSet<>();
    for (Finding f : findings) {
      if (f.severity() == Severity.BLOCK) {
        blocks.add(f.place());
      } else if (f.severity() == Severity.WARN) {
        warnings.add(f.place());
      }
    }
    return new Objections(blocks.size(), warnings.size());
  }

  /** Whether there are fewer blocks than others have, or as many and fewer warnings. */
  boolean areFewerThan(Objections others) {
    return blocks < others.blocks || blocks == others.blocks && warnings < others.warnings;
  }

  /** Only fewer blocks are fewer than these, whatever the warnings. */
  Objections byBlocks() {
    return new Objections(blocks, 0);
  }
}
