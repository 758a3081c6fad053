package org.swathbook.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.swathbook.book.DriverKind;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.Competition;
import org.swathbook.catalog.CropId;
import org.swathbook.catalog.Source;
import org.swathbook.catalog.Weed;
import org.swathbook.season.loss.YieldLoss;
import org.swathbook.testing.Fixtures;

class YieldLossTest {
  private static final CropId CROP = CropId.of("soybean");

  private static WeedPressure weed(double lossPerPlant, double greatest) {
    WeedPressure p = Fixtures.weed("T", "ABUTH", 1, DriverKind.YES, 0);
    Weed w = p.weed();
    Weed other =
        new Weed(
            w.id(),
            w.name(),
            w.latin(),
            w.aliases(),
            w.kind(),
            w.family(),
            w.genus(),
            w.emergence(),
            w.height(),
            Map.of(CROP, new Competition(lossPerPlant, greatest, Source.FROM_MEMORY)),
            w.seed(),
            w.sources(),
            w.reviewed());
    return new WeedPressure(
        p.field(), other, p.perM2(), p.driver(), p.biotypes(), p.listed(), p.note());
  }

  private static double loss(double lossPerPlant, double greatest, double plants) {
    return YieldLoss.of(CROP, List.of(weed(lossPerPlant, greatest))).share(lossPerPlant * plants);
  }

  /**
   * Loss by common lambsquarters that comes up with the crop, Ontario extension figures (Guide to
   * Agronomy, Publication 811 and what repeats it): 1 and 5 plants/m² in corn, then in soybean.
   */
  @ParameterizedTest
  @CsvSource({"14.6, 67, 1, 12", "14.6, 67, 5, 35", "15.8, 73, 1, 13", "15.8, 73, 5, 38"})
  void isTheHyperbolaThroughPublishedLosses(double i, double a, double plants, double published) {
    assertThat(100 * loss(i / 100, a / 100, plants)).isCloseTo(published, within(0.5));
  }

  /**
   * Klingaman and Oliver (1994), Weed Science 42: 523-527: soybean yield lost to 0.33, 0.66, 1 and
   * 2 Palmer amaranth per metre of row, with I 62.7 % and A 80 % fitted to their means; five points
   * either way.
   */
  @ParameterizedTest
  @CsvSource({"0.33, 17", "0.66, 27", "1, 32", "2, 48"})
  void liesAlongPalmerAmaranthInSoybean(double perMetre, double published) {
    assertThat(100 * loss(0.627, 0.80, perMetre)).isCloseTo(published, within(5.0));
  }

  @Test
  void everyPlantOfEverySpeciesCostsSomethingAndNothingCostsMoreThanTheLargestA() {
    YieldLoss two = YieldLoss.of(CROP, List.of(weed(0.5, 0.8), weed(0.02, 0.4)));
    double sum = two.perPlant(0) * 3 + two.perPlant(1) * 20;
    assertThat(two.share(sum)).isGreaterThan(two.share(two.perPlant(0) * 3));
    assertThat(two.share(1e9)).isCloseTo(0.8, within(1e-6));
    assertThat(two.share(0)).isZero();
  }

  /**
   * Knezevic, Weise and Swanton (1994), Weed Science 42: 568-573: 0.5 redroot pigweed per metre of
   * row up with corn of at most four leaves cost 5 %, and so did 4 up at four to seven leaves: a
   * ratio of 8 over about three and a half stages.
   */
  @Test
  void lateWeedsCountAsLittleAsTheRatioOfTwoPublishedDensities() {
    assertThat(Math.exp(YearWeed.HEAD_START * 3.5)).isCloseTo(8, within(0.3));
  }
}
