package org.swathbook.plan;

import java.time.LocalDate;
import java.util.List;
import org.swathbook.catalog.ProductId;
import org.swathbook.measure.Money;

/**
 * Within what bounds a program may change.
 *
 * @param from first planned date in the book's season of a pass that may still change
 * @param unavailable products that cannot be had
 * @param extraForAddedPass what an added pass costs beside trip and products, an acre
 */
public record ChangeTerms(LocalDate from, List<ProductId> unavailable, Money extraForAddedPass) {

  public ChangeTerms {
    unavailable = List.copyOf(unavailable);
  }
}
