package org.swathbook.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.swathbook.book.NearWater;
import org.swathbook.measure.MeasureException;
import org.swathbook.testing.MixCase;

/**
 * Kinds of water beside a field that gets atrazine: 66 ft from where runoff enters streams, 200 ft
 * from lakes and reservoirs, 50 ft from wells (label of EPA Reg. 34704-69, University of Washington
 * DEOHS 2024).
 */
class SetbackWaterTest {

  private static MixCase atrazine(String... waters) {
    return MixCase.in("corn").day(20, "V3", 6).tank("atrazine 1.0 ai").field(f -> f.waters(waters));
  }

  private static List<String> blocks(MixCase job) {
    return job.findings().stream()
        .filter(f -> f.rule().value().equals("setback-water"))
        .map(f -> f.actual() + " of " + f.limit())
        .toList();
  }

  private static List<String> asks(MixCase job) {
    return job.judged().judgement().asks().stream()
        .filter(a -> a.rule().value().equals("setback-water"))
        .map(Ask::what)
        .toList();
  }

  @Test
  void aStreamIsNotHeldToTheDistanceFromLakes() {
    MixCase job = atrazine("stream 90 ft", "lake none", "well none");

    assertThat(blocks(job)).isEmpty();
    assertThat(asks(job)).isEmpty();
  }

  @Test
  void eachKindIsHeldToItsOwnDistance() {
    assertThat(blocks(atrazine("stream 65 ft", "lake 199 ft", "well 49 ft")))
        .containsExactlyInAnyOrder("65 ft of 66 ft", "199 ft of 200 ft", "49 ft of 50 ft");
    assertThat(blocks(atrazine("stream 66 ft", "lake 200 ft", "well 50 ft"))).isEmpty();
  }

  @Test
  void runoffEntersAtTheNearestInletUnlessItIsKnownWhere() {
    assertThat(blocks(atrazine("stream 90 ft", "inlet 40 ft", "lake none", "well none")))
        .containsExactly("40 ft of 66 ft");
    assertThat(blocks(atrazine("runoff 70 ft", "inlet 40 ft", "lake none", "well none"))).isEmpty();
  }

  @Test
  void aKindThatTheFieldDoesNotNameIsAskedForUnlessAllWaterIsFarther() {
    assertThat(asks(atrazine("stream 90 ft", "well none")))
        .containsExactly("distance from the field to the nearest lake");
    assertThat(asks(atrazine("stream 250 ft").field(f -> f.waterFeet(250)))).isEmpty();
    assertThat(asks(atrazine("lake none", "well none")))
        .containsExactly(
            "distance from the field to where its runoff enters a stream, an inlet or a lake");
  }

  @ParameterizedTest
  @ValueSource(strings = {"stream", "brook 90 ft", "stream near", "stream -5 ft", "90 ft"})
  void whatIsNoWaterIsRefusedInWords(String text) {
    Assertions.assertThatThrownBy(() -> NearWater.parse(text))
        .isInstanceOf(MeasureException.class)
        .hasMessageContaining(text.split(" ")[text.split(" ").length - 1]);
  }
}
