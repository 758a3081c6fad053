package org.swathbook.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;

/** Strengths, densities, prices, waits and money: what is printed is read, and units agree. */
class KindsProperties {

  @Property
  void aDensityReadsBackAndAgreesPerAcre(
      @ForAll("amounts") double count, @ForAll("areas") Unit area) {
    Density density = new Density(count, area);
    assertThat(Density.parse(density.toString())).isEqualTo(density);
    double perAcre = new Density(density.perAcre(), Unit.ACRE).perM2();
    assertThat(perAcre).isCloseTo(density.perM2(), within(1e-12 * density.perM2()));
  }

  @Property
  void aPriceInCentsReadsBack(@ForAll @IntRange(max = 10_000_000) int cents, @ForAll Unit per) {
    Price price = new Price(cents / 100.0, per);
    assertThat(Price.parse(price.toString())).isEqualTo(price);
  }

  @Property
  void aPriceForAnotherUnitThereAndBackIsTheSame(
      @ForAll("amounts") double dollars, @ForAll Unit per, @ForAll Unit other) {
    // A degree is no amount, so nothing is sold by it.
    if (per.dimension() != other.dimension() || per.dimension() == Dimension.TEMPERATURE) {
      return;
    }
    Price there = new Price(new Price(dollars, per).dollarsPer(other), other);
    assertThat(there.dollarsPer(per)).isCloseTo(dollars, within(1e-12 * dollars));
  }

  @Property
  void moneyReadsBackFromItsDollars(@ForAll @IntRange(min = -1_000_000) int cents) {
    Money money = new Money(cents);
    assertThat(new BigDecimal(money.toString()).movePointRight(2).longValueExact())
        .isEqualTo(cents);
    assertThat(Money.ofDollars(money.dollars())).isEqualTo(money);
  }

  @Property
  void aWaitInWholeMonthsOrDaysReadsBack(
      @ForAll @IntRange(max = 9_999) int n, @ForAll boolean months) {
    Period period = new Period(months ? n : 0, months ? 0 : n);
    assertThat(Period.parse(period.toString())).isEqualTo(period);
  }

  @Property
  void halfAMonthIsFifteenDays(@ForAll @IntRange(max = 999) int months) {
    Period period = Period.parse(months + ".5 months");
    assertThat(period).isEqualTo(new Period(months, 15));
    LocalDate day = LocalDate.of(2027, 5, 10);
    assertThat(period.after(day)).isEqualTo(day.plusMonths(months).plusDays(15));
  }

  @Property
  void aStrengthReadsBackAsItIsWritten(
      @ForAll("strengths") double amount, @ForAll("bases") Basis basis) {
    String text = decimal(amount) + " lb " + basis.symbol() + "/gal";
    Concentration read = Concentration.parse(text, Basis.PRODUCT);
    assertThat(read.basis()).isEqualTo(basis);
    assertThat(Concentration.parse(read.written(), Basis.PRODUCT)).isEqualTo(read);
  }

  /** 1 lb/gal is 119.8 g/L by the factors of NIST Handbook 44, Appendix C. */
  @Property
  void strengthsInPoundsAndGramsAgree(@ForAll("strengths") double poundsPerGallon) {
    double gramsPerLitre = poundsPerGallon * 453.59237 / 3.785411784;
    Concentration pounds = Concentration.parse(decimal(poundsPerGallon) + " lb/gal", Basis.AI);
    Concentration grams = Concentration.parse(decimal(gramsPerLitre) + " g/L", Basis.AI);
    assertThat(grams.kgPerLitre())
        .isCloseTo(pounds.kgPerLitre(), within(1e-12 * pounds.kgPerLitre()));
  }

  @Property
  void aShareByWeightIsThatOfTheProduct(
      @ForAll("percents") double percent, @ForAll("amounts") double pounds) {
    Concentration dry = Concentration.parse(decimal(percent) + " %", Basis.AI);
    Rate product = new Rate(pounds, Unit.POUND, Unit.ACRE, Basis.PRODUCT);
    assertThat(dry.isLiquid()).isFalse();
    assertThat(dry.activeKgPerHa(product))
        .isCloseTo(product.kgPerHa() * percent / 100, within(1e-12 * product.kgPerHa()));
  }

  private static String decimal(double value) {
    return new BigDecimal(Double.toString(value)).toPlainString();
  }

  @Provide
  Arbitrary<Double> amounts() {
    return decimals(0, 10_000);
  }

  @Provide
  Arbitrary<Double> strengths() {
    return decimals(0.01, 12);
  }

  @Provide
  Arbitrary<Double> percents() {
    return decimals(0.01, 100);
  }

  private static Arbitrary<Double> decimals(double from, double to) {
    return Arbitraries.bigDecimals()
        .between(BigDecimal.valueOf(from), BigDecimal.valueOf(to))
        .ofScale(4)
        .map(BigDecimal::doubleValue);
  }

  @Provide
  Arbitrary<Unit> areas() {
    List<Unit> areas =
        Arrays.stream(Unit.values()).filter(u -> u.dimension() == Dimension.AREA).toList();
    return Arbitraries.of(areas);
  }

  @Provide
  Arbitrary<Basis> bases() {
    return Arbitraries.of(Basis.AI, Basis.AE, Basis.CATION);
  }
}
