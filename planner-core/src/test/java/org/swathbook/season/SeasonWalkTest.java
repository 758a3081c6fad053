package org.swathbook.season;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.swathbook.growth.TraceBuilder;
import org.swathbook.growth.TraceSet;
import org.swathbook.measure.Money;
import org.swathbook.testing.Fixtures;

class SeasonWalkTest {

  @Test
  void walksTheFixtureField() {
    TraceSet traces = TraceBuilder.build(Fixtures.book(), Fixtures.field("ND-1"));
    SeasonOutcome o =
        SeasonWalk.walk(
            Fixtures.book(),
            traces,
            Sprays.program(
                "ND-1",
                Sprays.pass(0, Sprays.mix("metribuzin", 0.38, "flumioxazin", 0.08)),
                Sprays.pass(26, Sprays.mix("glyphosate", 1.125, "S-metolachlor", 1.0))));
    assertThat(o.weeds()).hasSize(3);
    assertThat(o.loss()).isBetween(Money.ZERO, o.untreatedLoss());
  }
}
