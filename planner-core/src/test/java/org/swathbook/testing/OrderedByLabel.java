package org.swathbook.testing;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.swathbook.catalog.AdjuvantKind;
import org.swathbook.catalog.Catalog;
import org.swathbook.catalog.IngredientId;
import org.swathbook.catalog.PouringOrder;
import org.swathbook.catalog.PouringOrder.Poured;
import org.swathbook.catalog.Product;

/** Catalogs in which products have a place of their own in filling a tank; invented. */
public final class OrderedByLabel {
  private OrderedByLabel() {}

  /**
   * The same with the place of a product.
   *
   * @param before what goes in later, between spaces: {@code "EC crop-oil glyphosate"}
   */
  public static Catalog in(Catalog catalog, String product, String before, String after) {
    PouringOrder order = new PouringOrder(poured(before), poured(after));
    List<Product> products =
        catalog.products().stream()
            .map(p -> p.id().value().equals(product) ? with(p, order) : p)
            .toList();
    return new Catalog(
        catalog.ingredients(),
        products,
        catalog.weeds(),
        catalog.crops(),
        catalog.responses(),
        catalog.interactions());
  }

  private static Product with(Product p, PouringOrder order) {
    return new Product(
        p.id(),
        p.name(),
        p.contents(),
        p.formulation(),
        p.spoken(),
        p.step(),
        p.packageSize(),
        p.label(),
        Optional.of(order),
        p.protection(),
        p.note(),
        p.source(),
        p.sources());
  }

  private static Set<Poured> poured(String words) {
    return Arrays.stream(words.split(" "))
        .filter(w -> !w.isEmpty())
        .map(OrderedByLabel::one)
        .collect(Collectors.toSet());
  }

  private static Poured one(String word) {
    if (word.length() == 2) {
      return new Poured.Formulation(word);
    }
    Optional<AdjuvantKind> kind = AdjuvantKind.find(word);
    return kind.isPresent()
        ? new Poured.OfKind(kind.get())
        : new Poured.Holding(IngredientId.of(word));
  }
}
