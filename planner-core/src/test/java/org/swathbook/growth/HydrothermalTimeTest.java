package org.swathbook.growth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.swathbook.catalog.DegreeDayMethod;
import org.swathbook.catalog.Emergence;
import org.swathbook.catalog.SoilTexture;
import org.swathbook.catalog.Source;
import org.swathbook.catalog.ThermalClock;
import org.swathbook.testing.Fixtures;
import org.swathbook.testing.SyntheticWeather;
import org.swathbook.weather.StationWeather;
import org.swathbook.weather.WaterRetention;
import org.swathbook.weather.WeatherDay;

/**
 * Threshold hydrothermal time. Schutte, Regnier, Harrison, Schmoll, Spokas and Forcella 2008, Weed
 * Science 56: giant ragweed in Ohio, base 2 °C and -10 MPa, from 1 March; 60 % up by about 400 and
 * all by about 2300 hydrothermal °C-days; 60 % by late April and all by late July.
 */
class HydrothermalTimeTest {
  private static final SoilTexture SOIL = SoilTexture.SILT_LOAM;

  /**
   * Giant ragweed through the two published points: a curve without lag, with 99 % taken for all,
   * has 10, 50 and 90 % at these sums (b = 440, c = 0.923).
   */
  private static Emergence ragweed(OptionalDouble waterBaseMPa) {
    return new Emergence(
        new ThermalClock(DegreeDayMethod.AVERAGE, 2, OptionalDouble.empty()),
        MonthDay.of(3, 1),
        38.4,
        295.7,
        1085.6,
        Optional.empty(),
        waterBaseMPa,
        new Source("Schutte et al. 2008, Weed Science 56"));
  }

  private static final Emergence THRESHOLD = ragweed(OptionalDouble.of(-10));

  private static List<Seedlings.State> run(Emergence emergence, List<WeatherDay> days) {
    Topsoil topsoil = new Topsoil(Topsoil.Parameters.of(SOIL, 40.7));
    Seedlings model = new Seedlings(Seedlings.Parameters.of(emergence, days, days.size(), SOIL));
    Topsoil.Water soil = topsoil.before();
    Seedlings.State state = model.before();
    List<Seedlings.State> out = new ArrayList<>();
    for (int d = 0; d < days.size(); d++) {
      soil = topsoil.after(soil, days.get(d));
      OutdoorDay today = new OutdoorDay(d, RainClock.rainMm(days, d), soil.relative());
      state = model.integrate(state, model.rates(state, today));
      out.add(state);
    }
    return out;
  }

  @Test
  void theFixtureGoesThroughThePublishedPoints() {
    EmergenceCurve curve = new EmergenceCurve(THRESHOLD);

    assertThat(curve.at(400)).isCloseTo(0.60, within(0.005));
    assertThat(curve.at(2300)).isCloseTo(0.99, within(0.002));
  }

  /**
   * Temperatures of the demo weather (invented, about 40.7° north) under rain as in central Ohio:
   * some 100 mm a month, about every third day (normals from memory). Two weeks are allowed, since
   * the temperatures are of another place.
   */
  @Test
  void datesAreThoseOfOhio() {
    assertThat(meanDayUp(THRESHOLD, true, 0.60))
        .as("60 % up, late April in Ohio")
        .isCloseTo(dayOfYear("04-26"), within(14.0));
  }

  /**
   * What is not met: all were up by late July in Ohio. Here the bare topsoil of summer is too dry
   * for the last of them, even under Ohio's rain, though heat alone would have them up in August.
   */
  @Test
  void theLastPlantsComeTooLate() {
    assertThat(meanDayUp(ragweed(OptionalDouble.of(-1e9)), true, 0.99))
        .as("heat alone")
        .isCloseTo(dayOfYear("08-06"), within(10.0));
    assertThat(meanDayUp(THRESHOLD, true, 0.99)).isGreaterThan(dayOfYear("10-15"));
  }

  /**
   * On the demo station's own, drier springs a bare topsoil is too dry on more than half of the
   * days and the curve lags heat by more than three weeks: the evaporation layer is no seedbed.
   */
  @Test
  void aDrierSpringBringsThemLater() {
    double heat = meanDayUp(ragweed(OptionalDouble.of(-1e9)), false, 0.60);

    assertThat(heat).as("heat alone").isCloseTo(dayOfYear("04-26"), within(14.0));
    assertThat(meanDayUp(THRESHOLD, false, 0.60)).isGreaterThan(heat + 21);
  }

  private static double dayOfYear(String monthDay) {
    return LocalDate.parse("2027-" + monthDay).getDayOfYear();
  }

  private static double meanDayUp(Emergence emergence, boolean ohioRain, double wanted) {
    StationWeather station = Fixtures.station("sedge-fork");
    double sum = 0;
    for (int year : station.scenarioYears()) {
      List<WeatherDay> days =
          new ArrayList<>(ScenarioDays.of(station, year, 2027, LocalDate.MIN, WeatherEdit.NONE));
      if (ohioRain) {
        days.replaceAll(d -> withRain(d, d.date().toEpochDay() % 3 == 0 ? 10 : 0));
      }
      List<Seedlings.State> states = run(emergence, days);
      int d = 0;
      while (d < days.size() - 1 && states.get(d).ready() < wanted) {
        d++;
      }
      sum += days.get(d).date().getDayOfYear();
    }
    return sum / station.scenarioYears().size();
  }

  private static WeatherDay withRain(WeatherDay day, double rainMm) {
    return new WeatherDay(day.date(), day.tmaxC(), day.tminC(), rainMm);
  }

  /** 22 °C means 20 °C-days a day while it is wet, and nothing once the topsoil is drier. */
  @Test
  void heatCountsOnWetDaysOnly() {
    LocalDate lastRain = LocalDate.of(2027, 4, 30);
    List<WeatherDay> days =
        SyntheticWeather.year(
            2027, d -> SyntheticWeather.day(d, 22, d.isAfter(lastRain) ? 0.0 : 8.0));
    List<Seedlings.State> states = run(THRESHOLD, days);
    WaterRetention retention = new WaterRetention(SOIL.fieldCapacity(), SOIL.wiltingPoint());
    double least = retention.relativeWaterAt(-10);

    int rain = (int) (lastRain.toEpochDay() - days.get(0).date().toEpochDay());
    assertThat(states.get(rain).heat()).as("1 March to 30 April").isCloseTo(61 * 20, within(1e-6));
    double dry = states.get(rain + 60).heat();
    assertThat(states.get(days.size() - 1).heat()).as("never wet again").isEqualTo(dry);
    assertThat(dry).as("some days until it is dry").isBetween(61 * 20 + 20.0, 61 * 20 + 20 * 20.0);
    assertThat(least).as("-10 MPa is drier than wilting, wetter than air-dry").isBetween(0.26, 0.5);
  }

  /** What is ready comes up although ten days brought no rain: the curve knows of dry spells. */
  @Test
  void theRainOfTenDaysDoesNotHoldThemASecondTime() {
    LocalDate lastRain = LocalDate.of(2027, 4, 30);
    List<WeatherDay> days =
        SyntheticWeather.year(
            2027, d -> SyntheticWeather.day(d, 12, d.isAfter(lastRain) ? 0.0 : 8.0));

    assertThat(run(THRESHOLD, days)).allSatisfy(s -> assertThat(s.waiting()).isZero());
    assertThat(run(ragweed(OptionalDouble.empty()), days))
        .as("without the option dry soil holds them")
        .anySatisfy(s -> assertThat(s.waiting()).isGreaterThan(0.05));
  }

  /** On soil that never dries both count the same heat. */
  @Test
  void wetSoilMakesNoDifference() {
    List<WeatherDay> days = SyntheticWeather.year(2027, d -> SyntheticWeather.day(d, 15, 8));

    assertThat(run(THRESHOLD, days)).isEqualTo(run(ragweed(OptionalDouble.empty()), days));
  }
}
