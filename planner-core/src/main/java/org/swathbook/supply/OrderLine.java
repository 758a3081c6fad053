package org.swathbook.supply;

import java.util.Optional;
import java.util.OptionalLong;
import org.swathbook.catalog.Product;
import org.swathbook.measure.Money;
import org.swathbook.measure.Price;
import org.swathbook.measure.Quantity;
import org.swathbook.measure.Unit;

/**
 * One product to buy. Amounts are in {@code unit}.
 *
 * @param needed by all passes together
 * @param onHand what of it is there already and is used first
 * @param packageSize smallest amount sold; empty when the book does not say
 * @param price empty when the book has none
 */
public record OrderLine(
    Product product,
    Unit unit,
    double needed,
    double onHand,
    Optional<Quantity> packageSize,
    Optional<Price> price) {

  /** What is left to buy before it is rounded to packages. */
  public double toBuy() {
    double rest = needed - onHand;
    // What is nothing but for rounding of the arithmetic is nothing.
    return rest <= Quantity.AT_LIMIT * needed ? 0 : rest;
  }

  /** Whole packages that hold what is to be bought; empty when their size is not known. */
  public OptionalLong packages() {
    if (packageSize.isEmpty()) {
      return OptionalLong.empty();
    }
    double whole = toBuy() / packageSize.get().in(unit);
    double near = Math.rint(whole);
    return OptionalLong.of(
        (long) (Math.abs(whole - near) <= Quantity.AT_LIMIT * near ? near : Math.ceil(whole)));
  }

  /** What is bought: whole packages, or the bare amount when their size is not known. */
  public double bought() {
    OptionalLong n = packages();
    return n.isPresent() ? n.getAsLong() * packageSize.orElseThrow().in(unit) : toBuy();
  }

  /** What of the packages is left when all passes are made. */
  public double leftOver() {
    return Math.max(0, bought() - toBuy());
  }

  /** Of what is bought; empty without a price. */
  public Optional<Money> cost() {
    return price.map(p -> Money.ofDollars(bought() * p.dollarsPer(unit)));
  }

  /** Of what the passes take, whoever has it already; empty without a price. */
  public Optional<Money> worthOfNeeded() {
    return price.map(p -> Money.ofDollars(needed * p.dollarsPer(unit)));
  }

  /** Of what is left; empty without a price. */
  public Optional<Money> worthOfLeftOver() {
    return price.map(p -> Money.ofDollars(leftOver() * p.dollarsPer(unit)));
  }
}
