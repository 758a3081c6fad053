package org.swathbook.program;

import java.util.List;
import org.swathbook.catalog.Catalog;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Product;
import org.swathbook.measure.Basis;
import org.swathbook.measure.Rate;
import org.swathbook.measure.Unit;

/** Turns product rates into doses of actives and back. The one place where strengths meet rates. */
public final class Doses {
  private Doses() {}

  /**
   * A product at a product rate; the rate must be a volume for a liquid and a weight for a dry
   * product.
   */
  public static Dose ofProduct(Catalog catalog, Product product, Rate productRate) {
    List<ActiveDose> actives =
        product.contents().stream()
            .map(
                c -> {
                  Ingredient i = catalog.ingredient(c.ingredient());
                  return new ActiveDose(
                      i, activeRate(c.concentration().activeKgPerHa(productRate), i.rateBasis()));
                })
            .toList();
    return new Dose(product, productRate, actives, false);
  }

  /** An ingredient at a weight rate, brought by a product that holds it alone. */
  public static Dose ofIngredient(Ingredient ingredient, Product single, Rate activeRate) {
    double perHa =
        single
            .find(ingredient.id())
            .orElseThrow()
            .concentration()
            .productPerHa(activeRate.kgPerHa());
    return new Dose(
        single, productRate(single, perHa), List.of(new ActiveDose(ingredient, activeRate)), true);
  }

  /** kg/ha as lb/acre of the active's basis. */
  public static Rate activeRate(double kgPerHa, Basis basis) {
    return Rate.lbPerAcre(Unit.POUND.fromSi(kgPerHa) / 10000 * Unit.ACRE.toSi(1), basis);
  }

  /** A rate of its one active as a rate in the unit in which the product is spoken. */
  public static Rate productRate(Product single, Rate active) {
    return productRate(
        single, single.contents().get(0).concentration().productPerHa(active.kgPerHa()));
  }

  /** Litres or kilograms per hectare as a rate in the unit in which the product is spoken. */
  public static Rate productRate(Product product, double perHa) {
    Unit unit = product.spoken().unit();
    Unit area = product.spoken().area();
    return new Rate(unit.fromSi(perHa) / 10000 * area.toSi(1), unit, area, Basis.PRODUCT);
  }
}
