package org.swathbook.tank;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.swathbook.measure.Quantity;
import org.swathbook.measure.Unit;
import org.swathbook.tank.PouredAmount.Toward;

/** Amounts in the measures of jugs and scales; sizes of the measures are NIST Handbook 44. */
class PouredAmountTest {

  private static PouredAmount less(String amount) {
    return PouredAmount.of(Quantity.parse(amount), Toward.LESS);
  }

  @ParameterizedTest
  @CsvSource({
    "75 pt, 9 gal 1 qt 1 pt",
    "2432 fl oz, 19 gal",
    "18 fl oz, 1 pt 2 fl oz",
    "2.5 gal, 2 gal 2 qt",
    "0 gal, 0 fl oz",
    "7.3 fl oz, 7.3 fl oz",
    "0.256 fl oz, 0.25 fl oz",
    "11.4 lb, 11 lb 6 oz weight",
    "16 oz weight, 1 lb",
    "5 oz weight, 5 oz weight",
    "96.9 lb, 96 lb 14 oz weight",
    // Whole ounces from a gallon or ten pounds on, tenths from a tenth of that on, else hundredths.
    "128.55 fl oz, 1 gal",
    "127.55 fl oz, 3 qt 1 pt 15.5 fl oz",
    "12.85 fl oz, 12.8 fl oz",
    "12.755 fl oz, 12.75 fl oz",
    "160.55 oz weight, 10 lb",
    "159.55 oz weight, 9 lb 15.5 oz weight",
    "16.05 oz weight, 1 lb",
    "15.955 oz weight, 15.95 oz weight"
  })
  void anAmountInItsMeasures(String amount, String words) {
    assertThat(less(amount).words()).isEqualTo(words);
  }

  @Test
  void aProductIsRoundedDownAndAnAdjuvantUp() {
    Quantity amount = Quantity.parse("200.6 fl oz");

    assertThat(PouredAmount.of(amount, Toward.LESS).words()).isEqualTo("1 gal 2 qt 8 fl oz");
    assertThat(PouredAmount.of(amount, Toward.MORE).words()).isEqualTo("1 gal 2 qt 9 fl oz");
  }

  /** 76 × 1.05 pt by way of litres comes out a hair below. */
  @Test
  void roundingOfTheArithmeticTakesNoOunceAway() {
    double gallons = Unit.GALLON.fromSi(Unit.GALLON.toSi(0.1) * 3);

    assertThat(PouredAmount.of(new Quantity(10 * gallons, Unit.GALLON), Toward.LESS).words())
        .isEqualTo("3 gal");
    assertThat(PouredAmount.of(new Quantity(10 * gallons, Unit.GALLON), Toward.MORE).words())
        .isEqualTo("3 gal");
  }

  /** A value at a limit is at it within a part in a thousand million. */
  @Test
  void whatIsShortByMoreThanThatLosesAnOunce() {
    assertThat(PouredAmount.of(new Quantity(3 * (1 - 5e-10), Unit.GALLON), Toward.LESS).words())
        .isEqualTo("3 gal");
    assertThat(PouredAmount.of(new Quantity(3 * (1 - 2e-9), Unit.GALLON), Toward.LESS).words())
        .isEqualTo("2 gal 3 qt 1 pt 15 fl oz");
  }

  @Test
  void theRoundedAmountIsThatOfTheWords() {
    assertThat(less("200.6 fl oz").rounded().in(Unit.FLUID_OUNCE)).isEqualTo(200);
    assertThat(less("20.07 oz weight").rounded().in(Unit.OUNCE_WEIGHT)).isEqualTo(20);
  }

  @Test
  void packagesAreCountedAndTheRestIsMeasured() {
    assertThat(less("75 pt").inPackages(Quantity.parse("2.5 gal")))
        .contains("3 jugs of 2.5 gal and 1 gal 3 qt 1 pt");
    assertThat(less("5 gal").inPackages(Quantity.parse("2.5 gal"))).contains("2 jugs of 2.5 gal");
    assertThat(less("2.5 gal").inPackages(Quantity.parse("2.5 gal"))).contains("1 jug of 2.5 gal");
    assertThat(less("26 lb").inPackages(Quantity.parse("5 lb")))
        .contains("5 packages of 5 lb and 1 lb");
    assertThat(less("1 gal").inPackages(Quantity.parse("2.5 gal"))).isEmpty();
    assertThat(less("30 gal").inPackages(Quantity.parse("5 lb"))).isEmpty();
    assertThat(less("30 gal").inPackages(Quantity.parse("0 gal"))).isEmpty();
  }

  @Property(tries = 500)
  void roundingKeepsToItsSideAndLosesLessThanOnePartInAHundred(
      @ForAll @DoubleRange(min = 0.02, max = 2000) double gallons) {
    Quantity amount = new Quantity(gallons, Unit.GALLON);
    double less = PouredAmount.of(amount, Toward.LESS).rounded().in(Unit.GALLON);
    double more = PouredAmount.of(amount, Toward.MORE).rounded().in(Unit.GALLON);

    assertThat(less).isBetween(gallons * 0.99, gallons * (1 + 1e-8));
    assertThat(more).isBetween(gallons * (1 - 1e-8), gallons * 1.01);
  }
}
