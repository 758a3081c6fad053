package org.swathbook.weather;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.TreeMap;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

class GapRuleProperties {
  private static final LocalDate FIRST = LocalDate.of(2021, 8, 20);

  /** About 900 days of which a share of cells, and now and then a stretch of rows, is missing. */
  private static List<ObservedDay> record(long seed, int missingPct) {
    Random random = new Random(seed);
    List<ObservedDay> out = new ArrayList<>();
    int skip = 0;
    for (int i = 0; i < 900; i++) {
      if (skip == 0 && random.nextInt(1000) < missingPct) {
        skip = 1 + random.nextInt(20);
      }
      double low = random.nextDouble() * 30 - 10;
      double high = low + random.nextDouble() * 15;
      ObservedDay day =
          new ObservedDay(
              FIRST.plusDays(i),
              maybe(high, random, missingPct),
              maybe(low, random, missingPct),
              maybe(random.nextDouble() * 20, random, missingPct),
              random.nextInt(20) == 0 ? 12 : 0,
              maybe(random.nextDouble() * 9, random, missingPct));
      if (skip > 0) {
        skip--;
      } else {
        out.add(day);
      }
    }
    return out;
  }

  private static OptionalDouble maybe(double value, Random random, int missingPct) {
    return random.nextInt(100) < missingPct ? OptionalDouble.empty() : OptionalDouble.of(value);
  }

  @Property(tries = 200)
  void whatWasMeasuredIsNeverChanged(
      @ForAll long seed, @ForAll @IntRange(min = 0, max = 60) int pct) {
    List<ObservedDay> rows = record(seed, pct);
    StationWeather weather = GapRule.fill("s", rows);

    for (ObservedDay seen : rows) {
      weather
          .find(seen.date())
          .ifPresent(
              day -> {
                seen.tmaxC().ifPresent(t -> assertThat(day.tmaxC()).isEqualTo(t));
                seen.tminC().ifPresent(t -> assertThat(day.tminC()).isEqualTo(t));
                assertThat(day.windMs()).isEqualTo(seen.windMs());
                assertThat(day.rainMm()).isEqualTo(seen.rainMm().orElse(0) + seen.irrigationMm());
              });
    }
  }

  @Property(tries = 100)
  void aRecordWithoutGapsStaysAsItIs(@ForAll long seed) {
    List<ObservedDay> rows = record(seed, 0);
    StationWeather weather = GapRule.fill("s", rows);

    assertThat(weather.days())
        .isEqualTo(
            rows.stream()
                .map(
                    r ->
                        new WeatherDay(
                            r.date(),
                            r.tmaxC().getAsDouble(),
                            r.tminC().getAsDouble(),
                            r.rainMm().getAsDouble() + r.irrigationMm(),
                            r.windMs()))
                .toList());
    assertThat(weather.gaps()).isEqualTo(Gaps.NONE);
  }

  /** Each day that differs from the record is reported, and no year gets in with less. */
  @Property(tries = 200)
  void everyGapIsReported(@ForAll long seed, @ForAll @IntRange(min = 0, max = 30) int pct) {
    List<ObservedDay> rows = record(seed, pct);
    StationWeather weather = GapRule.fill("s", rows);
    Map<LocalDate, ObservedDay> seen = new TreeMap<>();
    rows.forEach(r -> seen.put(r.date(), r));

    for (WeatherDay day : weather.days()) {
      ObservedDay row = seen.get(day.date());
      boolean warm = row != null && row.tmaxC().isPresent() && row.tminC().isPresent();
      boolean wet = row != null && row.rainMm().isPresent();
      assertThat(weather.gaps().temperatureFilled().contains(day.date())).isEqualTo(!warm);
      assertThat(weather.gaps().rainUnknown().contains(day.date())).isEqualTo(!wet);
    }
    for (int year : weather.scenarioYears()) {
      LocalDate from = LocalDate.of(year - 1, 9, 1);
      LocalDate to = LocalDate.of(year, 10, 31);
      long missing =
          from.datesUntil(to.plusDays(1))
              .filter(
                  d ->
                      weather.gaps().temperatureFilled().contains(d)
                          || weather.gaps().rainUnknown().contains(d))
              .count();
      assertThat(missing).isLessThanOrEqualTo(15);
    }
  }
}
