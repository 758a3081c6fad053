package org.swathbook.escapes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.book.file.MixWords;
import org.swathbook.catalog.WeedId;
import org.swathbook.program.Observation;
import org.swathbook.program.PassConditions;
import org.swathbook.program.PlantCounts;
import org.swathbook.program.SeenWeed;
import org.swathbook.testing.BookParts;
import org.swathbook.testing.DemoBook;
import org.swathbook.weather.StationWeather;
import org.swathbook.weather.WeatherDay;

/** Cool weather adds up to twice the days to what a site shows and kills by: from memory. */
class WarmDaysTest {
  private static final Book DEMO = DemoBook.BOOK;
  private static final Field FIELD = DEMO.findField("ND-1").orElseThrow();
  private static final LocalDate JUNE_8 = LocalDate.of(2027, 6, 8);

  /** The demo book with its station's record going on to a day, every new day of one mean. */
  private static Book until(LocalDate last, double meanC) {
    StationWeather known = DEMO.station(FIELD);
    List<WeatherDay> days = new ArrayList<>(known.days());
    for (LocalDate d = days.get(days.size() - 1).date().plusDays(1);
        !d.isAfter(last);
        d = d.plusDays(1)) {
      days.add(new WeatherDay(d, meanC + 5, meanC - 5, 3));
    }
    Map<String, StationWeather> stations = new HashMap<>(DEMO.stations());
    stations.put(FIELD.station(), new StationWeather(known.id(), days, known.gaps()));
    return BookParts.of(DEMO).stations(stations).whole();
  }

  @ParameterizedTest
  @CsvSource({"30, 1", "20, 1", "15, 0.75", "10, 0.5", "2, 0.5"})
  void whatADayIsWorth(double meanC, double worth) {
    assertThat(WarmDays.share(new WeatherDay(JUNE_8, meanC + 5, meanC - 5, 0)))
        .isCloseTo(worth, within(1e-12));
  }

  /** By hand: 7 / 0.75 = 9.33, so the tenth day; at a half the fourteenth, never more. */
  @ParameterizedTest
  @CsvSource({"25, 7, 7", "15, 7, 10", "10, 7, 14", "0, 7, 14", "10, 14, 28"})
  void coolDaysMoveADate(double meanC, int days, int after) {
    WarmDays clock = WarmDays.since(JUNE_8, until(LocalDate.of(2027, 8, 31), meanC), FIELD);
    assertThat(clock.worth(days)).isEqualTo(JUNE_8.plusDays(after));
  }

  /** What is not known moves nothing, and is counted. */
  @Test
  void daysWithoutARecord() {
    assertThat(WarmDays.since(JUNE_8, DEMO, FIELD).worth(7)).isEqualTo(JUNE_8.plusDays(7));
    assertThat(WarmDays.since(JUNE_8, DEMO, FIELD).until(JUNE_8.plusDays(7)))
        .isEqualTo(new WeatherSince(7, 0, 7));
    // Four cool days known, worth two; then warm ones taken.
    WarmDays some = WarmDays.since(JUNE_8, until(JUNE_8.plusDays(4), 8), FIELD);
    assertThat(some.worth(7)).isEqualTo(JUNE_8.plusDays(9));
    assertThat(some.until(JUNE_8.plusDays(10))).isEqualTo(new WeatherSince(10, 4, 8));
  }

  private static EscapeReport judged(Book book, int after) {
    Observation seen =
        new Observation(
            FIELD.id(),
            JUNE_8,
            MixWords.read(
                    book,
                    "ND-1",
                    JUNE_8,
                    OptionalDouble.empty(),
                    List.of("glufosinate-ammonium 0.58 lb ai/acre"))
                .mix(),
            false,
            JUNE_8.plusDays(after),
            Optional.empty(),
            List.of(
                new SeenWeed(
                    new WeedId("AMAPA"),
                    OptionalDouble.of(7),
                    new PlantCounts(10, 20, 4, 0, 9, 0),
                    OptionalDouble.of(6),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty())),
            PassConditions.UNKNOWN);
    return EscapeJudge.judge(book, seen, seen.seen());
  }

  /** Glufosinate in the cold is judged a week later than in the warm. */
  @Test
  void aLookInTheColdWaits() {
    Book cold = until(JUNE_8.plusDays(30), 9);
    EscapeReport early = judged(cold, 13);
    assertThat(early.action()).isEqualTo(Action.WAIT);
    assertThat(early.weeds().get(0).judgedFrom()).isEqualTo(JUNE_8.plusDays(14));
    assertThat(early.lookAgain()).isPresent();
    EscapeReport then = judged(cold, 14);
    assertThat(then.weeds().get(0).tooEarly()).isFalse();
    assertThat(then.weeds().get(0).suspicion().plainCauses()).anyMatch(c -> c.contains("cool"));
    EscapeReport warm = judged(until(JUNE_8.plusDays(30), 24), 7);
    assertThat(warm.weeds().get(0).tooEarly()).isFalse();
    assertThat(warm.weeds().get(0).suspicion().plainCauses()).isEmpty();
  }
}
