package org.swathbook.control;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.swathbook.book.DriverKind;
import org.swathbook.book.Field;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.SoilTexture;
import org.swathbook.growth.CohortSet;
import org.swathbook.growth.SeasonTrace;
import org.swathbook.growth.TraceBuilder;
import org.swathbook.growth.TraceSet;
import org.swathbook.testing.FieldBuilder;
import org.swathbook.testing.Fixtures;
import org.swathbook.testing.SyntheticWeather;
import org.swathbook.weather.StationWeather;
import org.swathbook.weather.WeatherDay;

/**
 * What an adviser expects of a layer in a dry start, in a drought and in a downpour, beside an
 * ordinary year of the same place. Soybean planted 10 May, Palmer amaranth; one invented station
 * with ordinary years of smooth seasons and half an inch of rain every fifth day up to 2026, and
 * 2027 as the case has it.
 */
class WeatherCasesTest {
  private static final LocalDate SPRAYED = LocalDate.of(2027, 5, 10);

  private record Case(TraceSet traces) {
    SeasonTrace ordinary() {
      return traces.years().get(traces.years().size() - 2);
    }

    SeasonTrace special() {
      return traces.years().get(traces.years().size() - 1);
    }

    ResidualCurve curve(String active, double lb, SeasonTrace year) {
      return new Effects(Fixtures.catalog(), traces)
          .residual(tank(active, lb), traces.years().indexOf(year), year.dayOf(SPRAYED))
          .orElseThrow();
    }

    SoilEffect onPalmer(String active, double lb, SeasonTrace year) {
      return new Effects(Fixtures.catalog(), traces)
          .soil(tank(active, lb), traces.years().indexOf(year), year.dayOf(SPRAYED))
          .get(0);
    }

    private static TankActive tank(String active, double lb) {
      Ingredient i = Fixtures.active(active);
      return new TankActive(i, List.of("SC"), lb * 1.1209);
    }
  }

  private static Case of(SoilTexture texture, ToDoubleFunction<LocalDate> rain2027) {
    Field field =
        FieldBuilder.of("T", "soybean", "2027-05-10")
            .soil(texture, 2, 6.5)
            .station("made", 40.7)
            .rowInches(30)
            .build();
    List<WeatherDay> days = new ArrayList<>();
    LocalDate end = LocalDate.of(2027, 10, 31);
    for (LocalDate d = LocalDate.of(2022, 9, 1); !d.isAfter(end); d = d.plusDays(1)) {
      double mean = 10 + 14 * StrictMath.sin(2 * StrictMath.PI * (d.getDayOfYear() - 110) / 365.0);
      double rain = d.getYear() == 2027 ? rain2027.applyAsDouble(d) : ordinaryRain(d);
      days.add(SyntheticWeather.day(d, mean, rain));
    }
    return new Case(
        TraceBuilder.build(
            Fixtures.bookWith(
                new StationWeather("made", days),
                field,
                Fixtures.weed("T", "AMAPA", 50, DriverKind.YES, 0)),
            field));
  }

  private static double ordinaryRain(LocalDate d) {
    return d.getDayOfYear() % 5 == 0 ? 13 : 0;
  }

  private static boolean isWithin(LocalDate d, String from, String to) {
    return !d.isBefore(LocalDate.parse("2027-" + from))
        && !d.isAfter(LocalDate.parse("2027-" + to));
  }

  private static Case dryStart() {
    return of(SoilTexture.SILT_LOAM, d -> isWithin(d, "05-10", "05-31") ? 0 : ordinaryRain(d));
  }

  /** Share of the season's plants that come up after one date of the book and up to another. */
  private static double emerged(SeasonTrace year, String after, String to) {
    CohortSet palmer = year.cohorts(0);
    double sum = 0;
    for (int c = 0; c < palmer.count(); c++) {
      int up = palmer.emergedOn(c);
      if (up > year.dayOf(LocalDate.parse("2027-" + after))
          && up <= year.dayOf(LocalDate.parse("2027-" + to))) {
        sum += palmer.perM2(c);
      }
    }
    return sum / palmer.totalPerM2();
  }

  private static int halfUp(SeasonTrace year) {
    CohortSet palmer = year.cohorts(0);
    double sum = 0;
    int c = -1;
    while (sum < palmer.totalPerM2() / 2) {
      sum += palmer.perM2(++c);
    }
    return palmer.emergedOn(c);
  }

  @Test
  void afterADryStartTheLayerIsActivatedLate() {
    Case c = dryStart();
    int ordinary = c.curve("S-metolachlor", 1.9, c.ordinary()).activeFrom();
    int late = c.curve("S-metolachlor", 1.9, c.special()).activeFrom();
    int sprayed = c.special().dayOf(SPRAYED);
    assertThat(ordinary - c.ordinary().dayOf(SPRAYED)).isLessThanOrEqualTo(10);
    assertThat(late - sprayed).isBetween(21, 28);
    assertThat(c.curve("S-metolachlor", 1.9, c.special()).share(sprayed + 20)).isZero();
  }

  @Test
  void inADryStartFewSmallSeedsComeUpBeforeTheRain() {
    Case c = dryStart();
    double ordinary = emerged(c.ordinary(), "05-15", "05-31");
    double dry = emerged(c.special(), "05-15", "05-31");
    assertThat(ordinary).isGreaterThan(0.1);
    assertThat(dry).isLessThan(ordinary / 2);
  }

  /** Plants up before the rain: site 15 leaves them, site 14 still takes those up to an inch. */
  @Test
  void plantsUpBeforeTheRainAreLeftButForTheReachBack() {
    Case c = dryStart();
    SeasonTrace year = c.special();
    int rain = c.curve("S-metolachlor", 1.9, year).activeFrom();
    SoilEffect site15 = c.onPalmer("S-metolachlor", 1.9, year);
    SoilEffect site14 = c.onPalmer("flumioxazin", 0.096, year);
    int reach = c.curve("flumioxazin", 0.096, year).activeFrom();
    CohortSet palmer = year.cohorts(0);
    int before = 0;
    for (int k = 0; k < palmer.count(); k++) {
      int up = palmer.emergedOn(k);
      if (up < year.dayOf(LocalDate.of(2027, 6, 1)) && up < rain) {
        before++;
        assertThat(site15.control(k)).isZero();
      }
      if (up < reach && palmer.heightCm(k, reach) > 2.54 && up <= year.dayOf(SPRAYED)) {
        assertThat(site14.control(k)).isZero();
      }
      if (up < reach && palmer.heightCm(k, reach) <= 2.54) {
        assertThat(site14.control(k)).isGreaterThan(0.8);
      }
    }
    assertThat(before).isPositive();
  }

  @Test
  void inADroughtTheLayerAgesSlowerAndTheWeedsComeLater() {
    Case c = of(SoilTexture.SILT_LOAM, d -> isWithin(d, "05-01", "06-30") ? 0 : ordinaryRain(d));
    SeasonTrace year = c.special();
    int sprayed = year.dayOf(SPRAYED);
    double dry = year.soilAge(sprayed, sprayed + 42);
    double ordinary = c.ordinary().soilAge(sprayed, sprayed + 42);
    assertThat(ordinary).isCloseTo(42, offset(4.0));
    assertThat(dry).isLessThan(0.8 * ordinary);
    // Half of them wait for the rain of July; in an ordinary year they are up well before.
    assertThat(c.ordinary().bookDateOf(halfUp(c.ordinary()))).isBefore(LocalDate.of(2027, 6, 25));
    assertThat(year.bookDateOf(halfUp(year))).isAfter(LocalDate.of(2027, 6, 30));
  }

  /**
   * Three inches in three days from 20 May: more is lost from a coarse soil than from a fine one.
   */
  @Test
  void aDownpourTakesMoreFromACoarseSoilThanFromAFineOne() {
    ToDoubleFunction<LocalDate> downpour =
        d -> isWithin(d, "05-20", "05-22") ? 26 : ordinaryRain(d);
    // A wetter soil also ages the layer a little faster.
    assertThat(leftOfMetribuzin(of(SoilTexture.SANDY_LOAM, downpour))).isCloseTo(0.6, offset(0.03));
    assertThat(leftOfMetribuzin(of(SoilTexture.SILTY_CLAY_LOAM, downpour)))
        .isCloseTo(0.85, offset(0.03));
  }

  private static double leftOfMetribuzin(Case c) {
    int after = c.special().dayOf(LocalDate.of(2027, 5, 23));
    return c.curve("metribuzin", 0.5, c.special()).share(after)
        / c.curve("metribuzin", 0.5, c.ordinary()).share(after);
  }
}
