package org.swathbook.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.swathbook.testing.MixCase;
import org.swathbook.testing.Restated;

/**
 * Which partner is named where weeds have outgrown several: each for a driver weed, the one that
 * goes furthest for another. The starter catalog has 6 in of grass for clethodim, 12 in for
 * glyphosate.
 */
class WeedTooTallTest {
  private static final String BOTH = "glyphosate 1.0 ae + clethodim 0.125 ai";

  private static MixCase soy(String tank) {
    return MixCase.in("soybean", "glyphosate").day(24, "V2", 5).tank(tank);
  }

  private static List<String> named(MixCase job) {
    return job.findings().stream()
        .filter(f -> f.rule().value().equals("weed-too-tall"))
        .map(f -> f.about().ingredient().orElseThrow().value())
        .toList();
  }

  @Test
  void ofAWeedThatIsNoDriverThePartnerThatGoesFurthest() {
    assertThat(named(soy(BOTH).seen("SETFA", 30))).containsExactly("glyphosate");
    assertThat(named(soy("clethodim 0.125 ai").seen("SETFA", 30))).containsExactly("clethodim");
  }

  @Test
  void noneWhereOneOfThemStillServes() {
    assertThat(named(soy(BOTH).seen("SETFA", 10))).isEmpty();
    assertThat(named(soy("clethodim 0.125 ai").seen("SETFA", 10))).containsExactly("clethodim");
    MixCase unlimited =
        MixCase.in("soybean", "glyphosate")
            .catalog(Restated.none(MixCase.CATALOG, "clethodim", "use.weedHeights"))
            .day(24, "V2", 5)
            .tank(BOTH)
            .seen("SETFA", 30);
    assertThat(named(unlimited)).isEmpty();
  }

  /**
   * A weed that was seen on the day alone did not come out of the ground that morning. Palmer
   * amaranth grows up to 0.21 cm in a degree-day above 10 °C (Horak and Loughin 2000), so no more
   * than 5 cm even in a day of 34 °C.
   */
  @ParameterizedTest
  @ValueSource(doubles = {7, 9, 12})
  void whatWasSeenTodayWasSmallEnoughOnlyAsLongAgoAsItTakesToGrow(double inches) {
    LocalDate day = LocalDate.parse("2027-06-01");
    LocalDate latest = day.minusDays((long) Math.ceil(2.54 * (inches - 6) / 5));
    MixCase choline = MixCase.in("soybean", "2,4-D").day(24, "V2", 5).tank("2,4-D choline 0.95 ae");
    assertThat(choline.seen("AMAPA", inches).job().day().date()).isEqualTo(day);
    assertThat(lastDay(choline)).isBeforeOrEqualTo(latest);
  }

  /** The day follows from what was seen and not from what the model has of the field. */
  @Test
  void theTallerTheySeeItTheLongerAgoItWasSmallEnough() {
    List<LocalDate> days =
        Stream.of(7.0, 9.0, 12.0)
            .map(
                in ->
                    lastDay(
                        MixCase.in("soybean", "2,4-D")
                            .day(24, "V2", 5)
                            .tank("2,4-D choline 0.95 ae")
                            .weed("AMAPA", in)))
            .toList();
    assertThat(days).isSortedAccordingTo(Comparator.reverseOrder()).doesNotHaveDuplicates();
  }

  private static final String UNTIL = "within the height until ";

  private static LocalDate lastDay(MixCase job) {
    String remedy =
        job.findings().stream()
            .filter(f -> f.rule().value().equals("weed-too-tall"))
            .findFirst()
            .orElseThrow()
            .remedy();
    return LocalDate.parse(
        remedy.substring(remedy.indexOf(UNTIL) + UNTIL.length()),
        DateTimeFormatter.ofPattern("d MMM uuuu", Locale.ROOT));
  }

  @Test
  void ofADriverWeedEachOfThem() {
    assertThat(named(soy(BOTH).weed("SETFA", 30)))
        .containsExactlyInAnyOrder("clethodim", "glyphosate");
  }
}
