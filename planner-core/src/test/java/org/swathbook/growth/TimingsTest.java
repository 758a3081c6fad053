package org.swathbook.growth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.swathbook.testing.Fixtures;

class TimingsTest {
  private static final TraceSet ND2 = TraceBuilder.build(Fixtures.book(), Fixtures.field("ND-2"));

  @Test
  void everyYearGetsItsFirstSuitableDay() {
    LocalDate planned = LocalDate.of(2027, 6, 5);

    PassTiming timing = Timings.at(ND2, planned);

    assertThat(timing.years()).hasSize(10);
    for (int y = 0; y < 10; y++) {
      SeasonTrace trace = ND2.years().get(y);
      PassTiming.YearDay day = timing.years().get(y);
      assertThat(day.year()).isEqualTo(trace.year());
      assertThat(trace.sprayable(day.day())).isTrue();
      for (int d = trace.dayOf(planned); d < day.day(); d++) {
        assertThat(trace.sprayable(d)).isFalse();
      }
      assertThat(day.stage()).isEqualTo(trace.stage(day.day()));
      assertThat(day.cropHeightCm()).isEqualTo(trace.cropHeightCm(day.day()));
    }
  }

  @Test
  void mediansAreTheMiddleOfTheYears() {
    PassTiming timing = Timings.at(ND2, LocalDate.of(2027, 6, 5));
    List<Double> stages = timing.years().stream().map(PassTiming.YearDay::stage).sorted().toList();

    assertThat(timing.medianStage()).isCloseTo((stages.get(4) + stages.get(5)) / 2, within(1e-12));
    assertThat(timing.medianDate()).isBetween("2027-06-05", "2027-06-12");
    assertThat(Medians.of(new double[] {3, 1, 2})).isEqualTo(2);
    assertThat(
            Medians.of(
                List.of(
                    LocalDate.of(2027, 5, 4),
                    LocalDate.of(2027, 5, 1),
                    LocalDate.of(2027, 5, 9),
                    LocalDate.of(2027, 5, 2))))
        .as("the lower one of two")
        .isEqualTo("2027-05-02");
  }

  @Test
  void aDateWithoutASuitableDayLeftIsMarkedByTheEnd() {
    PassTiming timing = Timings.at(ND2, LocalDate.of(2027, 11, 5));

    for (int y = 0; y < 10; y++) {
      assertThat(timing.years().get(y).day()).isEqualTo(ND2.years().get(y).days());
    }
  }
}
