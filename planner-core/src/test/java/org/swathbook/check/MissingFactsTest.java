package org.swathbook.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.swathbook.catalog.DropletClass;
import org.swathbook.program.Carrier;
import org.swathbook.program.Mix;
import org.swathbook.program.SprayDay;
import org.swathbook.program.SprayJob;
import org.swathbook.program.SprayerSetup;
import org.swathbook.program.SprayerTank;
import org.swathbook.rules.Ask;
import org.swathbook.rules.Finding;
import org.swathbook.rules.Severity;
import org.swathbook.testing.FieldBuilder;
import org.swathbook.testing.MixCase;
import org.swathbook.testing.Sky;

/** Each fact taken away in turn from a job of which all is known: it is missed. */
class MissingFactsTest {

  /**
   * 2,4-D choline over soybean beside a garden: labels of wind, rain, inversion, droplets, water.
   */
  private static MixCase known() {
    return MixCase.in("soybean", "2,4-D", "glyphosate")
        .day(24, "V2", 5)
        .field(f -> f.waterFeet(900).neighbors("garden N 3000 ft"))
        .seen("SETFA", 3)
        .tank("2,4-D choline 0.95 ae + glyphosate 1.0 ae")
        .adjuvant("ammonium-sulfate", "8.5 lb/100 gal")
        .droplets(DropletClass.VERY_COARSE);
  }

  record Fact(String name, UnaryOperator<SprayJob> without, String missed) {
    @Override
    public String toString() {
      return name;
    }
  }

  static Stream<Fact> facts() {
    return Stream.of(
        new Fact("wind", j -> j.with(Sky.fair().windUnknown().weather()), "wind at the field"),
        new Fact("time", MissingFactsTest::withoutTime, "whether an inversion stands"),
        new Fact("inversion and time", MissingFactsTest::withoutTime, "inversion"),
        new Fact("rain", j -> j.with(Sky.fair().rainUnknown().weather()), "hours to the next rain"),
        new Fact(
            "forecast",
            j -> j.with(Sky.fair().rainUnknown().weather()),
            "rain forecast for the next 24 and 48 hours"),
        new Fact(
            "temperature",
            j -> j.with(Sky.fair().temperatureUnknown().weather()),
            "temperature now, and the day's forecast high"),
        new Fact(
            "three days before",
            j -> j.with(Sky.fair().high(65).meansUnknown().weather()),
            "mean temperature of the three days before"),
        new Fact(
            "volume",
            j -> j.with(new Mix(j.mix().doses(), j.mix().adjuvants(), OptionalDouble.empty())),
            "spray volume"),
        new Fact("droplets", j -> j.with(SprayerSetup.UNKNOWN), "droplet class of the nozzles"),
        new Fact("last load", j -> with(j, SprayerTank.UNKNOWN), "what the sprayer held before"));
  }

  private static SprayJob with(SprayJob j, SprayerTank tank) {
    return j.with(j.sprayer().with(tank));
  }

  private static SprayJob withoutTime(SprayJob j) {
    return j.with(
        new SprayDay(
            j.date(),
            Optional.empty(),
            j.scouted(),
            Sky.fair().inversion(Optional.empty()).weather()));
  }

  private static List<String> asks(MixCase of, SprayJob job) {
    return of.judge().judge(job).judgement().asks().stream().map(Ask::what).toList();
  }

  @ParameterizedTest
  @MethodSource("facts")
  void aMissingFactOfTheDayIsAskedFor(Fact fact) {
    MixCase all = known();
    SprayJob job = all.job();

    assertThat(asks(all, job)).noneMatch(a -> a.contains(fact.missed()));
    assertThat(asks(all, fact.without().apply(job))).anyMatch(a -> a.contains(fact.missed()));
  }

  record FieldFact(String name, UnaryOperator<FieldBuilder> without, String missed) {
    @Override
    public String toString() {
      return name;
    }
  }

  static Stream<FieldFact> fieldFacts() {
    return Stream.of(
        new FieldFact("soil", FieldBuilder::soilUnknown, "soil"),
        new FieldFact("state", FieldBuilder::stateUnknown, "state"));
  }

  /** Metribuzin before soybean: its limits hang on soil and pH. */
  @ParameterizedTest
  @MethodSource("fieldFacts")
  void aMissingFactOfTheFieldIsAskedFor(FieldFact fact) {
    MixCase all =
        MixCase.in("soybean").day(-1, "", 0).tank("metribuzin 0.3 ai + fomesafen 0.25 ai");
    MixCase lacking =
        MixCase.in("soybean").day(-1, "", 0).tank("metribuzin 0.3 ai + fomesafen 0.25 ai");
    lacking.field(
        f -> {
          FieldBuilder changed = fact.without().apply(f);
          assertThat(changed).isSameAs(f);
        });

    assertThat(asks(lacking, lacking.job()).size()).isGreaterThan(asks(all, all.job()).size());
  }

  @Test
  void waterDistanceIsAskedForWhereALabelKeepsOne() {
    MixCase corn = MixCase.in("corn").day(20, "V3", 6).tank("atrazine 1.0 ai");

    assertThat(asks(corn, corn.job())).anyMatch(a -> a.contains("nearest well, inlet"));
  }

  /** Missing traits forbid: a crop that may die is no matter of asking. */
  @Test
  void missingTraitsBlock() {
    MixCase unknown =
        MixCase.in("soybean")
            .field(FieldBuilder::traitsUnknown)
            .day(24, "V2", 5)
            .tank("glyphosate 1.0 ae");

    assertThat(unknown.findings())
        .filteredOn(f -> f.rule().value().equals("trait-needed"))
        .extracting(Finding::severity)
        .contains(Severity.BLOCK);
  }

  /** On a warm day no cold spell lasts, whatever the days before were. */
  @Test
  void theDaysBeforeAWarmDayAreNotAskedFor() {
    SprayJob warm = known().job().with(Sky.fair().high(70).meansUnknown().weather());

    assertThat(asks(known(), warm)).noneMatch(a -> a.contains("three days before"));
  }

  /** Untested water is a note, as the trade has it: it never alone holds a sprayer back. */
  @Test
  void untestedWaterIsANote() {
    MixCase all = known();
    SprayJob j = all.job();
    SprayJob untested = j.with(j.sprayer().with(Carrier.UNKNOWN));

    assertThat(all.judge().judge(untested).judgement().findings())
        .filteredOn(f -> f.rule().value().equals("water-quality"))
        .extracting(Finding::severity)
        .containsExactly(Severity.NOTE);
  }
}
