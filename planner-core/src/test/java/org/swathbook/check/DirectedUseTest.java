package org.swathbook.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.swathbook.book.Field;
import org.swathbook.catalog.Ingredient;
import org.swathbook.growth.PassTiming;
import org.swathbook.growth.Timings;
import org.swathbook.growth.TraceSet;
import org.swathbook.measure.Rate;
import org.swathbook.program.Doses;
import org.swathbook.program.Mix;
import org.swathbook.rules.Finding;

/** A use below the leaves or under hoods is no leave to spray over the top. */
class DirectedUseTest {

  private static List<Finding> paraquat(String field, int daysAfterPlanting) {
    Field f = DemoFields.BOOK.findField(field).orElseThrow();
    TraceSet traces = DemoFields.traces(f);
    PassTiming timing = Timings.at(traces, f.plantDate().plusDays(daysAfterPlanting));
    Ingredient active = DemoFields.BOOK.catalog().findIngredient("paraquat").orElseThrow();
    Mix mix =
        Mix.of(
            List.of(
                Doses.ofIngredient(
                    active,
                    DemoFields.BOOK.catalog().singles(active.id()).get(0),
                    Rate.lbPerAcre(0.5, active.rateBasis()))));
    return UseJudge.facts(DemoFields.BOOK, traces, 0, timing, mix).stream()
        .flatMap(x -> UseJudge.judge(x).sorted().stream())
        .filter(x -> x.rule().value().equals("crop-not-listed"))
        .toList();
  }

  @Test
  void paraquatOverStandingSorghum() {
    assertThat(paraquat("OB-3", 40))
        .singleElement()
        .satisfies(
            f ->
                assertThat(f.message())
                    .isEqualTo(
                        "Paraquat: in grain sorghum after emergence it is listed for directed and"
                            + " hooded sprays only, and this pass is broadcast."));
  }

  @Test
  void paraquatBeforePlanting() {
    assertThat(paraquat("OB-3", -10)).isEmpty();
  }
}
