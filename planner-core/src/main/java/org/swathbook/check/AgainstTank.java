package org.swathbook.check;

import java.util.List;
import org.swathbook.catalog.Ingredient;
import org.swathbook.program.Dose;
import org.swathbook.program.SprayJob;
import org.swathbook.rules.Finding;
import org.swathbook.rules.PassFacts;
import org.swathbook.rules.Rated;
import org.swathbook.rules.RuleBook;
import org.swathbook.rules.SequenceRule;
import org.swathbook.rules.Severity;
import org.swathbook.rules.UseRule;

/**
 * What blocks a tank or warns of it, as far as a change of the tank may answer it.
 *
 * @param job the tank as it is, and {@code facts} the crop, weeds and uses by which it was judged
 * @param findings blocks and warnings, in the order of the judgement
 */
record AgainstTank(SprayJob job, PassFacts facts, List<Finding> findings) {

  AgainstTank {
    findings = List.copyOf(findings);
  }

  static AgainstTank of(JudgedMix judged) {
    return new AgainstTank(
        judged.job(),
        judged.facts(),
        judged.judgement().findings().stream()
            .filter(f -> f.severity() == Severity.BLOCK || f.severity() == Severity.WARN)
            .toList());
  }

  boolean stands(String rule) {
    return findings.stream().anyMatch(f -> f.rule().value().equals(rule));
  }

  /** Whether something speaks of an active of the dose, or of the whole tank by a block. */
  boolean speaksOf(Dose dose) {
    return findings.stream().anyMatch(f -> speaksOf(f, dose));
  }

  /** Whether a block that another hour or day would leave speaks of the dose. */
  boolean isBlockedOnAnyDay(Dose dose) {
    return findings.stream()
        .filter(f -> f.severity() == Severity.BLOCK && !DayBlocks.isOfTheDay(f))
        .anyMatch(f -> speaksOf(f, dose));
  }

  /** Whether less of the dose may answer something that is said of it. */
  boolean mayAskForLess(Dose dose) {
    return findings.stream().anyMatch(f -> speaksOf(f, dose) && turnsOnAmount(f));
  }

  /** Whether an active is rated to work on a weed of which something is said. */
  boolean mayHelp(Ingredient active) {
    return findings.stream()
        .flatMap(f -> f.about().weed().stream())
        .anyMatch(weed -> Rated.works(facts, facts.pressure(weed), active));
  }

  private static boolean speaksOf(Finding f, Dose dose) {
    return f.about()
        .ingredient()
        .map(i -> dose.actives().stream().anyMatch(a -> a.ingredient().id().equals(i)))
        .orElse(f.severity() == Severity.BLOCK);
  }

  /** Whether less of an active may answer it; a warning of weeds or of the day only grows. */
  private static boolean turnsOnAmount(Finding f) {
    return f.severity() == Severity.BLOCK
        || RuleBook.find(f.rule().value())
            .filter(r -> r instanceof SequenceRule || r instanceof UseRule u && u.readsAmount())
            .isPresent();
  }
}
