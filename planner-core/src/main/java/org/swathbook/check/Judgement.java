package org.swathbook.check;

import java.util.ArrayList;
import java.util.List;
import org.swathbook.rules.Ask;
import org.swathbook.rules.Finding;
import org.swathbook.rules.Findings;
import org.swathbook.rules.Verdict;
import org.swathbook.rules.label.NotVerifiedRule;
import org.swathbook.rules.label.RateBelowUseRule;
import org.swathbook.rules.mixture.BelowFullRateRule;

/**
 * What all rules together say of a program, or of one tank.
 *
 * @param findings in the order of {@link org.swathbook.rules.Findings#ORDER}, the one on all that
 *     is not known among them
 * @param asks the rows of that one
 * @param brokenHouseRules in the order of {@link HouseRuleCheck#NAMES}
 * @param tanks what is found of the tank of each pass, in the order of the passes
 */
public record Judgement(
    Verdict verdict,
    List<Finding> findings,
    List<Ask> asks,
    List<BrokenHouseRule> brokenHouseRules,
    List<JudgedTank> tanks) {

  public Judgement {
    findings = List.copyOf(findings);
    asks = List.copyOf(asks);
    brokenHouseRules = List.copyOf(brokenHouseRules);
    tanks = List.copyOf(tanks);
  }

  /** Sums up what was found: asks in one finding, and nothing said twice. */
  static Judgement of(Findings out, List<BrokenHouseRule> broken, List<JudgedTank> tanks) {
    List<Ask> asks = out.sortedAsks();
    List<Finding> all = out.sorted();
    List<Finding> findings = new ArrayList<>(all);
    findings.removeIf(f -> isNamedAlready(f, all));
    NotVerifiedRule.sumUp(asks).ifPresent(findings::add);
    findings.sort(Findings.ORDER);
    return new Judgement(Verdict.of(findings), findings, asks, broken, tanks);
  }

  /** A rate that falls short of the full one is not said to fall short of the least one too. */
  private static boolean isNamedAlready(Finding f, List<Finding> all) {
    return f.rule().equals(RateBelowUseRule.CARD.id())
        && all.stream()
            .anyMatch(
                other ->
                    other.rule().equals(BelowFullRateRule.CARD.id())
                        && other.severity().compareTo(f.severity()) <= 0
                        && other.about().pass().equals(f.about().pass())
                        && other.about().ingredient().equals(f.about().ingredient()));
  }

  /** Names of the broken house rules, each once. */
  public List<String> brokenNames() {
    return brokenHouseRules.stream().map(BrokenHouseRule::name).distinct().toList();
  }
}
