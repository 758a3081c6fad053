package org.swathbook.measure;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GroupedNumbersTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "0|1|0",
        "999.94|1|999.9",
        "999.95|1|1,000",
        "1204.5|1|1,204.5",
        "-1204.5|1|-1,204.5",
        "-120|1|-120",
        "1234567.125|2|1,234,567.13",
        "100000|0|100,000"
      })
  void aCommaStandsBetweenThousands(double value, int most, String said) {
    assertThat(Numbers.grouped(value, most)).isEqualTo(said);
  }

  /** Money has its decimals, and they are not grouped. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {"40143.96|40,143.96", "-1000.00|-1,000.00", "12.345678|12.345678"})
  void decimalsStayAsTheyAre(String number, String said) {
    assertThat(Numbers.grouped(number)).isEqualTo(said);
  }
}
