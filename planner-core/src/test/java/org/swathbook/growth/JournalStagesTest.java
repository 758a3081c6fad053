package org.swathbook.growth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.swathbook.book.Field;
import org.swathbook.testing.FieldBuilder;
import org.swathbook.testing.Fixtures;

/**
 * Corn stages written in the demo journal beside those that the model gives on the same days. Both
 * the journal and the weather are invented, the springs of 2025 and 2026 so that they suit each
 * other; the test keeps weather, planting dates and model together, and proves nothing about corn.
 */
class JournalStagesTest {

  /** Date, station, planting date and collar stage of every post pass over corn in the journal. */
  @ParameterizedTest(name = "{0} at {1}: V{3}")
  @CsvSource({
    "2025-06-01, dry-butte, 2025-04-24, 6",
    "2025-06-02, sedge-fork, 2025-04-30, 5",
    "2025-06-06, sedge-fork, 2025-05-01, 6",
    "2026-06-03, sedge-fork, 2026-04-29, 6",
    "2026-06-04, sedge-fork, 2026-04-28, 6",
    "2026-06-05, dry-butte, 2026-04-23, 7",
    "2026-06-08, sedge-fork, 2026-05-02, 7",
    "2026-06-10, sedge-fork, 2026-05-03, 7",
    "2026-06-11, dry-butte, 2026-04-29, 6",
    "2026-06-16, sedge-fork, 2026-04-30, 9"
  })
  void cornIsWithinOneLeafOfTheJournal(
      LocalDate date, String station, LocalDate planted, int collars) {
    int later = 2027 - date.getYear();
    Field field =
        FieldBuilder.of("X", "corn", planted.plusYears(later).toString())
            .station(station, 40.5)
            .build();
    SeasonTrace trace =
        TraceBuilder.build(Fixtures.bookWith(field), field).years().stream()
            .filter(t -> t.year() == date.getYear())
            .findFirst()
            .orElseThrow();

    int day = trace.dayOf(date.plusYears(later));

    assertThat(trace.dateOf(day)).isEqualTo(date);
    assertThat((double) trace.stageIndex(day))
        .as(trace.stageName(day))
        .isCloseTo(collars, within(1.0));
  }
}
