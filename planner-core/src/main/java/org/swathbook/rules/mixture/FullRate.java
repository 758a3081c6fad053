package org.swathbook.rules.mixture;

import java.util.Optional;
import java.util.OptionalDouble;
import org.swathbook.book.SoilRates;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.Use;
import org.swathbook.catalog.WeedRate;
import org.swathbook.measure.Quantity;
import org.swathbook.measure.Rate;
import org.swathbook.measure.RateRange;
import org.swathbook.rules.ActiveUse;
import org.swathbook.rules.PassFacts;
import org.swathbook.rules.Rated;
import org.swathbook.rules.Say;
import org.swathbook.season.outcome.PassWeed;

/**
 * What the label means by its full rate of an active, for the soil and the size of the weeds. In
 * the soil it is the rate of the soil. Through leaves it is that of the weed: a top that is cut on
 * a light soil spares the crop, and leaves a plant less than the label asks elsewhere.
 *
 * @param range of the use: in the soil on the field's soils, through leaves as {@link
 *     SoilRates#throughLeaves} has it
 * @param mostLbPerAcre what the use allows on the field's soils
 * @param lbPerAcre the full rate
 * @param lbPerAcreHeld all of the active in the tank
 * @param productRate the product at the full rate, floored to its practical step
 */
record FullRate(
    ActiveUse use,
    RateRange range,
    double mostLbPerAcre,
    double lbPerAcre,
    double lbPerAcreHeld,
    Rate productRate) {
  /**
   * Plants above this share of the label's height are no small ones: they want the middle of its
   * range at least. Default, ours; labels give the higher rates for larger weeds, each in words of
   * its own, and the top for the largest or for kinds that they name.
   */
  private static final double SMALL = 0.5;

  /** Through leaves; empty where the use states no rate for the soil. */
  static Optional<FullRate> foliar(
      PassFacts facts, ActiveUse active, PassWeed weed, WeedPressure pressure) {
    return active
        .use()
        .flatMap(
            use ->
                allowed(facts, use)
                    .map(
                        here -> {
                          RateRange any = SoilRates.throughLeaves(use, facts.field()).orElse(here);
                          return of(facts, active, any, here, full(use, any, here, weed, pressure));
                        }));
  }

  private static double full(
      Use use, RateRange any, RateRange here, PassWeed weed, WeedPressure pressure) {
    Optional<WeedRate> own = use.weedRate(weed.weed(), weed.p90Cm());
    if (own.isPresent()) {
      return own.get().least().lbPerAcre();
    }
    double low = here.low().lbPerAcre();
    return isSmall(use, weed, pressure)
        ? low
        : Math.max(low, (any.low().lbPerAcre() + any.high().lbPerAcre()) / 2);
  }

  /** Through the soil: the low rate of the soil's row is full. */
  static Optional<FullRate> soil(PassFacts facts, ActiveUse active) {
    return active
        .use()
        .flatMap(use -> allowed(facts, use))
        .map(here -> of(facts, active, here, here, here.low().lbPerAcre()));
  }

  private static Optional<RateRange> allowed(PassFacts facts, Use use) {
    return SoilRates.of(use, facts.field()) instanceof SoilRates.Allowed a
        ? Optional.of(a.range())
        : Optional.empty();
  }

  private static boolean isSmall(Use use, PassWeed weed, WeedPressure pressure) {
    OptionalDouble limit =
        use.weedHeights()
            .find()
            .map(h -> Rated.tallestCm(h, pressure))
            .orElse(OptionalDouble.empty());
    return limit.isEmpty() || !Quantity.exceeds(weed.p90Cm(), SMALL * limit.getAsDouble());
  }

  private static FullRate of(
      PassFacts facts, ActiveUse active, RateRange range, RateRange here, double full) {
    double mine = active.active().lbPerAcre();
    double held =
        facts.actives().stream()
            .filter(a -> a.ingredient().id().equals(active.ingredient().id()))
            .mapToDouble(a -> a.active().lbPerAcre())
            .sum();
    Rate now = active.dose().rate();
    double wanted = now.amount() * Math.max(0, full - held + mine) / mine;
    return new FullRate(
        active,
        range,
        here.high().lbPerAcre(),
        full,
        held,
        Say.practical(
            active.dose().product(), new Rate(wanted, now.unit(), now.area(), now.basis())));
  }

  /** Whether the label lets the full rate onto the field's soils. */
  boolean isAllowedHere() {
    return !Quantity.exceeds(lbPerAcre, mostLbPerAcre);
  }

  /** Short of it by more than the product's practical step. */
  boolean isMissed() {
    Rate now = use.dose().rate();
    return Quantity.exceeds(lbPerAcre, lbPerAcreHeld)
        && Quantity.exceeds(productRate.like(now).amount(), now.amount());
  }
}
