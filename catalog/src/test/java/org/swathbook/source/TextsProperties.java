package org.swathbook.source;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import java.util.function.Function;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.swathbook.measure.MeasureException;

/** Numbers and dates, looked through by hand, are those that a pattern and the library take. */
class TextsProperties {

  @Property(tries = 2000)
  void numbersAreThoseOfThePattern(@ForAll("numberLike") String text) {
    Optional<Double> expected =
        text.matches("[-+]?(?:\\d+(?:\\.\\d+)?|\\.\\d+)")
            ? Optional.of(Double.parseDouble(text))
            : Optional.empty();
    assertThat(read(Texts::number, text)).isEqualTo(expected);
  }

  @Property(tries = 2000)
  void datesAreThoseOfTheLibrary(@ForAll("dateLike") String text) {
    assertThat(read(Texts::date, text)).isEqualTo(library(text));
  }

  private static Optional<LocalDate> library(String text) {
    try {
      return text.matches("\\d{4}-\\d{2}-\\d{2}")
          ? Optional.of(LocalDate.parse(text))
          : Optional.empty();
    } catch (DateTimeParseException e) {
      return Optional.empty();
    }
  }

  private static <T> Optional<T> read(Function<String, T> reader, String text) {
    try {
      return Optional.of(reader.apply(text));
    } catch (MeasureException e) {
      return Optional.empty();
    }
  }

  @Provide
  Arbitrary<String> numberLike() {
    return Arbitraries.strings().withChars("+-.,012e\u0663").ofMaxLength(6);
  }

  @Provide
  Arbitrary<String> dateLike() {
    Arbitrary<String> near =
        Arbitraries.strings().withChars("0123").ofLength(8).map(TextsProperties::dashed);
    return Arbitraries.oneOf(
        near, Arbitraries.strings().withChars("-0123\u0663").ofMinLength(9).ofMaxLength(11));
  }

  private static String dashed(String digits) {
    return digits.substring(0, 4) + "-" + digits.substring(4, 6) + "-" + digits.substring(6);
  }
}
