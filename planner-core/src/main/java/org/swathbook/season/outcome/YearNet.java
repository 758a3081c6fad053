package org.swathbook.season.outcome;

import java.util.Comparator;
import java.util.Optional;
import org.swathbook.book.Book;
import org.swathbook.measure.Money;

/** Net return of single years; the outcome's own is their mean. */
public final class YearNet {
  private YearNet() {}

  /** Net return on an acre in the worst year; empty when a price is missing. */
  public static Optional<Money> worst(Book book, SeasonOutcome outcome) {
    return outcome.years().stream()
        .flatMap(y -> of(book, outcome, y).stream())
        .min(Comparator.naturalOrder());
  }

  /**
   * Net return on an acre in one year: yield goal times price, less the loss of the year and what
   * the passes made in it cost.
   */
  public static Optional<Money> of(Book book, SeasonOutcome outcome, YearOutcome year) {
    if (outcome.net().isEmpty() || outcome.cost().isEmpty()) {
      return Optional.empty();
    }
    Money weedFree = outcome.net().get().plus(outcome.loss()).plus(outcome.cost().get());
    Money cost = Money.ZERO;
    for (PassOutcome p : outcome.passes()) {
      if (year.passDays().get(p.index()) >= 0) {
        cost = cost.plus(book.passCost()).plus(p.cost().orElseThrow());
      }
    }
    return Optional.of(
        weedFree.minus(Money.ofDollars(year.lossShare() * weedFree.dollars())).minus(cost));
  }
}
