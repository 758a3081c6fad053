package org.swathbook.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ReadingMeasuresTest {

  @ParameterizedTest
  @ValueSource(strings = {"12 oz/acre", "2 oz ai/acre", "1-2 oz/acre"})
  void ouncesAloneOnARateAskWhichAreMeant(String text) {
    assertThatThrownBy(() -> RateRange.parse(text))
        .isInstanceOf(MeasureException.class)
        .hasMessageContaining("write 'fl oz' or 'oz weight'");
  }

  @ParameterizedTest
  @CsvSource({
    "32 fl oz/acre, FLUID_OUNCE, PRODUCT",
    "0.5 oz weight/acre, OUNCE_WEIGHT, PRODUCT",
    "0.95 lb ae/acre, POUND, AE",
    "0.5 LB AI/ACRE, POUND, AI",
    "0.75 lb cation/acre, POUND, CATION",
    "1.2 L/ha, LITRE, PRODUCT",
    "840 g ae/ha, GRAM, AE",
  })
  void ratesKeepUnitAndBasis(String text, Unit unit, Basis basis) {
    assertThat(Rate.parse(text))
        .satisfies(
            r -> {
              assertThat(r.unit()).isEqualTo(unit);
              assertThat(r.basis()).isEqualTo(basis);
            });
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "lb/acre",
        "1",
        "1 lb",
        "1 lb/bu",
        "1 pt ai/acre",
        "1 acre/lb",
        "-1 lb/acre",
        "1e3 lb/acre",
        "1,000 lb/acre",
        "2-1 lb/acre",
        "1 lb ai ae/acre",
        "NaN lb/acre"
      })
  void whatIsNoRateIsRefused(String text) {
    assertThatThrownBy(() -> RateRange.parse(text)).isInstanceOf(MeasureException.class);
  }

  @ParameterizedTest
  @CsvSource({
    // Days of the calendar counted by hand; months are calendar months (common practice, no
    // source).
    "2026-07-14, 10 months, 2027-05-14",
    "2027-05-10, 28 days, 2027-06-07",
    "2027-01-31, 1 month, 2027-02-28",
    "2027-06-01, 4.5 months, 2027-10-16",
    "2027-06-01, 14-18 months, 2028-12-01",
    "2027-06-01, 0 days, 2027-06-01",
  })
  void waitingTimesEndOnCalendarDays(LocalDate sprayed, String wait, LocalDate first) {
    assertThat(Period.parse(wait).after(sprayed)).isEqualTo(first);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "10", "2.5 days", "-3 days", "3 weeks", "99999999999 months"})
  void whatIsNoWaitingTimeIsRefused(String text) {
    assertThatThrownBy(() -> Period.parse(text)).isInstanceOf(MeasureException.class);
  }

  @Test
  void periodsPrintAsTheyAreRead() {
    assertThat(Period.parse("4.5 months")).hasToString("4 months 15 days");
    assertThat(Period.parse("1 months")).hasToString("1 month");
    assertThat(Period.parse("1 days")).hasToString("1 day");
  }

  @Test
  void strengthsAreByVolumeOrByWeight() {
    assertThat(Concentration.parse("480 g/L", Basis.AI).kgPerLitre()).isEqualTo(0.48);
    assertThat(Concentration.parse("3.8 lb ae/gal", Basis.AI).basis()).isEqualTo(Basis.AE);
    assertThat(Concentration.parse("75 %", Basis.AI).massShare()).isEqualTo(0.75);
    assertThat(Concentration.parse("75 %", Basis.AI).isLiquid()).isFalse();
  }

  @ParameterizedTest
  @ValueSource(strings = {"0 lb/gal", "101 %", "4", "4 lb", "4 gal/lb", "-5 %"})
  void whatIsNoStrengthIsRefused(String text) {
    assertThatThrownBy(() -> Concentration.parse(text, Basis.AI))
        .isInstanceOf(MeasureException.class);
  }

  @Test
  void moneyIsCountedInWholeCents() {
    assertThat(Money.ofDollars(24.005)).hasToString("24.01");
    assertThat(Money.ofDollars(-3.1)).hasToString("-3.10");
    assertThat(Money.ofDollars(0.1).plus(Money.ofDollars(0.2))).isEqualTo(Money.ofDollars(0.3));
    assertThat(Price.parse("24.00 $/gal").dollarsPer(Unit.FLUID_OUNCE)).isEqualTo(24.0 / 128);
  }

  @Test
  void densityTurnsBetweenAreas() {
    assertThat(Density.parse("80 /m2").perAcre()).isEqualTo(80 * 4046.8564224);
    assertThat(Density.parse("200 /acre").perM2()).isEqualTo(200 / 4046.8564224);
    assertThatThrownBy(() -> Density.parse("3 /gal")).isInstanceOf(MeasureException.class);
  }

  @Test
  void differentKindsOfMeasureDoNotCompare() {
    assertThatThrownBy(() -> Quantity.parse("4 in").compareTo(Quantity.parse("4 lb")))
        .isInstanceOf(MeasureException.class);
    assertThatThrownBy(() -> Quantity.parse("4 in").exceeds(Quantity.parse("4 h")))
        .isInstanceOf(MeasureException.class);
  }
}
