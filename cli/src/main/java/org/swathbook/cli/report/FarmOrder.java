package org.swathbook.cli.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.catalog.Product;
import org.swathbook.measure.Dimension;
import org.swathbook.measure.Money;
import org.swathbook.measure.Unit;
import org.swathbook.program.Dose;
import org.swathbook.season.outcome.PassOutcome;

/**
 * What the first programs of a grower's fields take of one product, all passes still to come.
 *
 * @param amount in {@code unit}: gallons of what is poured, pounds of what is weighed
 * @param cost empty without a price
 */
public record FarmOrder(Product product, double amount, Unit unit, Optional<Money> cost) {

  /** Of the fields of one grower; products in the order of the alphabet. */
  public static List<FarmOrder> of(Book book, List<PlannedField> plans) {
    Map<String, FarmOrder> of = new TreeMap<>();
    for (PlannedField plan : plans) {
      if (plan.isRefused()) {
        continue;
      }
      for (PassOutcome pass : plan.programs().get(0).outcome().passes()) {
        for (Dose d : pass.made() ? List.<Dose>of() : pass.mix().doses()) {
          of.merge(d.product().id().value(), of(book, plan.field(), d), FarmOrder::plus);
        }
      }
    }
    return new ArrayList<>(of.values());
  }

  private static FarmOrder of(Book book, Field field, Dose dose) {
    Unit unit = dose.rate().unit().dimension() == Dimension.MASS ? Unit.POUND : Unit.GALLON;
    return new FarmOrder(
        dose.product(),
        dose.rate().in(unit, Unit.ACRE).amount() * field.acres(),
        unit,
        book.prices().perAcre(dose).map(m -> Money.ofDollars(m.dollars() * field.acres())));
  }

  private FarmOrder plus(FarmOrder more) {
    return new FarmOrder(
        product, amount + more.amount, unit, cost.flatMap(m -> more.cost.map(m::plus)));
  }

  /**
   * Products and passes still to come of fields that have a program, on all their acres.
   *
   * @return empty when a price is missing
   */
  public static Optional<Money> cost(Book book, List<PlannedField> plans) {
    Money sum = Money.ZERO;
    for (PlannedField plan : plans) {
      List<PassOutcome> passes =
          plan.isRefused() ? List.of() : plan.programs().get(0).outcome().passes();
      for (PassOutcome p : passes) {
        if (p.made()) {
          continue;
        }
        if (p.cost().isEmpty()) {
          return Optional.empty();
        }
        Money perAcre = p.cost().get().plus(book.passCost());
        sum = sum.plus(Money.ofDollars(perAcre.dollars() * plan.field().acres()));
      }
    }
    return Optional.of(sum);
  }
}
