package org.swathbook.growth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.testing.Fixtures;
import org.swathbook.weather.WeatherDay;

class WeatherEditTest {
  private static final Book BOOK = Fixtures.book();
  private static final Field FIELD = Fixtures.field("ND-1");
  private static final WeatherEdit SOAKED =
      (year, days) ->
          days.stream()
              .map(d -> new WeatherDay(d.date(), d.tmaxC(), d.tminC(), d.rainMm() + 20))
              .toList();

  @Test
  void noEditIsTheSameToTheLastBit() {
    TraceSet plain = TraceBuilder.build(BOOK, FIELD, LocalDate.MIN);
    TraceSet same = TraceBuilder.build(BOOK, FIELD, LocalDate.MIN, (year, days) -> days);
    for (int y = 0; y < plain.years().size(); y++) {
      SeasonTrace a = plain.years().get(y);
      SeasonTrace b = same.years().get(y);
      for (int d = 1; d < a.days(); d++) {
        assertThat(b.rainMm(d)).isEqualTo(a.rainMm(d));
        assertThat(b.soilAge(d - 1, d)).isEqualTo(a.soilAge(d - 1, d));
        assertThat(b.sprayable(d)).isEqualTo(a.sprayable(d));
      }
      for (int c = 0; c < a.cohorts(0).count(); c++) {
        assertThat(b.cohorts(0).perM2(c)).isEqualTo(a.cohorts(0).perM2(c));
      }
    }
  }

  @Test
  void sprayDaysFollowTheEditedRain() {
    TraceSet wet = TraceBuilder.build(BOOK, FIELD, LocalDate.MIN, SOAKED);
    for (SeasonTrace t : wet.years()) {
      assertThat(t.firstSprayDay(0)).isEqualTo(t.days());
    }
  }

  /**
   * The fixture's book is for 2027, its weather ends in 2026: a book for 2026 has observed days.
   */
  @Test
  void whatIsObservedStays() {
    Book of2026 =
        new Book(
            BOOK.name(),
            2026,
            BOOK.catalog(),
            BOOK.house(),
            BOOK.crops(),
            BOOK.passCost(),
            BOOK.resprayExtra(),
            List.of(FIELD.plantedOn(LocalDate.of(2026, 5, 11))),
            BOOK.weeds(),
            BOOK.journal(),
            BOOK.pastSeasons(),
            BOOK.prices(),
            BOOK.stations(),
            BOOK.notes());
    LocalDate today = LocalDate.of(2026, 5, 20);
    Field field = of2026.fields().get(0);
    TraceSet plain = TraceBuilder.build(of2026, field, today);
    TraceSet wet = TraceBuilder.build(of2026, field, today, SOAKED);
    for (int y = 0; y < plain.years().size(); y++) {
      SeasonTrace a = plain.years().get(y);
      SeasonTrace b = wet.years().get(y);
      int last = a.dayOf(today);
      for (int d = 0; d < a.days(); d++) {
        assertThat(b.rainMm(d)).isEqualTo(a.rainMm(d) + (d <= last ? 0 : 20));
      }
    }
  }

  @Test
  void anEditKeepsTheDays() {
    assertThatThrownBy(
            () ->
                TraceBuilder.build(BOOK, FIELD, LocalDate.MIN, (year, days) -> days.subList(0, 10)))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
