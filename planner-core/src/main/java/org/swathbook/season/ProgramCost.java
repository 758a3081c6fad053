package org.swathbook.season;

import java.util.List;
import java.util.Optional;
import org.swathbook.book.Book;
import org.swathbook.measure.Money;

/** What a program costs on one acre. */
public final class ProgramCost {
  private ProgramCost() {}

  /**
   * Products and trips, mean over the years to the nearest cent; a missed pass costs nothing. Empty
   * when a product has no price.
   */
  public static Optional<Money> mean(Book book, List<PreparedPass> passes, int years) {
    long cents = 0;
    for (PreparedPass pass : passes) {
      Optional<Money> mix = book.prices().perAcre(pass.mix());
      if (mix.isEmpty()) {
        return Optional.empty();
      }
      long made = (long) years - pass.missedYears().size();
      cents += mix.get().plus(book.passCost()).cents() * made;
    }
    return Optional.of(new Money(Math.floorDiv(2 * cents + years, 2L * years)));
  }
}
