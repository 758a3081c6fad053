package org.swathbook.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.swathbook.program.SprayWeather;
import org.swathbook.rules.Severity;
import org.swathbook.testing.MixCase;
import org.swathbook.testing.Sky;
import org.swathbook.weather.SunTimes;

/**
 * Hours of the days after 4 June 2027, sun from 6:00 to 20:45. The catalog's glufosinate allows
 * wind up to 10 mph, advises four hours from sunrise and sunset, and needs some hours without rain.
 */
class OpenHoursTest {
  private static Optional<SunTimes> sun(LocalDate day) {
    return Optional.of(new SunTimes(LocalTime.of(6, 0), LocalTime.of(20, 45)));
  }

  private static MixCase glufosinate() {
    return MixCase.in("soybean", "glufosinate")
        .day(27, "V3", 7)
        .weed("AMAPA", 2)
        .tank("glufosinate 0.6 ai")
        .adjuvant("ammonium-sulfate", "3 lb/acre")
        .gallons(20)
        .time(LocalTime.of(8, 30));
  }

  private static List<String> spans(OpenHours open) {
    return open.spans().stream()
        .map(s -> s.from().toString().substring(8) + " " + s.to().toString().substring(8))
        .toList();
  }

  private static OpenHours of(MixCase tank, ForecastHours forecast) {
    return OpenHours.of(tank.judged(), forecast.build(), OpenHoursTest::sun);
  }

  /** From 10:00 to 16:45 by the sun; the hour of 16:45 is not open to its end. */
  @Test
  void theSunOpensAndShuts() {
    OpenHours open = of(glufosinate(), ForecastHours.fair("2027-06-04", 240));

    assertThat(spans(open))
        .containsExactly("04T10:00 04T16:00", "05T10:00 05T16:00", "06T10:00 06T16:00");
    assertThat(open.notKnown()).isEmpty();
  }

  /** A forecast from 80 % of what the label allows on leaves too little room. */
  @Test
  void windShuts() {
    ForecastHours windy =
        ForecastHours.fair("2027-06-04", 240)
            .wind(11, 12, ForecastHours.mph(7.9))
            .wind(12, 14, ForecastHours.mph(8))
            .wind(14, 15, ForecastHours.mph(11));

    assertThat(spans(of(glufosinate(), windy)))
        .containsExactly(
            "04T10:00 04T12:00", "04T15:00 04T16:00", "05T10:00 05T16:00", "06T10:00 06T16:00");
  }

  /** Glufosinate of the catalog needs 4 hours; rain at 18:00 shuts what begins after 14:00. */
  @Test
  void rainShutsTheHoursBeforeIt() {
    ForecastHours wet = ForecastHours.fair("2027-06-04", 240).rain(18, 20, OptionalDouble.of(3));
    double needed =
        glufosinate()
            .judged()
            .facts()
            .actives()
            .get(0)
            .terms()
            .foliar()
            .find()
            .orElseThrow()
            .rainfastHours()
            .find()
            .orElseThrow();

    assertThat(needed).isEqualTo(4);
    assertThat(spans(of(glufosinate(), wet))).startsWith("04T10:00 04T14:00");
  }

  @Test
  void heatShutsTheDay() {
    ForecastHours hot = ForecastHours.fair("2027-06-04", 240).degreesF(24 + 15, 24 + 16, 97);

    assertThat(spans(of(glufosinate(), hot)))
        .containsExactly("04T10:00 04T16:00", "06T10:00 06T16:00");
  }

  @Test
  void whatTheForecastDoesNotSayIsNotOpen() {
    ForecastHours silent =
        ForecastHours.fair("2027-06-04", 240).wind(12, 14, OptionalDouble.empty());
    OpenHours windless = of(glufosinate(), silent);

    assertThat(spans(windless)).startsWith("04T10:00 04T12:00", "04T14:00 04T16:00");
    assertThat(windless.notKnown())
        .containsExactly("whether an inversion stands, or the wind", "wind at the field in mph");

    OpenHours rainless =
        of(
            glufosinate(),
            ForecastHours.fair("2027-06-04", 240).rain(0, 240, OptionalDouble.empty()));
    assertThat(rainless.spans()).isEmpty();
    assertThat(rainless.notKnown()).containsExactly("hours to the next rain");
  }

  /** A forecast of 16 hours is dry for the four that are needed until noon only. */
  @Test
  void aForecastOpensNoMoreThanItReaches() {
    OpenHours open = of(glufosinate(), ForecastHours.fair("2027-06-04", 16));

    assertThat(spans(open)).containsExactly("04T10:00 04T12:00");
    assertThat(open.notKnown()).containsExactly("hours to the next rain");
  }

  /** Four dry hours are enough, an hour less is asked about and is no rain. */
  @Test
  void aJobAsksForRainOnlyWhereTheForecastEndsTooSoon() {
    Judgement enough = glufosinate().sky(Sky.fair().dryFor(4)).judged().judgement();
    Judgement tooShort = glufosinate().sky(Sky.fair().dryFor(3.9)).judged().judgement();

    assertThat(enough.asks()).noneMatch(a -> a.what().equals("hours to the next rain"));
    assertThat(tooShort.asks()).anyMatch(a -> a.what().equals("hours to the next rain"));
    assertThat(tooShort.findings()).noneMatch(f -> f.rule().value().equals("rain-too-soon"));
  }

  /** Without the sun nobody knows when a label opens, at night as by day. */
  @Test
  void withoutTheSunNothingIsOpen() {
    OpenHours open =
        OpenHours.of(
            glufosinate().judged(),
            ForecastHours.fair("2027-06-04", 240).build(),
            day -> Optional.empty());

    assertThat(open.spans()).isEmpty();
    assertThat(open.notKnown())
        .anySatisfy(s -> assertThat(s).startsWith("sunrise and sunset: lat, lon and state"));
  }

  @Test
  void openFromTheVeryMinuteOfTheJob() {
    OpenHours open =
        of(glufosinate().time(LocalTime.of(11, 20)), ForecastHours.fair("2027-06-04", 240));

    assertThat(spans(open)).startsWith("04T11:20 04T16:00").endsWith("07T10:00 07T12:00");
  }

  /** An open hour is one of which the rules, asked by the tank itself, say nothing of the day. */
  @Test
  void openHoursAreThoseThatTheRulesOpen() {
    ForecastHours mixed =
        ForecastHours.fair("2027-06-04", 240)
            .wind(11, 13, ForecastHours.mph(14))
            .rain(40, 42, OptionalDouble.of(2))
            .degreesF(60, 64, 99);
    JudgedMix judged = glufosinate().judged();
    OpenHours open = OpenHours.of(judged, mixed.build(), OpenHoursTest::sun);

    LocalDateTime end = LocalDateTime.parse("2027-06-07T08:00");
    for (LocalDateTime t = LocalDateTime.parse("2027-06-04T09:00"); t.isBefore(end); ) {
      LocalDateTime hour = t;
      boolean listed =
          open.spans().stream().anyMatch(s -> !hour.isBefore(s.from()) && hour.isBefore(s.to()));
      boolean free = isFree(judged, mixed, hour) && isFree(judged, mixed, hour.plusMinutes(59));
      assertThat(listed).as(hour.toString()).isEqualTo(free);
      t = t.plusHours(1);
    }
    assertThat(open.spans()).isNotEmpty();
  }

  private static boolean isFree(JudgedMix judged, ForecastHours forecast, LocalDateTime t) {
    var said =
        MixJudge.dayFindings(
            judged.facts(),
            ForecastWeather.fill(
                judged.job().on(t.toLocalDate(), t.toLocalTime()).with(SprayWeather.UNKNOWN),
                forecast.build()),
            sun(t.toLocalDate()));
    return said.count(Severity.BLOCK) + said.count(Severity.WARN) == 0;
  }
}
