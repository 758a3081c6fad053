package org.swathbook.cli.report;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.swathbook.book.Book;
import org.swathbook.measure.Money;
import org.swathbook.program.Dose;
import org.swathbook.season.outcome.PassOutcome;
import org.swathbook.season.outcome.SeasonOutcome;

/**
 * What an acre costs when every pass is made. The outcome's own cost is the mean over the years, in
 * which a missed pass costs nothing.
 *
 * @param products empty when a product has no price
 * @param unpriced names of the products without a price
 */
public record CostSplit(Optional<Money> products, Money passes, List<String> unpriced) {

  public CostSplit {
    unpriced = List.copyOf(unpriced);
  }

  public static CostSplit of(Book book, SeasonOutcome outcome) {
    Optional<Money> products = Optional.of(Money.ZERO);
    Money passes = Money.ZERO;
    Set<String> unpriced = new LinkedHashSet<>();
    for (PassOutcome p : outcome.passes()) {
      products = products.flatMap(sum -> p.cost().map(sum::plus));
      passes = passes.plus(book.passCost());
      for (Dose d : p.mix().doses()) {
        if (book.prices().perAcre(d).isEmpty()) {
          unpriced.add(d.product().name());
        }
      }
    }
    return new CostSplit(products, passes, new ArrayList<>(unpriced));
  }

  public Optional<Money> total() {
    return products.map(passes::plus);
  }
}
