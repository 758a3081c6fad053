package org.swathbook.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

class RateProperties {

  @Property
  void aPrintedRateReadsBack(@ForAll("rates") Rate rate) {
    assertThat(Rate.parse(rate.toString())).isEqualTo(rate);
  }

  @Property
  void aPrintedRangeReadsBack(@ForAll("rates") Rate one, @ForAll("amounts") double other) {
    Rate low = new Rate(Math.min(one.amount(), other), one.unit(), one.area(), one.basis());
    Rate high = new Rate(Math.max(one.amount(), other), one.unit(), one.area(), one.basis());
    RateRange range = new RateRange(low, high);
    assertThat(RateRange.parse(range.toString())).isEqualTo(range);
  }

  @Property
  void anotherUnitOfAmountIsTheSameRate(@ForAll("rates") Rate rate, @ForAll Unit other) {
    if (other.dimension() != rate.unit().dimension()) {
      return;
    }
    assertThat(perHectare(rate.in(other)))
        .isCloseTo(perHectare(rate), within(1e-12 * perHectare(rate)));
  }

  @Property
  void otherUnitsOfAmountAndAreaAreTheSameRate(@ForAll("rates") Rate a, @ForAll("rates") Rate b) {
    if (a.isVolume() != b.isVolume()) {
      return;
    }
    Rate like = a.like(b);
    assertThat(like.unit()).isEqualTo(b.unit());
    assertThat(like.area()).isEqualTo(b.area());
    assertThat(like.basis()).isEqualTo(a.basis());
    assertThat(perHectare(like)).isCloseTo(perHectare(a), within(1e-12 * perHectare(a)));
  }

  @Property
  void poundsPerAcreAndKilogramsPerHectareAgree(@ForAll("rates") Rate rate) {
    if (rate.isVolume()) {
      assertThatThrownBy(rate::lbPerAcre).isInstanceOf(MeasureException.class);
      return;
    }
    double viaPounds = Rate.lbPerAcre(rate.lbPerAcre(), rate.basis()).kgPerHa();
    assertThat(viaPounds).isCloseTo(rate.kgPerHa(), within(1e-12 * rate.kgPerHa()));
  }

  @Property
  void productAndActiveRatesTurnIntoEachOther(@ForAll("rates") Rate rate) {
    if (rate.basis() != Basis.PRODUCT) {
      return;
    }
    Concentration c = Concentration.parse(rate.isVolume() ? "4.5 lb ae/gal" : "51 %", Basis.AE);
    double back = c.productPerHa(c.activeKgPerHa(rate));
    assertThat(back).isCloseTo(perHectare(rate), within(1e-12 * perHectare(rate)));
  }

  private static double perHectare(Rate rate) {
    return rate.isVolume() ? rate.litresPerHa() : rate.kgPerHa();
  }

  /** Amounts as labels write them, with at most four decimals. */
  @Provide
  Arbitrary<Double> amounts() {
    return Arbitraries.bigDecimals()
        .between(BigDecimal.ZERO, BigDecimal.valueOf(10_000))
        .ofScale(4)
        .map(BigDecimal::doubleValue);
  }

  @Provide
  Arbitrary<Rate> rates() {
    Arbitrary<Unit> units = Arbitraries.of(of(Dimension.MASS, Dimension.VOLUME));
    Arbitrary<Unit> areas = Arbitraries.of(of(Dimension.AREA));
    return Combinators.combine(amounts(), units, areas, Arbitraries.of(Basis.class))
        .as(
            (amount, unit, area, basis) ->
                new Rate(
                    amount,
                    unit,
                    area,
                    unit.dimension() == Dimension.VOLUME ? Basis.PRODUCT : basis));
  }

  private static List<Unit> of(Dimension... dimensions) {
    return Arrays.stream(Unit.values())
        .filter(u -> Arrays.asList(dimensions).contains(u.dimension()))
        .toList();
  }
}
