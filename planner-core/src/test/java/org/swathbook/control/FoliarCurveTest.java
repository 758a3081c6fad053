package org.swathbook.control;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FoliarCurveTest {

  /**
   * Figures of an independent implementation of the same form, in whole percent: a table's 85 % at
   * 4 in., full and half rate, contact and systemic.
   */
  @ParameterizedTest
  @CsvSource({
    "1, 92, 92, 92, 89",
    "2, 92, 92, 92, 89",
    "3, 91, 86, 89, 81",
    "4, 85, 68, 85, 68",
    "5, 72, 44, 78, 54",
    "6, 54, 24, 70, 40",
    "8, 22, 7, 51, 22",
    "10, 8, 2, 35, 12",
    "12, 3, 1, 23, 7",
    "16, 1, 0, 11, 3"
  })
  void agreesWithAnIndependentImplementation(
      int inches, int contact, int contactHalf, int systemic, int systemicHalf) {
    FoliarCurve c = new FoliarCurve(0.85, 4 * 2.54, FoliarCurve.CONTACT_GAMMA);
    FoliarCurve s = new FoliarCurve(0.85, 4 * 2.54, FoliarCurve.SYSTEMIC_GAMMA);
    double cm = inches * 2.54;
    assertThat(100 * c.control(1, cm)).isCloseTo(contact, within(0.5));
    assertThat(100 * c.control(0.5, cm)).isCloseTo(contactHalf, within(0.5));
    assertThat(100 * s.control(1, cm)).isCloseTo(systemic, within(0.5));
    assertThat(100 * s.control(0.5, cm)).isCloseTo(systemicHalf, within(0.5));
  }

  @ParameterizedTest
  @CsvSource({"0.5", "0.85", "0.95"})
  void givesTheTablesFigureAtItsHeightAndTheHighRate(double emax) {
    FoliarCurve c = new FoliarCurve(emax, 4 * 2.54, 1.6);
    assertThat(c.control(1, 4 * 2.54)).isCloseTo(emax, within(1e-12));
    assertThat(c.table(1)[8]).isCloseTo(emax, within(1e-12));
    assertThat(c.control(3, 4 * 2.54)).isEqualTo(c.control(1, 4 * 2.54));
    assertThat(c.control(0, 4 * 2.54)).isZero();
  }
}
