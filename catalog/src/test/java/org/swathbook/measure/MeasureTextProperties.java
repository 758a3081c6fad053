package org.swathbook.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.Function;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

class MeasureTextProperties {
  private static final List<Function<String, Object>> READERS =
      List.of(
          Quantity::parse,
          RateRange::parse,
          Rate::parse,
          t -> Concentration.parse(t, Basis.AI),
          Price::parse,
          Density::parse,
          Period::parse);

  @Property(tries = 1000)
  void anyTextGivesAMeasureOrSaysWhyNot(@ForAll("texts") String text) {
    for (Function<String, Object> reader : READERS) {
      try {
        assertThat(reader.apply(text)).isNotNull();
      } catch (MeasureException e) {
        // The only way out for a text that is no measure.
      }
    }
  }

  /** Scraps of what measures are made of, so that more than the first character is reached. */
  @Provide
  Arbitrary<String> texts() {
    Arbitrary<String> scraps =
        Arbitraries.of(
            "1",
            "0.25",
            "-",
            "–",
            " ",
            "lb",
            "oz",
            "fl oz",
            "ai",
            "ae",
            "/",
            "acre",
            "gal",
            "%",
            "days",
            "months",
            "$",
            ".",
            "9".repeat(400),
            "F",
            "é",
            "\n",
            "m2",
            "to",
            "+");
    return Arbitraries.oneOf(
        scraps.list().ofMaxSize(8).map(l -> String.join("", l)),
        Arbitraries.strings().ofMaxLength(40));
  }
}
