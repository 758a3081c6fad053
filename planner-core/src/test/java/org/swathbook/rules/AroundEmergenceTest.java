package org.swathbook.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.swathbook.book.Book;
import org.swathbook.catalog.Ingredient;
import org.swathbook.check.UseJudge;
import org.swathbook.growth.PassTiming;
import org.swathbook.growth.Timings;
import org.swathbook.growth.TraceBuilder;
import org.swathbook.growth.TraceSet;
import org.swathbook.measure.Rate;
import org.swathbook.program.Doses;
import org.swathbook.program.Mix;
import org.swathbook.testing.Fixtures;

/**
 * A pass that falls before emergence in some weather years and after it in others is inside where
 * each year has a use for it, and only there.
 */
class AroundEmergenceTest {

  /** Up in more than one year of five, and in less than half of them. */
  private static PassTiming aroundEmergence(TraceSet traces) {
    for (int day = 1; day < 20; day++) {
      PassTiming timing = Timings.at(traces, traces.field().plantDate().plusDays(day));
      long up = timing.years().stream().filter(d -> d.stage() >= 0).count();
      if (up > 0.2 * traces.years().size()) {
        assertThat(up).isLessThan(traces.years().size() / 2);
        return timing;
      }
    }
    throw new AssertionError("soybean never comes up");
  }

  private static List<Finding> window(String field, double glyphosateLbPerAcre) {
    Book book = Fixtures.book();
    TraceSet traces = TraceBuilder.build(book, Fixtures.field(field));
    Ingredient active = Fixtures.active("glyphosate");
    Mix mix =
        Mix.of(
            List.of(
                Doses.ofIngredient(
                    active,
                    Fixtures.catalog().singles(active.id()).get(0),
                    Rate.lbPerAcre(glyphosateLbPerAcre, active.rateBasis()))));
    return UseJudge.facts(book, traces, 0, aroundEmergence(traces), mix).stream()
        .flatMap(f -> UseJudge.judge(f).sorted().stream())
        .filter(f -> f.rule().value().equals("stage-window"))
        .filter(f -> f.message().contains("outside its window"))
        .toList();
  }

  @Test
  void eachYearHasAUse() {
    assertThat(window("ND-1", 1.0)).isEmpty();
  }

  @Test
  void theCropLacksTheTraitOnceItIsUp() {
    assertThat(window("ND-4", 1.0)).hasSize(1);
  }

  @Test
  void theRateIsTooHighOnceItIsUp() {
    assertThat(window("ND-1", 1.5)).hasSize(1);
  }
}
