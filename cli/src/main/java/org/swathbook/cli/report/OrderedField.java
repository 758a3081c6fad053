package org.swathbook.cli.report;

import java.util.List;
import java.util.Optional;
import org.swathbook.book.Field;
import org.swathbook.catalog.ProductId;
import org.swathbook.check.Judgement;
import org.swathbook.plan.change.JudgedChange;
import org.swathbook.plan.change.OwnWork;
import org.swathbook.program.Dose;
import org.swathbook.rules.Verdict;
import org.swathbook.rules.label.RestrictedUseRule;
import org.swathbook.season.outcome.SeasonOutcome;

/**
 * A field for which something is bought.
 *
 * @param program the file it is kept in, or how it was come by
 * @param substitutes only where they were asked for
 */
public record OrderedField(
    Field field,
    String program,
    Judgement judgement,
    SeasonOutcome outcome,
    List<InItsPlace> substitutes) {

  /**
   * What could go into a pass in the place of a product.
   *
   * @param pass from 1
   * @param failing what the product itself does, where that is less than half at the height of the
   *     weeds that then stand
   */
  public record InItsPlace(
      int pass, Dose out, Optional<OwnWork> failing, List<JudgedChange> changes) {
    public InItsPlace {
      changes = List.copyOf(changes);
    }
  }

  public OrderedField {
    substitutes = List.copyOf(substitutes);
  }

  public Verdict verdict() {
    return judgement.verdict();
  }

  /** Products of the passes to come that certified applicators alone may buy and apply. */
  public List<ProductId> restrictedUse() {
    return judgement.findings().stream()
        .filter(RestrictedUseRule::isNotice)
        .flatMap(f -> f.about().product().stream())
        .distinct()
        .sorted()
        .toList();
  }
}
