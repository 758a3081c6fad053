package org.swathbook.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.swathbook.testing.MixCase;
import org.swathbook.testing.Sky;
import org.swathbook.weather.StationWeather;
import org.swathbook.weather.WeatherDay;

/** Which days a cold spell is read from when the job does not say. */
class ColdSpellTest {
  private static final LocalDate DAY = LocalDate.parse("2027-06-01");

  private static List<Finding> findings(MixCase tank) {
    return tank.findings().stream().filter(f -> f.rule().value().equals("temperature")).toList();
  }

  /** 24 days after 8 May. */
  private static MixCase tank(double recordedC) {
    return MixCase.in("soybean", "glyphosate")
        .day(24, "V2", 5)
        .seen("SETFA", 3)
        .tank("glyphosate 1.0 ae")
        .station(s -> withDaysBefore(s, recordedC));
  }

  /** The record goes on, warm, to the eve of the day; its last three days have one temperature. */
  private static StationWeather withDaysBefore(StationWeather station, double meanC) {
    List<WeatherDay> days = new ArrayList<>(station.days());
    LocalDate last = days.get(days.size() - 1).date();
    for (LocalDate d = last.plusDays(1); d.isBefore(DAY); d = d.plusDays(1)) {
      boolean near = !d.isBefore(DAY.minusDays(3));
      days.add(new WeatherDay(d, near ? meanC + 4 : 22, near ? meanC - 4 : 10, 1));
    }
    return new StationWeather(station.id(), days);
  }

  @Test
  void theRecordOfTheStationStandsWhereTheJobIsSilent() {
    Sky cool = Sky.fair().high(65).meansUnknown();

    assertThat(findings(tank(9.9).sky(cool)))
        .singleElement()
        .satisfies(f -> assertThat(f.actual()).isEqualTo("49.82 F"));
    assertThat(findings(tank(10).sky(cool))).isEmpty();
  }

  @Test
  void whatTheJobSaysStandsBeforeTheRecord() {
    assertThat(findings(tank(5).sky(Sky.fair().high(65).means(55, 55)))).isEmpty();
  }
}
