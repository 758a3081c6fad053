package org.swathbook.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Locale;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;

class UnitProperties {

  @Property(edgeCases = EdgeCasesMode.NONE)
  void everyUnitComesBackFromSi(
      @ForAll Unit unit, @ForAll @DoubleRange(min = -1e9, max = 1e9) double value) {
    double back = unit.fromSi(unit.toSi(value));
    // A temperature has an offset, against which a small value loses digits.
    double scale = unit == Unit.FAHRENHEIT ? Math.max(Math.abs(value), 32) : Math.abs(value);
    assertThat(back).isCloseTo(value, within(1e-12 * scale));
  }

  @Property(edgeCases = EdgeCasesMode.NONE)
  void conversionThereAndBackIsTheSame(
      @ForAll Unit from, @ForAll Unit to, @ForAll @DoubleRange(min = 0, max = 1e6) double value) {
    if (from.dimension() != to.dimension()) {
      return;
    }
    Quantity there = new Quantity(new Quantity(value, from).in(to), to);
    double scale = from.dimension() == Dimension.TEMPERATURE ? Math.max(value, 100) : value;
    assertThat(there.in(from)).isCloseTo(value, within(1e-12 * scale));
  }

  @Property
  void aUnitIsFoundByWhatItPrintsInAnyCase(@ForAll Unit unit) {
    assertThat(Unit.find(unit.symbol())).contains(unit);
    assertThat(Unit.find(unit.symbol().toUpperCase(Locale.ROOT))).contains(unit);
  }

  @Example
  void noSpellingMeansTwoUnits() {
    assertThat(Arrays.stream(Unit.values()).map(u -> u.symbol().toLowerCase(Locale.ROOT)))
        .doesNotHaveDuplicates();
  }

  @Property
  void aPrintedQuantityReadsBack(@ForAll("quantities") Quantity q) {
    assertThat(Quantity.parse(q.toString())).isEqualTo(q);
  }

  @Property
  void orderIsThatOfSi(@ForAll("quantities") Quantity a, @ForAll("quantities") Quantity b) {
    if (a.unit().dimension() == b.unit().dimension()) {
      assertThat(Integer.signum(a.compareTo(b))).isEqualTo(Double.compare(a.si(), b.si()));
      assertThat(Integer.signum(b.compareTo(a))).isEqualTo(-Integer.signum(a.compareTo(b)));
    }
  }

  @Property
  void whatExceedsIsAboveAndNothingExceedsItself(
      @ForAll("quantities") Quantity a, @ForAll("quantities") Quantity b) {
    assertThat(a.exceeds(a)).isFalse();
    if (a.unit().dimension() == b.unit().dimension() && a.exceeds(b)) {
      assertThat(a).isGreaterThan(b);
      assertThat(b.exceeds(a)).isFalse();
    }
  }

  /** Values as people write them, with at most four decimals. */
  @Provide
  Arbitrary<Quantity> quantities() {
    Arbitrary<Double> values =
        Arbitraries.bigDecimals()
            .between(BigDecimal.ZERO, BigDecimal.valueOf(1_000_000))
            .ofScale(4)
            .map(BigDecimal::doubleValue);
    return Combinators.combine(values, Arbitraries.of(Unit.class).withoutEdgeCases())
        .as(Quantity::new);
  }
}
