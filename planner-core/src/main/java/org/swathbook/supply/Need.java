package org.swathbook.supply;

import java.time.LocalDate;
import org.swathbook.catalog.Product;
import org.swathbook.measure.Dimension;
import org.swathbook.measure.Quantity;
import org.swathbook.measure.Unit;
import org.swathbook.program.Dose;
import org.swathbook.program.FieldId;

/**
 * What one pass over one field takes of a product.
 *
 * @param grower who farms the field; empty where nobody wrote it
 * @param pass its place in the program, from 1
 * @param date day on which it is expected
 * @param amount in gallons of what is poured, pounds of what is weighed
 */
public record Need(
    String grower, FieldId field, int pass, LocalDate date, Product product, Quantity amount) {

  /** Of a dose on so many acres: the rate times the acres. */
  public static Need of(
      String grower, FieldId field, double acres, int pass, LocalDate date, Dose dose) {
    Unit unit = unitOf(dose.product());
    return new Need(
        grower,
        field,
        pass,
        date,
        dose.product(),
        new Quantity(dose.rate().in(unit, Unit.ACRE).amount() * acres, unit));
  }

  /** In what a product is bought here. */
  static Unit unitOf(Product product) {
    return product.spoken().unit().dimension() == Dimension.MASS ? Unit.POUND : Unit.GALLON;
  }
}
