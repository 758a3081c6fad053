package org.swathbook.stress;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.swathbook.book.Book;
import org.swathbook.book.DriverKind;
import org.swathbook.book.Field;
import org.swathbook.check.ProgramJudge;
import org.swathbook.growth.TraceBuilder;
import org.swathbook.growth.TraceSet;
import org.swathbook.measure.Rate;
import org.swathbook.program.Anchor;
import org.swathbook.program.Dose;
import org.swathbook.program.Doses;
import org.swathbook.program.FieldId;
import org.swathbook.program.Mix;
import org.swathbook.program.Pass;
import org.swathbook.program.Program;
import org.swathbook.season.SeasonWalk;
import org.swathbook.season.outcome.SeasonOutcome;
import org.swathbook.testing.FieldBuilder;
import org.swathbook.testing.Fixtures;
import org.swathbook.testing.SyntheticWeather;
import org.swathbook.weather.StationWeather;
import org.swathbook.weather.WeatherDay;

/**
 * A small season by hand: soybean planted 11 May, Palmer amaranth as driver, three equal weather
 * years of smooth seasons with half an inch of rain every fifth day. Invented.
 */
final class SmallSeason {
  static final LocalDate TODAY = LocalDate.of(2027, 3, 1);
  static final String FIELD = "T-1";

  private SmallSeason() {}

  static Field field(boolean irrigated) {
    FieldBuilder b =
        FieldBuilder.of(FIELD, "soybean", "2027-05-11")
            .traits("2,4-D", "glufosinate", "glyphosate")
            .yieldGoal(60)
            .harvest("2027-10-01")
            .station("made", 40.7);
    return (irrigated ? b.irrigated() : b).build();
  }

  static Book book(boolean irrigated) {
    return Fixtures.bookWith(
        weather(),
        field(irrigated),
        Fixtures.weed(FIELD, "AMAPA", 50, DriverKind.YES, 0.5, 9),
        Fixtures.weed(FIELD, "SETFA", 10, DriverKind.NO, 0));
  }

  private static StationWeather weather() {
    List<WeatherDay> days = new ArrayList<>();
    LocalDate end = LocalDate.of(2026, 10, 31);
    for (LocalDate d = LocalDate.of(2023, 9, 1); !d.isAfter(end); d = d.plusDays(1)) {
      double mean = 10 + 14 * StrictMath.sin(2 * StrictMath.PI * (d.getDayOfYear() - 110) / 365.0);
      days.add(SyntheticWeather.day(d, mean, d.getDayOfYear() % 5 == 0 ? 13 : 0));
    }
    return new StationWeather("made", days);
  }

  /** A layer at planting and a post with a second layer four weeks later. */
  static Program twoLayers() {
    return program(
        pass(new Anchor.FromPlanting(0), "metribuzin", 0.4, "flumioxazin", 0.08),
        pass(
            new Anchor.FromPlanting(22),
            "2,4-D choline",
            0.95,
            "glufosinate-ammonium",
            0.66,
            "S-metolachlor",
            1.2));
  }

  static Program program(Pass... passes) {
    return new Program("small", new FieldId(FIELD), List.of(passes));
  }

  static Pass pass(Anchor at, Object... activesAndPounds) {
    List<Dose> doses = new ArrayList<>();
    for (int i = 0; i < activesAndPounds.length; i += 2) {
      var active = Fixtures.active((String) activesAndPounds[i]);
      double lb = ((Number) activesAndPounds[i + 1]).doubleValue();
      doses.add(
          Doses.ofIngredient(
              active,
              Fixtures.catalog().singles(active.id()).get(0),
              Rate.lbPerAcre(lb, active.rateBasis())));
    }
    return new Pass(at, Mix.of(doses));
  }

  static Situation situation(boolean irrigated, Program program) {
    return situation(book(irrigated), FIELD, program, TODAY);
  }

  static Situation situation(Book book, String field, Program program, LocalDate today) {
    TraceSet traces = TraceBuilder.build(book, book.findField(field).orElseThrow(), today);
    SeasonOutcome outcome = SeasonWalk.walk(book, traces, program);
    return Situation.of(
        book, traces, outcome, ProgramJudge.judge(book, traces, outcome, today), today);
  }

  static SeasonOutcome walk(Stressed s) {
    return SeasonWalk.walk(s.book(), s.traces(), s.program());
  }
}
