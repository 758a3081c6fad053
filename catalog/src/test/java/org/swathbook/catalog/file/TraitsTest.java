package org.swathbook.catalog.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.swathbook.measure.MeasureException;

class TraitsTest {
  @Test
  void aTraitIsReadHoweverItIsSpelled() {
    assertThat(Traits.PARSER.parse("Safened seed").value()).isEqualTo("safened-seed");
  }

  @ParameterizedTest
  @ValueSource(strings = {"???", "\u0442\u0440\u0430\u0432\u0430", "glyphosat"})
  void whatIsNoTraitIsSaidToBeNone(String text) {
    assertThatThrownBy(() -> Traits.PARSER.parse(text))
        .isInstanceOf(MeasureException.class)
        .hasMessageContaining("'" + text + "' is no trait");
  }
}
