package org.swathbook.catalog.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.swathbook.measure.Basis;
import org.swathbook.measure.Dimension;
import org.swathbook.measure.Numbers;
import org.swathbook.measure.Period;
import org.swathbook.measure.Quantity;
import org.swathbook.measure.Rate;
import org.swathbook.measure.RateRange;
import org.swathbook.measure.Unit;
import org.swathbook.source.Texts;

/** Numbers and quantities are written so that the very same double is read. */
class ExactTextProperties {
  private static final List<List<Unit>> KEPT =
      List.of(
          List.of(Unit.CENTIMETRE, Unit.INCH),
          List.of(Unit.CENTIMETRE, Unit.METRE),
          List.of(Unit.MILLIMETRE, Unit.INCH),
          List.of(Unit.FOOT),
          List.of(Unit.HOUR),
          List.of(Unit.DAY),
          List.of(Unit.MILE_PER_HOUR),
          List.of(Unit.CELSIUS, Unit.FAHRENHEIT));

  @Property(tries = 1000)
  void anyNumberIsReadAgain(@ForAll("finite") double value) {
    assertThat(Texts.number(ExactText.number(value))).isEqualTo(value);
  }

  @Property(tries = 1000)
  void anyQuantityIsReadAgain(
      @ForAll("kept") List<Unit> units, @ForAll @DoubleRange(max = 1e6) double value) {
    Unit kept = units.get(0);
    String text =
        ExactText.quantity(value, kept, units.subList(1, units.size()).toArray(new Unit[0]));
    assertThat(Texts.in(kept, "1").parse(text)).as(text).isEqualTo(value);
  }

  /** What was written in the unit of labels is written in it again. */
  @Property
  void unitsOfLabelsComeBack(@ForAll @IntRange(min = 1, max = 4000) int tenths) {
    double inches = tenths / 10.0;
    double cm = new Quantity(inches, Unit.INCH).in(Unit.CENTIMETRE);
    assertThat(ExactText.quantity(cm, Unit.CENTIMETRE, Unit.INCH))
        .isEqualTo(ExactText.number(inches) + " in");
  }

  @Property
  void aShareThatWasReadIsReadAgain(@ForAll @DoubleRange(max = 100) double percent) {
    double share = Unit.PERCENT.toSi(percent);
    assertThat(Texts.share(ExactText.share(share))).isEqualTo(share);
    double again = Texts.share(ExactText.percentage(share * 100)) * 100;
    assertThat(again).isEqualTo(share * 100);
  }

  @Property
  void everyWaitThatCanBeReadIsReadAgain(
      @ForAll @IntRange(max = 120) int months, @ForAll @IntRange(max = 30) int days) {
    Period period = new Period(months, days);
    assertThat(Period.parse(ExactText.period(period))).isEqualTo(period);
  }

  @Property
  void ratesStayAsWritten(@ForAll("rates") Rate rate, @ForAll @DoubleRange(max = 9) double more) {
    assertThat(Rate.parse(ExactText.rate(rate))).isEqualTo(rate);
    RateRange range =
        new RateRange(rate, new Rate(rate.amount() + more, rate.unit(), rate.area(), rate.basis()));
    assertThat(RateRange.parse(ExactText.range(range))).isEqualTo(range);
  }

  @Example
  void aHalfMonthIsWrittenAsOne() {
    assertThat(ExactText.period(new Period(4, 15))).isEqualTo("4.5 months");
    assertThat(ExactText.period(new Period(0, 28))).isEqualTo("28 days");
    assertThat(ExactText.share(0.178)).isEqualTo("17.8 %");
    assertThat(ExactText.number(1e-7)).isEqualTo("0.0000001");
  }

  @Provide
  Arbitrary<Double> finite() {
    return Arbitraries.oneOf(
        Arbitraries.doubles().between(-Numbers.MOST, Numbers.MOST),
        Arbitraries.integers().map(i -> i / 1000.0),
        Arbitraries.of(0.0, -0.0, Double.MIN_VALUE, Numbers.MOST, -Numbers.MOST));
  }

  @Provide
  Arbitrary<List<Unit>> kept() {
    return Arbitraries.of(KEPT);
  }

  @Provide
  Arbitrary<Rate> rates() {
    Arbitrary<Unit> units =
        Arbitraries.of(Unit.class)
            .filter(u -> u.dimension() == Dimension.MASS || u.dimension() == Dimension.VOLUME);
    Arbitrary<Unit> areas = Arbitraries.of(Unit.class).filter(u -> u.dimension() == Dimension.AREA);
    Arbitrary<Double> amounts = Arbitraries.doubles().between(0, 1e5).ofScale(12);
    return Combinators.combine(amounts, units, areas, Arbitraries.of(Basis.class))
        .as(
            (amount, unit, area, basis) ->
                new Rate(
                    amount,
                    unit,
                    area,
                    unit.dimension() == Dimension.VOLUME ? Basis.PRODUCT : basis));
  }
}
