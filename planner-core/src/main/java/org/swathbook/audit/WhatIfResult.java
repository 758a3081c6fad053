package org.swathbook.audit;

import java.util.List;
import org.swathbook.audit.FieldChange.Outcome;
import org.swathbook.measure.Money;

/** One change on all fields, in the order of the fields. */
public record WhatIfResult(WhatIf change, List<FieldChange> fields) {

  public WhatIfResult {
    fields = List.copyOf(fields);
  }

  public int count(Outcome outcome) {
    return (int) fields.stream().filter(f -> f.outcome() == outcome).count();
  }

  public double acresImproved() {
    return fields.stream()
        .filter(f -> f.outcome() == Outcome.IMPROVED)
        .mapToDouble(f -> f.field().acres())
        .sum();
  }

  /** Cost of the change on the fields that it improves. */
  public Money cost() {
    Money sum = Money.ZERO;
    for (FieldChange f : fields) {
      if (f.outcome() == Outcome.IMPROVED) {
        sum = sum.plus(f.costOfField().orElse(Money.ZERO));
      }
    }
    return sum;
  }

  /** The same on an acre of them; zero when there are none. */
  public Money costPerAcreImproved() {
    double acres = acresImproved();
    return acres > 0 ? Money.ofDollars(cost().dollars() / acres) : Money.ZERO;
  }
}
