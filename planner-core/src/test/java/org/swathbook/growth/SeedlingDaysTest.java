package org.swathbook.growth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.swathbook.book.DriverKind;
import org.swathbook.book.Field;
import org.swathbook.catalog.SoilTexture;
import org.swathbook.catalog.Weed;
import org.swathbook.testing.FieldBuilder;
import org.swathbook.testing.Fixtures;
import org.swathbook.testing.SyntheticWeather;
import org.swathbook.weather.WeatherDay;

class SeedlingDaysTest {
  private static final LocalDate FIRST = LocalDate.of(2026, 9, 1);
  private static final Weed WEED = Fixtures.weed("SETFA");

  private static int day(String monthDay) {
    return (int) (LocalDate.parse("2027-" + monthDay).toEpochDay() - FIRST.toEpochDay());
  }

  /** A spring that warms evenly from 5 °C on 1 March to 25 °C on 1 August. */
  private static WeatherDay spring(LocalDate date, double rainMm) {
    double share = Math.max(0, Math.min(1, (date.getDayOfYear() - 60) / 153.0));
    return SyntheticWeather.day(date, date.getYear() == 2026 ? 5 : 5 + 20 * share, rainMm);
  }

  private static List<WeatherDay> weather(Function<LocalDate, Double> rainMm) {
    return SyntheticWeather.year(2027, d -> spring(d, rainMm.apply(d)));
  }

  /** No crop closes over the weeds: planted at the very end. */
  private static CanopyClock open(List<WeatherDay> days) {
    return canopy(days, days.size() - 1);
  }

  private static CanopyClock canopy(List<WeatherDay> days, int plantingDay) {
    Field field = FieldBuilder.of("X", "soybean", "2027-05-10").rowInches(7.5).build();
    return new CanopyClock(
        Fixtures.soybean(),
        field,
        new CropClock(Fixtures.soybean(), days, plantingDay),
        days.size() - 1);
  }

  private static double[] emergence(List<WeatherDay> days, CanopyClock canopy, int tilledOn) {
    Topsoil topsoil = new Topsoil(Topsoil.Parameters.of(SoilTexture.SILT_LOAM, 41));
    SoilCourse soil = SoilCourse.of(days, topsoil, new SoilAge(new SoilAge.Parameters(1)));
    WeedCourse weed = new SeasonHeat(days).makeWeed(WEED, tilledOn, SoilTexture.SILT_LOAM, soil);
    return SeedlingDays.perM2(
        new OutdoorModel(List.of(weed)).run(soil.days(), canopy).emerging[0], 40);
  }

  private static double sum(double[] perM2, int from, int to) {
    double out = 0;
    for (int d = from; d <= to; d++) {
      out += perM2[d];
    }
    return out;
  }

  @Test
  void moistSoilFollowsTheCurve() {
    List<WeatherDay> days = weather(d -> 2.0);
    double[] perM2 = emergence(days, open(days), days.size());
    EmergenceCurve curve = new EmergenceCurve(WEED.emergence());
    double heat = 0;
    for (LocalDate d = LocalDate.of(2027, 1, 1);
        !d.isAfter(LocalDate.of(2027, 5, 20));
        d = d.plusDays(1)) {
      heat += ThermalTime.of(WEED.emergence().clock(), spring(d, 0));
    }
    double all = 0;
    for (WeatherDay d : days) {
      all += d.date().getYear() == 2027 ? ThermalTime.of(WEED.emergence().clock(), d) : 0;
    }

    assertThat(sum(perM2, 0, day("05-20")) / 40)
        .isCloseTo(curve.at(heat) / curve.at(all), within(1e-9));
  }

  /** Three dry weeks keep all back; the first inch brings up at once what has waited. */
  @Test
  void drySoilHoldsSeedlingsBackUntilRain() {
    LocalDate from = LocalDate.of(2027, 5, 1);
    LocalDate to = LocalDate.of(2027, 5, 25);
    List<WeatherDay> wet = weather(d -> 2.0);
    List<WeatherDay> dry =
        weather(d -> d.isAfter(from) && d.isBefore(to) ? 0.0 : d.equals(to) ? 25.0 : 2.0);

    double[] whenWet = emergence(wet, open(wet), wet.size());
    double[] whenDry = emergence(dry, open(dry), dry.size());

    assertThat(sum(whenDry, day("05-11"), day("05-24"))).isCloseTo(0, within(1e-9));
    assertThat(sum(whenWet, day("05-11"), day("05-24"))).isGreaterThan(4);
    assertThat(whenDry[day("05-25")])
        .as("all that waited, on the day of the rain")
        .isGreaterThan(sum(whenWet, day("05-11"), day("05-24")));
    assertThat(sum(whenDry, 0, day("05-25")))
        .as("nobody was lost")
        .isCloseTo(sum(whenWet, 0, day("05-25")), within(1e-9));
  }

  /** Half the rain that is needed brings half of the waiting plants a day. */
  @Test
  void littleRainBringsAShare() {
    List<WeatherDay> days = weather(d -> 0.6);
    assertThat(RainClock.share(6, RainClock.SEEDLING_NEED_MM)).isEqualTo(0.5);
    assertThat(RainClock.share(0, 0)).as("no need").isEqualTo(1);

    double[] perM2 = emergence(days, open(days), days.size());
    List<WeatherDay> wetDays = weather(d -> 2.0);
    double[] wet = emergence(wetDays, open(wetDays), wetDays.size());

    assertThat(sum(perM2, 0, day("05-20"))).isLessThan(sum(wet, 0, day("05-20")));
    assertThat(sum(perM2, 0, day("05-20"))).isGreaterThan(sum(wet, 0, day("05-18")));
  }

  /** At 20 °C mean, ten °C-days of base 10 a day, tilled soil stays bare for four days. */
  @Test
  void nothingComesUpForFortyDegreeDaysAfterTillage() {
    List<WeatherDay> days =
        SyntheticWeather.year(2027, d -> SyntheticWeather.day(d, d.getYear() == 2026 ? 0 : 20, 2));
    int tilled = 130;
    double[] perM2 = emergence(days, open(days), tilled);
    double[] untilled = emergence(days, open(days), days.size());

    assertThat(perM2[tilled - 1]).isPositive();
    assertThat(sum(perM2, tilled, tilled + 3)).isZero();
    assertThat(perM2[tilled + 4])
        .as("what waited comes as a flush")
        .isCloseTo(sum(untilled, tilled, tilled + 4), within(1e-9));
  }

  @Test
  void aClosedCanopyLetsAQuarterUpAndTheSeasonStillAddsUp() {
    List<WeatherDay> days = weather(d -> 2.0);
    CanopyClock canopy = canopy(days, day("04-20"));
    double[] perM2 = emergence(days, canopy, days.size());
    double[] without = emergence(days, open(days), days.size());
    int closed = canopy.canopyDay();

    double before = sum(perM2, 0, closed - 1) / sum(without, 0, closed - 1);
    double after = perM2[closed + 5] / without[closed + 5];

    assertThat(after / before).isCloseTo(0.25, within(1e-9));
    assertThat(sum(perM2, 0, days.size() - 1)).isCloseTo(40, within(1e-9));
  }

  @Test
  void aYearWithoutWarmthStaysEmpty() {
    List<WeatherDay> days = SyntheticWeather.year(2027, d -> SyntheticWeather.day(d, 2, 5));

    double[] perM2 = emergence(days, open(days), days.size());

    assertThat(sum(perM2, 0, days.size() - 1)).isZero();
    assertThat(SeedlingDays.dayOfShare(perM2, 0.95)).isEqualTo(days.size() - 1);
  }

  @Test
  void tillageKillsTheSmallAndHalfOfTheMiddling() {
    assertThat(CohortBuilder.tillageSurvival(3.9 * 2.54)).isZero();
    assertThat(CohortBuilder.tillageSurvival(4 * 2.54)).isEqualTo(0.5);
    assertThat(CohortBuilder.tillageSurvival(8 * 2.54)).isEqualTo(0.5);
    assertThat(CohortBuilder.tillageSurvival(8.1 * 2.54)).isEqualTo(1);
  }

  @Test
  void onlyWhatIsUpBeforePlantingMeetsTheTillage() {
    Field field = FieldBuilder.of("X", "soybean", "2027-05-18").tilled().build();
    TraceSet traces =
        TraceBuilder.build(
            Fixtures.bookWith(field, Fixtures.weed("X", "AMBTR", 10, DriverKind.YES, 0)), field);

    for (SeasonTrace trace : traces.years()) {
      CohortSet ragweed = trace.cohorts(0);
      for (int c = 0; c < ragweed.count(); c++) {
        double survival = ragweed.tillageSurvival(c);
        if (ragweed.emergedOn(c) >= trace.plantingDay()) {
          assertThat(survival).isEqualTo(1);
        } else {
          assertThat(survival)
              .isEqualTo(CohortBuilder.tillageSurvival(ragweed.heightCm(c, trace.plantingDay())));
        }
      }
    }
    assertThat(traces.years())
        .as("in some years the ragweed of March is too tall by then")
        .anyMatch(t -> t.cohorts(0).tillageSurvival(0) == 1)
        .anyMatch(t -> t.cohorts(0).tillageSurvival(0) == 0);
  }
}
