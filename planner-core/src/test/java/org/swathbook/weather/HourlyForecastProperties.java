package org.swathbook.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.swathbook.weather.HourlyForecast.Hour;

/** What must hold of any forecast, with rain, holes and blank cells where they fall. */
class HourlyForecastProperties {
  private static final LocalDateTime START = LocalDateTime.parse("2027-06-08T00:00");
  private static final double BLANK = -1;
  private static final double MISSING = -2;

  @Provide
  Arbitrary<List<Double>> rains() {
    return Arbitraries.frequencyOf(
            net.jqwik.api.Tuple.of(40, Arbitraries.just(0.0)),
            net.jqwik.api.Tuple.of(2, Arbitraries.doubles().between(0, 12).ofScale(1)),
            net.jqwik.api.Tuple.of(1, Arbitraries.of(BLANK, MISSING)))
        .list()
        .ofMinSize(1)
        .ofMaxSize(120);
  }

  private static HourlyForecast of(List<Double> rains) {
    OptionalDouble none = OptionalDouble.empty();
    List<Hour> hours = new ArrayList<>();
    for (int i = 0; i < rains.size(); i++) {
      double mm = rains.get(i);
      if (mm != MISSING) {
        OptionalDouble rain = mm == BLANK ? none : OptionalDouble.of(mm);
        hours.add(new Hour(START.plusHours(i), none, none, none, none, none, rain));
      }
    }
    return new HourlyForecast(hours);
  }

  /** An hour that passes before the rain is an hour less to it. */
  @Property
  void timeRunsTowardsTheRain(
      @ForAll("rains") List<Double> rains, @ForAll @IntRange(max = 7000) int minute) {
    HourlyForecast f = of(rains);
    OptionalDouble now = f.hoursToRain(START.plusMinutes(minute));
    OptionalDouble later = f.hoursToRain(START.plusMinutes(minute + 30));

    if (now.isPresent()) {
      assertThat(f.dryHours(START.plusMinutes(minute))).isEqualTo(now);
    }
    if (now.isPresent() && now.getAsDouble() >= 0.5) {
      assertThat(later.orElseThrow()).isCloseTo(now.getAsDouble() - 0.5, within(1e-9));
    }
  }

  /** Hours that are called dry have no rain that counts, in none of them and nowhere unknown. */
  @Property
  void dryHoursAreDry(
      @ForAll("rains") List<Double> rains, @ForAll @IntRange(max = 7000) int minute) {
    HourlyForecast f = of(rains);
    LocalDateTime from = START.plusMinutes(minute);
    int dry = (int) f.dryHours(from).orElse(0);
    int first = minute / 60;
    int end = (int) Math.ceil((minute + 60 * dry) / 60.0);

    for (int i = first; dry > 0 && i < end; i++) {
      assertThat(rains.get(i)).isBetween(0.0, 0.19);
    }
  }

  /** Rain of a span is that of its parts, and known only where both are. */
  @Property
  void rainAddsUp(
      @ForAll("rains") List<Double> rains,
      @ForAll @IntRange(max = 100) int from,
      @ForAll @IntRange(min = 1, max = 40) int one,
      @ForAll @IntRange(min = 1, max = 40) int two) {
    HourlyForecast f = of(rains);
    LocalDateTime start = START.plusHours(from);
    OptionalDouble all = f.rainMm(start, one + two);
    OptionalDouble first = f.rainMm(start, one);
    OptionalDouble second = f.rainMm(start.plusHours(one), two);

    assertThat(all.isPresent()).isEqualTo(first.isPresent() && second.isPresent());
    if (all.isPresent()) {
      assertThat(all.getAsDouble())
          .isCloseTo(first.getAsDouble() + second.getAsDouble(), within(1e-9));
    }
  }
}
