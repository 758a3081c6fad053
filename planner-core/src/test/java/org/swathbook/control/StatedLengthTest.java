package org.swathbook.control;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.catalog.SoilTexture;
import org.swathbook.growth.TraceBuilder;
import org.swathbook.growth.TraceSet;
import org.swathbook.testing.FieldBuilder;
import org.swathbook.testing.Fixtures;
import org.swathbook.testing.SyntheticWeather;
import org.swathbook.weather.StationWeather;

/**
 * A stated length is a field length: it holds in the station's typical year when sprayed at the
 * usual time of planting, longer in the cold of April, shorter in the heat of June. A layer holds
 * to the last day on which four fifths of its fresh control are left, where no downpour takes it.
 */
class StatedLengthTest {
  private static final int FEW_DAYS = 4;

  @ParameterizedTest
  @CsvSource({
    "sedge-fork, SILT_LOAM, 28",
    "sedge-fork, SILT_LOAM, 42",
    "sedge-fork, SILT_LOAM, 56",
    "sedge-fork, SANDY_LOAM, 42",
    "sedge-fork, CLAY, 42",
    "dry-butte, LOAM, 28",
    "dry-butte, LOAM, 42",
    "dry-butte, LOAM, 56",
    "dry-butte, SANDY_LOAM, 42",
    "average, SILT_LOAM, 28",
    "average, SILT_LOAM, 42",
    "average, SILT_LOAM, 56"
  })
  void holdsInTheTypicalYear(String station, SoilTexture texture, int stated) {
    TraceSet traces = traces(station, texture);
    int april = medianDays(traces, "04-10", stated);
    int may = medianDays(traces, "05-10", stated);
    int june = medianDays(traces, "06-10", stated);
    assertThat(may).isBetween(stated - FEW_DAYS, stated + FEW_DAYS);
    assertThat(april).isGreaterThan(may);
    assertThat(june).isLessThan(may);
  }

  /** Days to the last one at four fifths of fresh, median of the years (the upper of two). */
  private static int medianDays(TraceSet traces, String sprayed, int stated) {
    List<Integer> all =
        traces.years().stream()
            .map(
                t -> {
                  SoilYear soil = new SoilYear(t.soil());
                  int day = t.dayOf(LocalDate.parse("2027-" + sprayed));
                  int d = day;
                  while (FadeCurve.relative(soil.age(day, d + 1), stated) >= 0.8) {
                    d++;
                  }
                  return d - day;
                })
            .sorted()
            .toList();
    return all.get(all.size() / 2);
  }

  private static TraceSet traces(String station, SoilTexture texture) {
    Field field =
        FieldBuilder.of("T", "corn", "2027-05-01")
            .soil(texture, 2, 6.5)
            .station(station, 40.5)
            .build();
    Book book =
        station.equals("average") ? Fixtures.bookWith(average(), field) : Fixtures.bookWith(field);
    return TraceBuilder.build(book, field);
  }

  /** A year of smooth seasons, -4 to 24 °C in the mean of the day, half an inch every fifth day. */
  private static StationWeather average() {
    return SyntheticWeather.station(
        "average",
        2027,
        d ->
            SyntheticWeather.day(
                d,
                10 + 14 * StrictMath.sin(2 * StrictMath.PI * (d.getDayOfYear() - 110) / 365.0),
                d.toEpochDay() % 5 == 0 ? 13 : 0));
  }
}
