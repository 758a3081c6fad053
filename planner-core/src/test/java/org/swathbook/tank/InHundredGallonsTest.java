package org.swathbook.tank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.swathbook.measure.Quantity;
import org.swathbook.measure.Unit;

/** Rates of adjuvants at 15 gal/acre, the figures by hand. */
class InHundredGallonsTest {
  private static final OptionalDouble FIFTEEN = OptionalDouble.of(15);

  private static double pounds(String rate) {
    return InHundredGallons.least(rate, FIFTEEN).orElseThrow().in(Unit.POUND);
  }

  private static double gallons(String rate) {
    return InHundredGallons.least(rate, FIFTEEN).orElseThrow().in(Unit.GALLON);
  }

  @ParameterizedTest
  @CsvSource({"8.5 lb/100 gal,8.5", "8.5-17 lb/100 gal,8.5", "3 lb/acre,20", "1.5-3 lb/acre,10"})
  void byWeight(String rate, double lb) {
    assertThat(pounds(rate)).isCloseTo(lb, within(1e-9));
  }

  @ParameterizedTest
  @CsvSource({"1 % v/v,1", "0.25-0.5 % v/v,0.25", "1 qt/100 gal,0.25", "1 pt/acre,0.83333333333"})
  void byVolume(String rate, double gal) {
    assertThat(gallons(rate)).isCloseTo(gal, within(1e-9));
  }

  /**
   * What an acre takes is no share of a spray whose volume nobody knows; words are for the label.
   */
  @Test
  void whatIsNotSaidIsNotKnown() {
    assertThat(InHundredGallons.least("3 lb/acre", OptionalDouble.empty())).isEmpty();
    assertThat(InHundredGallons.least("8.5 lb/100 gal", OptionalDouble.empty()))
        .map(q -> q.in(Unit.POUND))
        .contains(8.5);
    assertThat(InHundredGallons.least("as the label says", FIFTEEN)).isEmpty();
  }

  /**
   * North Dakota's figures for calcium and iron, 0.009 and 0.042 lb a ppm (from memory): 120 ppm of
   * calcium and 1 ppm of iron take 1.122 lb in 100 gal. Liquid ammonium sulfate holds 3.4 lb/gal
   * (from memory), so 2.5 % of it is the 8.5 lb of labels.
   */
  @Test
  void ammoniumSulfate() {
    assertThat(AmmoniumSulfate.lbPer100Gal(300, 1)).isCloseTo(1.122, within(1e-9));
    assertThat(AmmoniumSulfate.pounds(Quantity.parse("2.5 gal"))).isCloseTo(8.5, within(1e-9));
    assertThat(AmmoniumSulfate.pounds(Quantity.parse("8.5 lb"))).isCloseTo(8.5, within(1e-9));
  }
}
