package org.swathbook.tank;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.swathbook.measure.Basis;
import org.swathbook.measure.Concentration;
import org.swathbook.measure.Quantity;
import org.swathbook.measure.Rate;
import org.swathbook.measure.Unit;

/** Worked loads of {@code published/load_examples.csv}, to the digit that its sources print. */
class PublishedLoadTest {

  @ParameterizedTest
  @CsvFileSource(resources = "/published/load_examples.csv", numLinesToSkip = 1)
  void aWorkedLoad(
      String kind,
      double acres,
      Double gallons,
      double gallonsPerAcre,
      String rate,
      String strength,
      String expected,
      String unit,
      String source) {
    Unit printed = Unit.find(unit).orElseThrow();
    LoadSize all = LoadSplit.of(acres, gallonsPerAcre, 10_000).loads().get(0);
    if (gallons != null) {
      assertThat(all.gallons()).as(source).isEqualTo(gallons);
    }
    double found =
        switch (kind) {
          case "spray" -> all.gallons();
          case "product" -> LoadAmounts.of(Rate.parse(rate), all).in(printed);
          default -> LoadAmounts.of(productRate(rate, strength, printed), all).in(printed);
        };

    assertThat(new BigDecimal(found).setScale(decimals(expected), RoundingMode.HALF_UP))
        .as(source)
        .isEqualByComparingTo(expected);
  }

  private static int decimals(String printed) {
    return Math.max(0, new BigDecimal(printed).scale());
  }

  /** Product that brings a rate of active. */
  private static Rate productRate(String active, String strength, Unit unit) {
    Rate wanted = Rate.parse(active);
    double perHa = Concentration.parse(strength, Basis.AI).productPerHa(wanted.kgPerHa());
    Quantity onAnAcre =
        new Quantity(
            perHa / 10000 * Unit.ACRE.toSi(1),
            unit == Unit.FLUID_OUNCE ? Unit.LITRE : Unit.KILOGRAM);
    return new Rate(onAnAcre.in(unit), unit, Unit.ACRE, Basis.PRODUCT);
  }
}
