package org.swathbook.supply;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.swathbook.book.HeldStock;
import org.swathbook.book.Prices;
import org.swathbook.catalog.Product;
import org.swathbook.catalog.ProductId;
import org.swathbook.measure.Quantity;
import org.swathbook.measure.Unit;

/**
 * What to buy. What is on hand goes to the passes in the order of their dates: first the grower's
 * own, what spoils soonest ahead, then the warehouse's. The rest is bought in whole packages, by
 * each grower alone or by all together.
 *
 * @param byGrower lines of each grower by product id; growers in the order of their first need
 * @param pooled the same for all together: fewer packages, since a rest of one serves another
 * @param unfit stock that is too old for a pass that needs it
 */
public record Order(
    Map<String, List<OrderLine>> byGrower, List<OrderLine> pooled, List<Unfit> unfit) {

  public Order {
    Map<String, List<OrderLine>> copy = new LinkedHashMap<>();
    byGrower.forEach((g, lines) -> copy.put(g, List.copyOf(lines)));
    byGrower = Collections.unmodifiableMap(copy);
    pooled = List.copyOf(pooled);
    unfit = List.copyOf(unfit);
  }

  /** For passes in any order; those of one day are served in the order given. */
  public static Order of(Prices prices, List<Need> needs) {
    Serving serving = new Serving(prices);
    needs.stream().sorted(Comparator.comparing(Need::date)).forEach(serving::serve);
    Map<String, List<OrderLine>> byGrower = new LinkedHashMap<>();
    for (Need n : needs) {
      byGrower.computeIfAbsent(n.grower(), g -> lines(prices, serving.of(g)));
    }
    return new Order(
        byGrower, lines(prices, serving.all()), new ArrayList<>(serving.spoilt.values()));
  }

  private static List<OrderLine> lines(Prices prices, Map<ProductId, Sum> sums) {
    List<OrderLine> out = new ArrayList<>();
    sums.forEach(
        (id, s) ->
            out.add(
                new OrderLine(
                    s.product,
                    Need.unitOf(s.product),
                    s.needed,
                    s.onHand,
                    Optional.ofNullable(prices.stock().get(id)).flatMap(Prices.Stock::packageSize),
                    Optional.ofNullable(prices.products().get(id))
                        .filter(p -> p.per().dimension() == Need.unitOf(s.product).dimension()))));
    return out;
  }

  private record Sum(Product product, double needed, double onHand) {
    Sum plus(Sum more) {
      return new Sum(product, needed + more.needed, onHand + more.onHand);
    }
  }

  /** A lot and how much of it is still there. */
  private static final class Lot {
    private final HeldStock stock;
    private double left;

    Lot(HeldStock stock, Unit unit) {
      this.stock = stock;
      this.left = stock.amount().in(unit);
    }
  }

  private static final class Serving {
    private final Prices prices;
    private final Map<ProductId, List<Lot>> lots = new TreeMap<>();
    private final Map<String, Map<ProductId, Sum>> sums = new LinkedHashMap<>();
    private final Map<HeldStock, Unfit> spoilt = new LinkedHashMap<>();

    Serving(Prices prices) {
      this.prices = prices;
    }

    void serve(Need need) {
      Product product = need.product();
      double wanted = need.amount().in(Need.unitOf(product));
      double open = wanted;
      for (Lot lot : lotsFor(product)) {
        boolean mine = lot.stock.grower().map(need.grower()::equals).orElse(true);
        if (!mine || lot.left <= 0 || open <= Quantity.AT_LIMIT * wanted) {
          continue;
        }
        if (!lot.stock.isGoodOn(need.date())) {
          spoilt.putIfAbsent(lot.stock, new Unfit(lot.stock, need.field(), need.date()));
          continue;
        }
        double taken = Math.min(open, lot.left);
        lot.left -= taken;
        open -= taken;
      }
      sums.computeIfAbsent(need.grower(), g -> new TreeMap<>())
          .merge(product.id(), new Sum(product, wanted, wanted - open), Sum::plus);
    }

    /** Growers' own first, what spoils soonest ahead of what keeps. */
    private List<Lot> lotsFor(Product product) {
      return lots.computeIfAbsent(
          product.id(),
          id ->
              prices.heldOf(id).stream()
                  .sorted(
                      Comparator.comparing((HeldStock h) -> h.grower().isEmpty())
                          .thenComparing(h -> h.goodUntil().orElse(LocalDate.MAX)))
                  .map(h -> new Lot(h, Need.unitOf(product)))
                  .toList());
    }

    Map<ProductId, Sum> of(String grower) {
      return sums.getOrDefault(grower, Map.of());
    }

    Map<ProductId, Sum> all() {
      Map<ProductId, Sum> out = new TreeMap<>();
      sums.values().forEach(m -> m.forEach((id, s) -> out.merge(id, s, Sum::plus)));
      return out;
    }
  }
}
