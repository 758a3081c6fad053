package org.swathbook.plan.exact;

import java.util.List;
import java.util.Set;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.swathbook.book.HouseRules;
import org.swathbook.check.HouseRuleCheck;
import org.swathbook.plan.draft.LoneSites;
import org.swathbook.plan.draft.PassRules;
import org.swathbook.season.PreparedPass;
import org.swathbook.season.Standing;

/** What the first passes of a program break of the house rules, whatever comes after them. */
final class PrefixRules {
  private final PassRules rules;
  private final Set<String> mayBreak;

  /**
   * @param mayBreak names of the rules that a program may break
   */
  PrefixRules(Candidates candidates, HouseRules house, Set<String> mayBreak) {
    this.rules = new PassRules(candidates.kernel(), house, candidates.offers());
    this.mayBreak = mayBreak;
  }

  /** Of the passes that are made: what they lack is not held against a program. */
  Breach atStart(Prefix start) {
    return Breach.none(rules.lone(start.made()));
  }

  /**
   * What the passes break with one more; null when that is a rule that may not be broken.
   *
   * @param broken what they break without it
   * @param standing what stands on its date after the passes before it; asked for only when the
   *     other rules let the pass come
   */
  @Nullable Breach after(
      Prefix before, Breach broken, Candidate next, Supplier<Standing> standing) {
    Breaking breaking = new Breaking(broken);
    List<PreparedPass> passes = before.prepared();
    passes.add(next.pass());
    double windows = rules.windows(passes);
    if (windows > 0) {
      if (!mayBreak.contains(HouseRuleCheck.WINDOW_CONFIDENCE)) {
        return null;
      }
      breaking.sum = broken.withWindows(windows);
    }
    LoneSites lone = rules.next(before.laid(), broken.lone(), next.laid(), standing, breaking);
    return lone == null ? null : breaking.sum.with(lone);
  }

  private final class Breaking implements PassRules.Listener {
    private Breach sum;

    Breaking(Breach from) {
      this.sum = from;
    }

    @Override
    public boolean missed(String rule, double deficit) {
      sum = sum.with(rule, deficit);
      return mayBreak.contains(rule);
    }
  }
}
