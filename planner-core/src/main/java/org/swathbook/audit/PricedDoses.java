package org.swathbook.audit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Position;
import org.swathbook.catalog.Product;
import org.swathbook.catalog.Use;
import org.swathbook.growth.UseFinder;
import org.swathbook.measure.Money;
import org.swathbook.measure.Rate;
import org.swathbook.program.Dose;
import org.swathbook.program.Doses;
import org.swathbook.rules.PracticalRange;

/**
 * What could be added to a post pass: every product of one active that has a price, at the
 * practical amounts at the low and the high end of what its uses allow on the field's soils.
 */
record PricedDoses(Dose dose, Money cost) {

  /** The cheapest on an acre first. */
  static List<PricedDoses> of(Book book, Field field) {
    List<PricedDoses> out = new ArrayList<>();
    for (Product product : book.catalog().products()) {
      if (product.isSingle()) {
        for (double amount : amounts(book, field, product)) {
          Rate rate =
              new Rate(
                  amount,
                  product.spoken().unit(),
                  product.spoken().area(),
                  product.spoken().basis());
          Dose dose = Doses.ofProduct(book.catalog(), product, rate);
          Optional<Money> cost = book.prices().perAcre(dose);
          cost.ifPresent(c -> out.add(new PricedDoses(dose, c)));
        }
      }
    }
    out.sort(
        Comparator.comparing(PricedDoses::cost)
            .thenComparing(d -> d.dose().product().id().value())
            .thenComparingDouble(d -> d.dose().rate().amount()));
    return List.copyOf(out);
  }

  Ingredient active() {
    return dose.actives().get(0).ingredient();
  }

  private static TreeSet<Double> amounts(Book book, Field field, Product product) {
    Ingredient active = book.catalog().ingredient(product.contents().get(0).ingredient());
    TreeSet<Double> out = new TreeSet<>();
    for (Use use :
        UseFinder.candidates(active, product.formulation(), field, Position.Phase.IN_CROP)) {
      if (!use.refused()) {
        PracticalRange.of(product, use, field)
            .ifPresent(
                r -> {
                  out.add(r.low().amount());
                  out.add(r.high().amount());
                });
      }
    }
    return out;
  }
}
