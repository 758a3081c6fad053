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
 * What the label means by its full rate of an active, for the soil and the size of the weeds.
 *
 * @param range of the use on the field's soils
 * @param lbPerAcre the full rate
 * @param lbPerAcreHeld all of the active in the tank
 * @param productRate the product at the full rate, floored to its practical step
 */
record FullRate(
    ActiveUse use, RateRange range, double lbPerAcre, double lbPerAcreHeld, Rate productRate) {
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
                of(
                    facts,
                    active,
                    use,
                    isSmall(use, weed, pressure) ? Size.SMALL : Size.LARGE,
                    use.weedRate(weed.weed(), weed.p90Cm())));
  }

  /** Through the soil: the low rate of the soil's row is full. */
  static Optional<FullRate> soil(PassFacts facts, ActiveUse active) {
    return active.use().flatMap(use -> of(facts, active, use, Size.SMALL, Optional.empty()));
  }

  private enum Size {
    SMALL,
    LARGE
  }

  private static boolean isSmall(Use use, PassWeed weed, WeedPressure pressure) {
    OptionalDouble limit =
        use.weedHeights()
            .find()
            .map(h -> Rated.tallestCm(h, pressure))
            .orElse(OptionalDouble.empty());
    return limit.isEmpty() || !Quantity.exceeds(weed.p90Cm(), SMALL * limit.getAsDouble());
  }

  private static Optional<FullRate> of(
      PassFacts facts, ActiveUse active, Use use, Size size, Optional<WeedRate> own) {
    if (!(SoilRates.of(use, facts.field()) instanceof SoilRates.Allowed allowed)) {
      return Optional.empty();
    }
    RateRange range = allowed.range();
    double full =
        own.map(WeedRate::least)
            .map(Rate::lbPerAcre)
            .orElse(
                size == Size.SMALL
                    ? range.low().lbPerAcre()
                    : (range.low().lbPerAcre() + range.high().lbPerAcre()) / 2);
    double mine = active.active().lbPerAcre();
    double held =
        facts.actives().stream()
            .filter(a -> a.ingredient().id().equals(active.ingredient().id()))
            .mapToDouble(a -> a.active().lbPerAcre())
            .sum();
    Rate now = active.dose().rate();
    double wanted = now.amount() * Math.max(0, full - held + mine) / mine;
    return Optional.of(
        new FullRate(
            active,
            range,
            full,
            held,
            Say.practical(
                active.dose().product(), new Rate(wanted, now.unit(), now.area(), now.basis()))));
  }

  /** Short of it by more than the product's practical step. */
  boolean isMissed() {
    Rate now = use.dose().rate();
    return Quantity.exceeds(lbPerAcre, lbPerAcreHeld)
        && Quantity.exceeds(productRate.like(now).amount(), now.amount());
  }
}
