package org.swathbook.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.swathbook.book.Field;
import org.swathbook.catalog.ProductId;
import org.swathbook.growth.Timings;
import org.swathbook.growth.TraceSet;
import org.swathbook.measure.Rate;
import org.swathbook.program.Dose;
import org.swathbook.program.Doses;
import org.swathbook.program.Mix;
import org.swathbook.rules.Finding;
import org.swathbook.rules.Severity;

/** Dicamba before soybean without the trait: 14 days, counted once an inch of rain has fallen. */
class HalfTheYearsTest {

  private static List<Finding> interval(LocalDate date) {
    Field field = DemoFields.field("OB-1");
    TraceSet traces = DemoFields.traces(field);
    Dose dose =
        Doses.ofProduct(
            DemoFields.BOOK.catalog(),
            DemoFields.BOOK.catalog().product(new ProductId("dicamba-4sl")),
            Rate.parse("4 fl oz/acre"));
    return UseJudge.facts(
            DemoFields.BOOK, traces, 0, Timings.at(traces, date), Mix.of(List.of(dose)))
        .stream()
        .flatMap(f -> UseJudge.judge(f).sorted().stream())
        .filter(f -> f.rule().value().equals("planting-interval"))
        .toList();
  }

  /** The rain comes in time in five of the ten years of the demo weather: a coin decides. */
  @Test
  void aWaitThatHalfTheYearsBreakIsBlocked() {
    assertThat(interval(LocalDate.of(2027, 4, 12)))
        .singleElement()
        .satisfies(f -> assertThat(f.severity()).isEqualTo(Severity.BLOCK));
  }

  @Test
  void enoughDaysInMostYearsAreNot() {
    assertThat(interval(LocalDate.of(2027, 3, 20)))
        .allSatisfy(f -> assertThat(f.severity()).isNotEqualTo(Severity.BLOCK));
  }
}
