package org.swathbook.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Values of NIST Handbook 44, Appendix C (General Tables of Units of Measurement), quoted from
 * memory. The definitions (inch, pound, gallon, acre) are exact there; the others carry as many
 * digits as the tables print.
 */
class PublishedConversionsTest {

  @ParameterizedTest(name = "1 {0} = {1} {2}")
  @CsvSource({
    "in, 2.54, cm",
    "ft, 0.3048, m",
    "ft, 12, in",
    "lb, 0.45359237, kg",
    "lb, 16, oz weight",
    "oz weight, 28.349523125, g",
    "gal, 3.785411784, L",
    "gal, 4, qt",
    "gal, 8, pt",
    "gal, 128, fl oz",
    "qt, 0.946352946, L",
    "pt, 0.473176473, L",
    "fl oz, 29.5735295625, mL",
    "acre, 4046.8564224, m2",
    "acre, 43560, ft2",
    "ha, 10000, m2",
    "mph, 0.44704, m/s",
    "mph, 1.609344, km/h",
  })
  void oneIs(String unit, double value, String other) {
    assertThat(Quantity.parse("1 " + unit).in(Unit.find(other).orElseThrow()))
        .isCloseTo(value, within(1e-12 * value));
  }

  @ParameterizedTest(name = "{0} F = {1} C")
  @CsvSource({"32, 0", "212, 100", "-40, -40", "50, 10", "86, 30"})
  void fahrenheitByItsDefinition(double fahrenheit, double celsius) {
    assertThat(new Quantity(fahrenheit, Unit.FAHRENHEIT).in(Unit.CELSIUS))
        .isCloseTo(celsius, within(1e-12 * 100));
  }

  @ParameterizedTest(name = "1 {0} = {1} per hectare")
  @CsvSource({
    // The two factors every metric reader needs, as extension tables print them (from memory).
    "lb/acre, 1.1208511",
    "gal/acre, 9.353958",
    "fl oz/acre, 0.0730778",
    "oz weight/acre, 0.0700532",
  })
  void ratesPerAcreAsExtensionTablesPrintThem(String unit, double perHectare) {
    Rate rate = Rate.parse("1 " + unit);
    assertThat(rate.isVolume() ? rate.litresPerHa() : rate.kgPerHa())
        .isCloseTo(perHectare, within(1e-6 * perHectare));
  }

  @Test
  void strengthInPoundsPerGallonAsGramsPerLitre() {
    // 1 lb/gal = 119.826427 g/L (NIST Handbook 44, Appendix C, density, from memory).
    assertThat(Concentration.parse("1 lb/gal", Basis.AI).kgPerLitre() * 1000)
        .isCloseTo(119.826427, within(1e-6));
  }

  @Test
  void twoPintsOfAFourPoundProductBringOnePound() {
    // Worked example of any extension mixing guide: 2 pt/acre x 1/8 gal/pt x 4 lb/gal = 1 lb/acre
    // (common practice, no source).
    double kgPerHa =
        Concentration.parse("4 lb/gal", Basis.AI).activeKgPerHa(Rate.parse("2 pt/acre"));
    assertThat(kgPerHa).isCloseTo(Rate.lbPerAcre(1, Basis.AI).kgPerHa(), within(1e-12));
  }
}
