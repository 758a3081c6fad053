package org.swathbook.growth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.swathbook.book.Book;
import org.swathbook.book.DriverKind;
import org.swathbook.book.Field;
import org.swathbook.testing.FieldBuilder;
import org.swathbook.testing.Fixtures;
import org.swathbook.testing.SyntheticWeather;
import org.swathbook.weather.GapRule;
import org.swathbook.weather.ObservedDay;
import org.swathbook.weather.StationWeather;
import org.swathbook.weather.WeatherDay;

class TraceBuilderTest {

  @Test
  void everyFullYearOfTheStationIsThereAndWeedsKeepTheirOrder() {
    TraceSet traces = TraceBuilder.build(Fixtures.book(), Fixtures.field("ND-1"));

    assertThat(traces.years())
        .extracting(SeasonTrace::year)
        .containsExactly(2017, 2018, 2019, 2020, 2021, 2022, 2023, 2024, 2025, 2026);
    assertThat(traces.weeds())
        .extracting(w -> w.weed().id().value())
        .containsExactly("AMAPA", "SETFA", "ABUTH");
    for (SeasonTrace trace : traces.years()) {
      for (int w = 0; w < 3; w++) {
        assertThat(trace.cohorts(w).weed()).isEqualTo(traces.weeds().get(w).weed());
      }
      assertThat(trace.bookDateOf(trace.plantingDay())).isEqualTo("2027-05-11");
      assertThat(trace.bookDateOf(trace.harvestDay())).isEqualTo("2027-10-01");
    }
  }

  @Test
  void soilControlIsNeededUntilTheFirstOfItsThreeEnds() {
    TraceSet traces = TraceBuilder.build(Fixtures.book(), Fixtures.field("ND-2"));
    for (SeasonTrace trace : traces.years()) {
      int ragweed = trace.neededUntil(0);
      CohortSet cohorts = trace.cohorts(0);
      double up = 0;
      for (int c = 0; c < cohorts.count(); c++) {
        up += cohorts.emergedOn(c) <= ragweed + 4 ? cohorts.perM2(c) : 0;
      }

      assertThat(ragweed).isLessThanOrEqualTo(trace.canopyDay());
      assertThat(ragweed).isLessThanOrEqualTo(trace.harvestDay() - 30);
      assertThat(ragweed == trace.canopyDay() || up >= 0.95 * cohorts.totalPerM2()).isTrue();
      assertThat(trace.neededUntil(2)).isGreaterThanOrEqualTo(ragweed);
    }
  }

  @Test
  void anOpenSorghumStandNeedsControlAsLongAsWeedsComeUp() {
    TraceSet traces = TraceBuilder.build(Fixtures.book(), Fixtures.field("QH-3"));
    for (SeasonTrace trace : traces.years()) {
      assertThat(trace.canopyDay()).isEqualTo(trace.days());
      assertThat(trace.neededUntil(1))
          .as("Palmer amaranth")
          .isGreaterThan(trace.dayOf(LocalDate.of(2027, 7, 15)));
    }
  }

  @Test
  void cropHeightAndCoverEndWithHarvest() {
    SeasonTrace trace = TraceBuilder.build(Fixtures.book(), Fixtures.field("ND-1")).years().get(0);
    int harvest = trace.harvestDay();

    assertThat(trace.cropHeightCm(harvest)).isPositive();
    assertThat(trace.cropHeightCm(harvest + 1)).isZero();
    assertThat(trace.cover(harvest + 1)).isZero();
  }

  @Test
  void anUnknownHarvestIsTheEndOfOctoberAndSaysSo() {
    Field field =
        FieldBuilder.of("X", "corn", "2027-05-01")
            .latitudeUnknown()
            .soilUnknown()
            .rowUnknown()
            .build();
    SeasonTrace trace = TraceBuilder.build(Fixtures.bookWith(field), field).years().get(0);

    assertThat(trace.dateOf(trace.harvestDay())).isEqualTo("2017-10-31");
    assertThat(TraceBuilder.assumed(field))
        .hasSize(4)
        .anyMatch(s -> s.contains("harvest date not given: 31 October"))
        .anyMatch(s -> s.contains("latitude"))
        .anyMatch(s -> s.contains("silt loam"))
        .anyMatch(s -> s.contains("row spacing"));
    assertThat(TraceBuilder.assumed(Fixtures.field("ND-1"))).isEmpty();
  }

  @Test
  void aHarvestInNovemberCountsAsTheLastDay() {
    Field field = FieldBuilder.of("X", "corn", "2027-05-01").harvest("2027-11-12").build();
    SeasonTrace trace = TraceBuilder.build(Fixtures.bookWith(field), field).years().get(0);

    assertThat(trace.harvestDay()).isEqualTo(trace.days() - 1);
  }

  @Test
  void problemsAreSaidInWords() {
    Field early = FieldBuilder.of("X", "corn", "2026-05-01").build();
    assertThatThrownBy(() -> TraceBuilder.build(Fixtures.bookWith(early), early))
        .hasMessageContaining("field X is planted on 2026-05-01")
        .hasMessageContaining("1 September 2026");

    Field unknown = FieldBuilder.of("X", "corn", "2027-05-01").station("nowhere", 41).build();
    assertThatThrownBy(() -> TraceBuilder.build(Fixtures.bookWith(unknown), unknown))
        .hasMessageContaining("nowhere");

    StationWeather half =
        new StationWeather(
            "half",
            SyntheticWeather.year(2026, d -> SyntheticWeather.day(d, 10, 1)).subList(0, 200));
    Field shortRecord = FieldBuilder.of("X", "corn", "2027-05-01").station("half", 41).build();
    assertThatThrownBy(() -> TraceBuilder.build(Fixtures.bookWith(half, shortRecord), shortRecord))
        .hasMessageContaining("no full weather year");
  }

  /** A hot dry April of the season itself, already seen, stands in every year. */
  @Test
  void observedDaysOfTheSeasonAreRealInEveryYear() {
    List<WeatherDay> days =
        new ArrayList<>(SyntheticWeather.year(2025, d -> SyntheticWeather.day(d, 12, 3)));
    for (LocalDate d = LocalDate.of(2025, 11, 1);
        d.isBefore(LocalDate.of(2027, 4, 20));
        d = d.plusDays(1)) {
      days.add(SyntheticWeather.day(d, d.getYear() == 2027 ? 25 : 12, d.getYear() == 2027 ? 0 : 3));
    }
    StationWeather station = new StationWeather("seen", days);
    Field field = FieldBuilder.of("X", "corn", "2027-04-15").station("seen", 41).build();
    Book book = Fixtures.bookWith(station, field, Fixtures.weed("X", "SETFA", 9, DriverKind.NO, 0));

    SeasonTrace blind = TraceBuilder.build(book, field).years().get(0);
    SeasonTrace seen = TraceBuilder.build(book, field, LocalDate.of(2027, 4, 10)).years().get(0);
    int april10 = seen.dayOf(LocalDate.of(2027, 4, 10));

    assertThat(seen.rainMm(april10)).isZero();
    assertThat(seen.rainMm(april10 + 1)).as("not yet seen").isEqualTo(3);
    assertThat(blind.rainMm(april10)).isEqualTo(3);
    assertThat(seen.cohorts(0).totalPerM2()).isCloseTo(9, within(1e-9));
  }

  /**
   * A record that ends on 3 June of the book's season: its last year is no scenario, and its days
   * are those of every year. Days in a long gap, and those after its end, stay each year's own.
   */
  @Test
  void aRecordThatEndsInTheSeasonIsRealUpToItsEnd() {
    LocalDate end = LocalDate.of(2027, 6, 3);
    List<ObservedDay> rows = new ArrayList<>();
    for (LocalDate d = LocalDate.of(2023, 9, 1); !d.isAfter(end); d = d.plusDays(1)) {
      boolean own = !d.isBefore(LocalDate.of(2026, 9, 1));
      boolean gap = own && d.getYear() == 2027 && d.getMonthValue() == 4 && d.getDayOfMonth() < 6;
      if (!gap) {
        // Rain, always below the limit of a spray day, tells the years apart.
        double rainMm = own ? 0.5 : 1 + (d.getYear() - 2023) * 0.25;
        OptionalDouble wind = own ? OptionalDouble.of(6) : OptionalDouble.empty();
        rows.add(
            new ObservedDay(
                d,
                OptionalDouble.of(22),
                OptionalDouble.of(10),
                OptionalDouble.of(rainMm),
                0,
                wind));
      }
    }
    StationWeather station = GapRule.fill("seen", rows);
    Field field = FieldBuilder.of("X", "corn", "2027-04-25").station("seen", 41).build();
    Book book = Fixtures.bookWith(station, field, Fixtures.weed("X", "SETFA", 9, DriverKind.NO, 0));
    TraceSet traces = TraceBuilder.build(book, field, LocalDate.of(2027, 6, 20));

    assertThat(traces.years()).extracting(SeasonTrace::year).containsExactly(2024, 2025, 2026);
    for (SeasonTrace trace : traces.years()) {
      double ownMm = 1 + (trace.year() - 2023) * 0.25;
      for (LocalDate d = LocalDate.of(2026, 9, 1);
          !d.isAfter(LocalDate.of(2027, 6, 20));
          d = d.plusDays(1)) {
        boolean gap = d.getYear() == 2027 && d.getMonthValue() == 4 && d.getDayOfMonth() < 6;
        int day = trace.dayOf(d);
        if (gap || d.isAfter(end)) {
          assertThat(trace.rainMm(day)).as("%s in %s", d, trace.year()).isEqualTo(ownMm);
        } else {
          assertThat(trace.rainMm(day)).as("%s in %s", d, trace.year()).isEqualTo(0.5);
          assertThat(trace.sprayable(day)).as("6 m/s is too windy on %s", d).isFalse();
        }
      }
    }
  }

  @Test
  void aCalmYearOfKnownWindHasASprayDayEveryDay() {
    Field field = FieldBuilder.of("X", "corn", "2027-05-01").station("calm", 41).build();
    for (double windMs : new double[] {4.4, 4.6}) {
      StationWeather station =
          SyntheticWeather.station(
              "calm", 2026, d -> new WeatherDay(d, 25, 12, 1, OptionalDouble.of(windMs)));
      SeasonTrace trace =
          TraceBuilder.build(Fixtures.bookWith(station, field), field).years().get(0);
      for (int d = 0; d < trace.days(); d++) {
        assertThat(trace.sprayable(d)).isEqualTo(windMs < 4.4704);
      }
    }
  }

  @Test
  void rainBeforeTheFirstDayIsUnknownAndCountsAsNone() {
    SeasonTrace trace = TraceBuilder.build(Fixtures.book(), Fixtures.field("ND-1")).years().get(0);

    assertThat(trace.rainAfter(-8, 2))
        .isEqualTo(trace.rainMm(0) + trace.rainMm(1) + trace.rainMm(2));
    assertThat(RainClock.share(trace, 0, 12)).isBetween(0.0, 1.0);
  }
}
