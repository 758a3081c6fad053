package org.swathbook.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

class GapRuleTest {
  private static final OptionalDouble NONE = OptionalDouble.empty();

  /** Warmer by a degree each year, so that the years can be told apart. */
  private static ObservedDay day(LocalDate d) {
    double high = 20 + (d.getYear() - 2020);
    return new ObservedDay(
        d, OptionalDouble.of(high), OptionalDouble.of(high - 10), OptionalDouble.of(1), 0, NONE);
  }

  /**
   * 1 September 2020 to 31 October 2024, four weather years, each day as changed; null drops it.
   */
  private static StationWeather four(UnaryOperator<ObservedDay> change) {
    return GapRule.fill("s", rows(LocalDate.of(2020, 9, 1), LocalDate.of(2024, 10, 31), change));
  }

  private static List<ObservedDay> rows(
      LocalDate from, LocalDate to, UnaryOperator<ObservedDay> change) {
    List<ObservedDay> out = new ArrayList<>();
    for (LocalDate d = from; !d.isAfter(to); d = d.plusDays(1)) {
      out.add(change.apply(day(d)));
    }
    return out;
  }

  private static boolean in(ObservedDay day, String from, String to) {
    return !day.date().isBefore(LocalDate.parse(from)) && !day.date().isAfter(LocalDate.parse(to));
  }

  private static ObservedDay cold(ObservedDay d) {
    return new ObservedDay(d.date(), NONE, NONE, d.rainMm(), d.irrigationMm(), d.windMs());
  }

  private static ObservedDay rainless(ObservedDay d) {
    return new ObservedDay(d.date(), d.tmaxC(), d.tminC(), NONE, d.irrigationMm(), d.windMs());
  }

  private static WeatherDay at(StationWeather weather, String date) {
    return weather.find(LocalDate.parse(date)).orElseThrow();
  }

  @Test
  void threeDaysStandOnALine() {
    LocalDate first = LocalDate.of(2026, 5, 1);
    List<ObservedDay> rows =
        List.of(
            new ObservedDay(first, OptionalDouble.of(20), OptionalDouble.of(8), NONE, 0, NONE),
            new ObservedDay(
                first.plusDays(4), OptionalDouble.of(28), OptionalDouble.of(10), NONE, 0, NONE));
    StationWeather weather = GapRule.fill("s", rows);

    assertThat(weather.days())
        .extracting(WeatherDay::tmaxC)
        .containsExactly(20., 22., 24., 26., 28.);
    assertThat(weather.days()).extracting(WeatherDay::tminC).containsExactly(8., 8.5, 9., 9.5, 10.);
    assertThat(weather.gaps().temperatureFilled())
        .containsExactly(first.plusDays(1), first.plusDays(2), first.plusDays(3));
    assertThat(weather.gaps().guessed()).isEmpty();
  }

  @Test
  void aShortGapLeavesNoYearOut() {
    StationWeather weather = four(d -> in(d, "2022-05-03", "2022-05-05") ? cold(d) : d);

    assertThat(weather.scenarioYears()).containsExactly(2021, 2022, 2023, 2024);
    assertThat(weather.gaps().leftOut()).isEmpty();
    assertThat(weather.observed(LocalDate.of(2022, 5, 4))).isPresent();
  }

  /** Other years' 22 January: 21, 23 and 24 °C; 2022's own is unknown. */
  @Test
  void aLongGapInWinterTakesTheOtherYears() {
    StationWeather weather = four(d -> in(d, "2022-01-20", "2022-01-23") ? cold(d) : d);

    assertThat(at(weather, "2022-01-22").tmaxC()).isEqualTo((21 + 23 + 24) / 3.0, within(1e-12));
    assertThat(weather.scenarioYears()).contains(2022);
    assertThat(weather.observed(LocalDate.of(2022, 1, 22))).isEmpty();
    assertThat(weather.observed(LocalDate.of(2022, 1, 24))).isPresent();
  }

  /** 2024 is the record's only leap year: its 29 February takes the 28ths of the others. */
  @Test
  void aLeapDayWithoutAnotherTakesTheDayBefore() {
    StationWeather weather = four(d -> in(d, "2024-02-25", "2024-02-29") ? cold(d) : d);

    assertThat(at(weather, "2024-02-28").tmaxC()).isEqualTo((21 + 22 + 23) / 3.0, within(1e-12));
    assertThat(at(weather, "2024-02-29").tmaxC()).isEqualTo((21 + 22 + 23) / 3.0, within(1e-12));
    assertThat(weather.scenarioYears()).contains(2024);
  }

  @Test
  void aLongGapInSpringLeavesTheYearOutAndSaysWhy() {
    StationWeather weather = four(d -> in(d, "2022-02-26", "2022-03-01") ? cold(d) : d);

    assertThat(weather.scenarioYears()).containsExactly(2021, 2023, 2024);
    assertThat(weather.gaps().leftOut())
        .containsOnlyKeys(2022)
        .containsValue("no temperature on 4 days in a row from 2022-02-26");
    assertThat(four(d -> in(d, "2022-02-25", "2022-02-28") ? cold(d) : d).gaps().leftOut())
        .isEmpty();
  }

  /**
   * September and October belong to two weather years; the season ends in them, the other begins.
   */
  @Test
  void aLongGapInAutumnLeavesOutTheYearThatEndsInIt() {
    StationWeather weather = four(d -> in(d, "2022-10-10", "2022-10-14") ? cold(d) : d);

    assertThat(weather.scenarioYears()).containsExactly(2021, 2023, 2024);
  }

  @Test
  void sixteenScatteredDaysAreTooMany() {
    UnaryOperator<ObservedDay> fifteen =
        d ->
            d.date().getYear() == 2022
                    && d.date().getDayOfYear() % 4 == 0
                    && d.date().getDayOfYear() <= 60
                ? cold(d)
                : d;
    assertThat(four(fifteen).gaps().leftOut()).isEmpty();
    StationWeather sixteen =
        four(d -> in(d, "2022-08-01", "2022-08-01") ? rainless(d) : fifteen.apply(d));

    assertThat(sixteen.gaps().leftOut())
        .containsExactly(Map.entry(2022, "16 days with something missing"));
  }

  @Test
  void rainMissingOnSixDaysInARowIsTooMuch() {
    StationWeather five = four(d -> in(d, "2022-06-01", "2022-06-05") ? rainless(d) : d);
    StationWeather six = four(d -> in(d, "2022-06-01", "2022-06-06") ? rainless(d) : d);

    assertThat(five.gaps().leftOut()).isEmpty();
    assertThat(at(five, "2022-06-03").rainMm()).isZero();
    assertThat(five.observed(LocalDate.of(2022, 6, 3))).isPresent();
    assertThat(five.gaps().rainUnknown()).hasSize(5);
    assertThat(six.gaps().leftOut())
        .containsExactly(Map.entry(2022, "no rain record on 6 days in a row from 2022-06-01"));
    assertThat(six.gaps().guessed()).hasSize(6).first().isEqualTo(LocalDate.of(2022, 6, 1));
  }

  /** One year alone has no other to take a mean from, even in winter. */
  @Test
  void daysThatNoOtherYearHasLeaveTheYearOut() {
    StationWeather weather =
        GapRule.fill(
            "s",
            rows(
                LocalDate.of(2021, 9, 1),
                LocalDate.of(2022, 10, 31),
                d -> in(d, "2022-01-10", "2022-01-20") ? cold(d) : d));

    assertThat(weather.scenarioYears()).isEmpty();
    assertThat(weather.gaps().leftOut())
        .containsValue("no temperature on 11 days in a row from 2022-01-10");
  }

  @Test
  void irrigationIsKnownWhereRainIsNot() {
    StationWeather weather =
        four(
            d ->
                in(d, "2022-06-03", "2022-06-03")
                    ? new ObservedDay(d.date(), d.tmaxC(), d.tminC(), NONE, 15, NONE)
                    : d);

    assertThat(at(weather, "2022-06-03").rainMm()).isEqualTo(15);
    assertThat(weather.gaps().rainUnknown()).containsExactly(LocalDate.of(2022, 6, 3));
  }

  /** A warm night was measured among cold days: the line for the day is below it. */
  @Test
  void aFilledHighNeverFallsBelowTheMeasuredLow() {
    StationWeather weather =
        four(
            d ->
                in(d, "2022-06-03", "2022-06-03")
                    ? new ObservedDay(d.date(), NONE, OptionalDouble.of(25), d.rainMm(), 0, NONE)
                    : d);

    assertThat(at(weather, "2022-06-03").tminC()).isEqualTo(25);
    assertThat(at(weather, "2022-06-03").tmaxC()).isEqualTo(25);
  }

  @Test
  void daysWithoutTemperaturesAtTheEndsAreNoPartOfTheRecord() {
    StationWeather weather =
        four(
            d ->
                d.date().isBefore(LocalDate.of(2020, 9, 3)) || in(d, "2024-10-30", "2024-10-31")
                    ? cold(d)
                    : d);

    assertThat(weather.days().get(0).date()).isEqualTo("2020-09-03");
    assertThat(weather.days()).last().extracting(WeatherDay::date).hasToString("2024-10-29");
    assertThat(weather.scenarioYears()).containsExactly(2022, 2023);
    assertThat(four(GapRuleTest::cold).days()).isEmpty();
  }

  @Test
  void windStaysAndIsNeverFilled() {
    StationWeather weather =
        four(
            d ->
                in(d, "2022-06-03", "2022-06-03")
                    ? new ObservedDay(d.date(), NONE, NONE, NONE, 0, OptionalDouble.of(3.5))
                    : d);

    assertThat(at(weather, "2022-06-03").windMs()).hasValue(3.5);
    assertThat(at(weather, "2022-06-04").windMs()).isEmpty();
  }

  @Test
  void aDayThatStandsTwiceIsAnError() {
    ObservedDay day = day(LocalDate.of(2022, 5, 1));
    assertThatThrownBy(() -> GapRule.fill("s", List.of(day, day)))
        .hasMessageContaining("2022-05-01");
  }
}
