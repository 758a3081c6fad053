package org.swathbook.book.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.swathbook.book.Prices;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Product;
import org.swathbook.measure.Basis;
import org.swathbook.measure.MeasureException;
import org.swathbook.measure.Rate;
import org.swathbook.program.Dose;
import org.swathbook.program.Doses;

/**
 * Makes doses of what people write: a product at its own rate, or a bare ingredient at a weight of
 * it, which then comes from the cheapest product that holds it alone. All methods throw {@link
 * MeasureException} with what is wrong and what would be right.
 */
public final class DoseParser {
  /** Litres or kilograms on a hectare, more than a thousand gallons an acre. */
  private static final double MOST_PER_HA = 10_000;

  private final Names names;
  private final Prices prices;

  DoseParser(Names names, Prices prices) {
    this.names = names;
    this.prices = prices;
  }

  /** What a name means: a product, or else an ingredient. */
  public Dose dose(String name, Rate rate) {
    Optional<Product> product = names.catalog().findProduct(known(name));
    return product.isPresent()
        ? ofProduct(product.get(), rate)
        : ofIngredient(names.catalog().findIngredient(name).orElseThrow(), rate);
  }

  /** A name that means a product or an ingredient. */
  String known(String name) {
    if (names.catalog().findProduct(name).isEmpty()
        && names.catalog().findIngredient(name).isEmpty()) {
      TreeSet<String> all = new TreeSet<>(names.productWords());
      all.addAll(names.ingredientWords());
      throw Names.unknown(name, "product or ingredient of the catalog", all);
    }
    return name;
  }

  /** The product of a name that must be one. */
  public Product product(String name) {
    Optional<Product> found = names.catalog().findProduct(name);
    if (found.isEmpty() && names.catalog().findIngredient(name).isPresent()) {
      throw new MeasureException(
          "'"
              + name
              + "' is an ingredient, not a product; name a product: "
              + strengths(names.ingredient(name)));
    }
    return found.orElseThrow(
        () -> Names.unknown(name, "product of the catalog", names.productWords()));
  }

  /** The ingredient of a name that must be one. */
  public Ingredient ingredient(String name) {
    if (names.catalog().findIngredient(name).isEmpty()
        && names.catalog().findProduct(name).isPresent()) {
      throw new MeasureException(
          "'" + name + "' is a product, not an ingredient; name it as 'product'");
    }
    return names.ingredient(name);
  }

  /** A product at a volume if it is a liquid, at a weight if it is dry. */
  public Dose ofProduct(Product product, Rate rate) {
    refuseSenseless(rate);
    boolean liquid = product.spoken().isVolume();
    if (rate.basis() != Basis.PRODUCT) {
      throw new MeasureException(
          "'"
              + rate
              + "' weighs an active, "
              + product.id()
              + " is a product; write its rate as '2 "
              + product.spoken().unitText()
              + "', or name the ingredient");
    }
    if (rate.isVolume() != liquid) {
      throw new MeasureException(
          "'"
              + rate
              + "' is a "
              + (rate.isVolume() ? "volume" : "weight")
              + ", "
              + product.id()
              + (liquid ? " is a liquid" : " is dry")
              + "; write its rate in "
              + product.spoken().unitText());
    }
    return Doses.ofProduct(names.catalog(), product, rate);
  }

  /** An ingredient at a weight, from the cheapest product that holds it alone. */
  public Dose ofIngredient(Ingredient ingredient, Rate rate) {
    Rate active = activeRate(ingredient, rate);
    return Doses.ofIngredient(
        ingredient,
        prices
            .cheapestSingle(names.catalog(), ingredient)
            .orElseThrow(
                () ->
                    new MeasureException(
                        "no product of the catalog holds "
                            + ingredient.name()
                            + " alone; name a product that holds it")),
        active);
  }

  /** An ingredient at a weight, from a product that was named too. */
  public Dose ofIngredient(Ingredient ingredient, Product from, Rate rate) {
    if (!from.isSingle() || from.find(ingredient.id()).isEmpty()) {
      throw new MeasureException(
          "'"
              + from.id()
              + "' does not hold "
              + ingredient.name()
              + " alone; name one of: "
              + strengths(ingredient));
    }
    return Doses.ofIngredient(ingredient, from, activeRate(ingredient, rate));
  }

  private Rate activeRate(Ingredient ingredient, Rate rate) {
    refuseSenseless(rate);
    if (rate.isVolume()) {
      throw new MeasureException(
          "'"
              + rate
              + "' of "
              + ingredient.name()
              + " does not say of which strength; write a weight of it, or name a product: "
              + strengths(ingredient));
    }
    Basis own = ingredient.rateBasis();
    if (rate.basis() == own) {
      return rate;
    }
    // A bare weight can only mean one thing where the active has no second way of being weighed.
    if (rate.basis() == Basis.PRODUCT && own == Basis.AI) {
      return new Rate(rate.amount(), rate.unit(), rate.area(), own);
    }
    throw new MeasureException(
        "'"
            + rate
            + "': "
            + ingredient.name()
            + " is weighed as "
            + own.symbol()
            + "; write '"
            + rate.unit().symbol()
            + " "
            + own.symbol()
            + "/"
            + rate.area().symbol()
            + "'");
  }

  private String strengths(Ingredient ingredient) {
    List<String> all = new ArrayList<>();
    for (Product p : names.catalog().singles(ingredient.id())) {
      all.add(p.id() + " (" + p.contents().get(0).concentration().written() + ")");
    }
    return all.isEmpty() ? "none holds it alone" : String.join(", ", all);
  }

  private static void refuseSenseless(Rate rate) {
    if (!(rate.amount() > 0)) {
      throw new MeasureException("the rate is zero; write what was or is to be sprayed");
    }
    if ((rate.isVolume() ? rate.litresPerHa() : rate.kgPerHa()) > MOST_PER_HA) {
      throw new MeasureException(
          "'" + rate + "' is more than any sprayer puts on an acre; check it and its unit");
    }
  }
}
