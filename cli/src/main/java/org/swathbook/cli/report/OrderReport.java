package org.swathbook.cli.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.swathbook.book.Prices;
import org.swathbook.catalog.ProductId;
import org.swathbook.check.SeasonSoFar;
import org.swathbook.measure.Money;
import org.swathbook.program.Dose;
import org.swathbook.season.outcome.PassOutcome;
import org.swathbook.supply.Need;
import org.swathbook.supply.Order;
import org.swathbook.supply.OrderLine;

/**
 * What to buy for the planned programs of fields.
 *
 * @param leftOut fields for which nothing is bought
 * @param substitutesAsked whether substitutes were looked for
 */
public record OrderReport(
    List<OrderedField> fields,
    List<LeftOut> leftOut,
    Order order,
    List<AdjuvantNeed> adjuvants,
    boolean substitutesAsked) {

  /** Fields without an order for one reason. */
  public record LeftOut(List<String> fields, String why) {
    public LeftOut {
      fields = List.copyOf(fields);
    }
  }

  /**
   * Sums of lines.
   *
   * @param cost of what is bought and has a price
   * @param worthOfNeeded of what the passes take and has a price
   * @param unpriced ids of products without a price
   */
  public record Totals(Money cost, Money worthOfNeeded, List<String> unpriced) {
    public Totals {
      unpriced = List.copyOf(unpriced);
    }
  }

  public OrderReport {
    fields = List.copyOf(fields);
    leftOut = List.copyOf(leftOut);
    adjuvants = List.copyOf(adjuvants);
  }

  public static OrderReport of(
      Prices prices,
      List<OrderedField> fields,
      List<LeftOut> leftOut,
      boolean substitutesAsked,
      LocalDate today) {
    List<Need> needs = new ArrayList<>();
    List<LeftOut> out = new ArrayList<>(leftOut);
    List<String> late = new ArrayList<>();
    for (OrderedField f : fields) {
      for (PassOutcome pass : f.outcome().passes()) {
        if (isLate(pass, today)) {
          late.add(f.field().id() + " pass " + (pass.index() + 1));
        }
        for (Dose d : isToCome(pass, today) ? pass.mix().doses() : List.<Dose>of()) {
          needs.add(
              Need.of(
                  f.field().grower(),
                  f.field().id(),
                  f.field().acres(),
                  pass.index() + 1,
                  pass.timing().medianDate(),
                  d));
        }
      }
    }
    if (!late.isEmpty()) {
      out.add(
          new LeftOut(
              late,
              "not in the journal and more than "
                  + SeasonSoFar.LATE_DAYS
                  + " days late by "
                  + today));
    }
    return new OrderReport(
        fields, out, Order.of(prices, needs), AdjuvantNeed.of(fields, today), substitutesAsked);
  }

  /** Products of the order that are for certified applicators only, in the order of their ids. */
  public List<ProductId> restrictedUse() {
    Set<ProductId> restricted = new HashSet<>();
    fields.forEach(f -> restricted.addAll(f.restrictedUse()));
    return order.pooled().stream()
        .map(l -> l.product().id())
        .filter(restricted::contains)
        .sorted()
        .toList();
  }

  private static boolean isLate(PassOutcome pass, LocalDate today) {
    return !pass.made() && pass.planned().plusDays(SeasonSoFar.LATE_DAYS).isBefore(today);
  }

  /** Neither made nor too late to count on. */
  public static boolean isToCome(PassOutcome pass, LocalDate today) {
    return !pass.made() && !isLate(pass, today);
  }

  /** Acres of the fields of a grower that are in the order. */
  public double acres(String grower) {
    return fields.stream()
        .filter(f -> f.field().grower().equals(grower))
        .mapToDouble(f -> f.field().acres())
        .sum();
  }

  public static Totals totals(List<OrderLine> lines) {
    Money cost = Money.ZERO;
    Money worth = Money.ZERO;
    List<String> unpriced = new ArrayList<>();
    for (OrderLine l : lines) {
      Optional<Money> c = l.cost();
      if (c.isEmpty()) {
        unpriced.add(l.product().id().value());
      }
      cost = cost.plus(c.orElse(Money.ZERO));
      worth = worth.plus(l.worthOfNeeded().orElse(Money.ZERO));
    }
    return new Totals(cost, worth, unpriced);
  }
}
