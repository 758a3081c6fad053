package org.swathbook.tank;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.swathbook.catalog.Product;
import org.swathbook.catalog.ProductId;
import org.swathbook.measure.Dimension;
import org.swathbook.measure.MeasureException;
import org.swathbook.measure.Numbers;
import org.swathbook.measure.Quantity;
import org.swathbook.measure.Unit;
import org.swathbook.program.Adjuvant;
import org.swathbook.program.Dose;
import org.swathbook.program.Mix;

/**
 * One load: what is poured, and how much water or fertilizer goes with it. Liquids take their own
 * room in the tank; how much room dry goods take is not known and counts as none, so that the last
 * of the carrier goes in up to the mark.
 *
 * @param products each once, in the order of the mix
 * @param adjuvants each kind once, in the order of the mix
 */
public record TankLoad(
    LoadSize size, List<LoadedProduct> products, List<LoadedAdjuvant> adjuvants) {

  public TankLoad {
    products = List.copyOf(products);
    adjuvants = List.copyOf(adjuvants);
  }

  /**
   * @param packages sizes in which products are sold, where known
   * @throws MeasureException in words, when an adjuvant is written both by weight and by volume, or
   *     the liquids alone are more than the load
   */
  public static TankLoad of(Mix mix, LoadSize size, Map<ProductId, Quantity> packages) {
    TankLoad load = new TankLoad(size, products(mix, size, packages), adjuvants(mix, size));
    if (!(load.carrierGallons() > 0)) {
      throw new MeasureException(
          "products and adjuvants alone are "
              + Numbers.decimals(load.liquidGallons() / size.acres(), 1)
              + " gal/acre, which leaves no room in a spray volume of "
              + Numbers.decimals(size.gallons() / size.acres(), 1)
              + " gal/acre; write a larger volume");
    }
    return load;
  }

  private static List<LoadedProduct> products(
      Mix mix, LoadSize size, Map<ProductId, Quantity> packages) {
    Map<Product, Quantity> amounts = new LinkedHashMap<>();
    for (Dose d : mix.doses()) {
      amounts.merge(d.product(), LoadAmounts.of(d.rate(), size), TankLoad::sum);
    }
    List<LoadedProduct> out = new ArrayList<>();
    amounts.forEach(
        (product, amount) ->
            out.add(
                new LoadedProduct(
                    product,
                    amount,
                    Optional.ofNullable(packages.get(product.id())).or(product::packageSize))));
    return out;
  }

  private static Quantity sum(Quantity one, Quantity other) {
    return new Quantity(one.value() + other.in(one.unit()), one.unit());
  }

  private static List<LoadedAdjuvant> adjuvants(Mix mix, LoadSize size) {
    Map<String, List<String>> rates = new LinkedHashMap<>();
    for (Adjuvant a : mix.adjuvants()) {
      rates.computeIfAbsent(a.kind(), k -> new ArrayList<>()).add(a.rate());
    }
    List<LoadedAdjuvant> out = new ArrayList<>();
    rates.forEach(
        (kind, of) -> {
          Optional<Quantity> most = Optional.empty();
          for (String rate : of) {
            Optional<Quantity> amount = LoadAmounts.ofAdjuvant(rate, size);
            most = amount.isEmpty() ? most : Optional.of(larger(kind, most, amount.get()));
          }
          // One of several rates that is not known may be the one that is more.
          boolean all = of.stream().allMatch(r -> LoadAmounts.ofAdjuvant(r, size).isPresent());
          out.add(new LoadedAdjuvant(kind, of, all ? most : Optional.empty()));
        });
    return out;
  }

  private static Quantity larger(String kind, Optional<Quantity> one, Quantity other) {
    if (one.isEmpty()) {
      return other;
    }
    if (one.get().unit().dimension() != other.unit().dimension()) {
      throw new MeasureException(
          kind
              + " is written by weight and by volume, and which is more is not known; write one"
              + " rate of it");
    }
    return one.get().compareTo(other) >= 0 ? one.get() : other;
  }

  /**
   * How much goes in at a step of mixing; nothing for a step that pours none of these, and an empty
   * amount where it is not known.
   */
  public Optional<Optional<Quantity>> find(MixingStep step) {
    return switch (step.kind()) {
      case PRODUCT ->
          products.stream()
              .filter(p -> p.product().name().equals(step.what()))
              .map(p -> Optional.of(p.amount()))
              .findFirst();
      case ADJUVANT ->
          adjuvants.stream()
              .filter(a -> a.kind().equals(step.what()))
              .map(LoadedAdjuvant::amount)
              .findFirst();
      case CARRIER_FIRST, WAIT, TOP_UP -> Optional.empty();
    };
  }

  /** Room that liquid products and adjuvants take. */
  public double liquidGallons() {
    return Stream.concat(
            products.stream().map(LoadedProduct::amount),
            adjuvants.stream().flatMap(a -> a.amount().stream()))
        .filter(q -> q.unit().dimension() == Dimension.VOLUME)
        .mapToDouble(q -> q.in(Unit.GALLON))
        .sum();
  }

  /** Water or liquid fertilizer. */
  public double carrierGallons() {
    return size.gallons() - liquidGallons();
  }

  /** Whether something goes in whose room is not reckoned: dry goods, or an amount not known. */
  public boolean hasUnreckonedRoom() {
    return Stream.concat(
                products.stream().map(LoadedProduct::amount),
                adjuvants.stream().flatMap(a -> a.amount().stream()))
            .anyMatch(q -> q.unit().dimension() == Dimension.MASS)
        || adjuvants.stream().anyMatch(a -> a.amount().isEmpty());
  }
}
