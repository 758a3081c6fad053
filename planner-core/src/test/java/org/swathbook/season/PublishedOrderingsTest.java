package org.swathbook.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.swathbook.book.Book;
import org.swathbook.book.DriverKind;
import org.swathbook.book.Field;
import org.swathbook.control.FoliarCurve;
import org.swathbook.control.HeightClasses;
import org.swathbook.control.Setback;
import org.swathbook.growth.HeightModel;
import org.swathbook.growth.TraceBuilder;
import org.swathbook.program.Pass;
import org.swathbook.season.outcome.WeedOutcome;
import org.swathbook.testing.FieldBuilder;
import org.swathbook.testing.Fixtures;

/**
 * Orderings of published trials, walked with the fixture actives on the demo weather. The weather
 * is invented, so only orders and rough distances are held, never a trial's own figure.
 */
class PublishedOrderingsTest {

  private static Kernel field(
      String crop, String planted, String weed, double share, int... sites) {
    Field f =
        FieldBuilder.of("T", crop, planted)
            .traits("2,4-D", "glufosinate", "glyphosate")
            .harvest("2027-10-05")
            .tilled()
            .build();
    Book book = Fixtures.bookWith(f, Fixtures.weed("T", weed, 80, DriverKind.YES, share, sites));
    return Kernel.of(book, TraceBuilder.build(book, f));
  }

  private static WeedOutcome walk(Kernel kernel, Pass... passes) {
    return SeasonWalk.walk(Fixtures.book(), kernel, Sprays.program("T", passes)).weeds().get(0);
  }

  /**
   * Two actives before emergence did better than one on resistant Palmer amaranth: 80-82 % against
   * 39 and 65 % three weeks on (Chahal, Ganie and Jhala 2018, Frontiers in Plant Science 8: 2231).
   */
  @Test
  void twoActivesBeforeEmergenceBeatEitherAlone() {
    Kernel k = field("soybean", "2027-05-11", "AMAPA", 0.9, 2, 9);
    double both =
        walk(k, Sprays.pass(-1, Sprays.mix("metribuzin", 0.5, "pyroxasulfone", 0.16))).controlPct();
    double one = walk(k, Sprays.pass(-1, Sprays.mix("metribuzin", 0.5))).controlPct();
    double other = walk(k, Sprays.pass(-1, Sprays.mix("pyroxasulfone", 0.16))).controlPct();
    assertThat(both).isGreaterThan(Math.max(one, other) + 5);
  }

  /**
   * A second residual later in the season leaves fewer late plants than the first alone (Steckel,
   * Sprague and Hager 2002, Weed Technology 16: 755-761; Chahal et al. 2018).
   */
  @Test
  void layeredBeatsASingleResidualLate() {
    Kernel k = field("soybean", "2027-05-11", "AMATU", 0);
    WeedOutcome single = walk(k, Sprays.pass(-1, Sprays.mix("metribuzin", 0.5)));
    WeedOutcome layered =
        walk(
            k,
            Sprays.pass(-1, Sprays.mix("metribuzin", 0.5)),
            Sprays.pass(21, Sprays.mix("S-metolachlor", 1.27)));
    assertThat(layered.survivorsPerAcre()).isLessThan(0.95 * single.survivorsPerAcre());
    assertThat(layered.exposedPct()).isLessThanOrEqualTo(single.exposedPct());
  }

  /**
   * The guard against too much faith in passes: on waterhemp in corn mesotrione with atrazine after
   * emergence gave 92 %, S-metolachlor with mesotrione and atrazine before it 87 % (Benoit et al.
   * 2019, Canadian Journal of Plant Science 99, at eight weeks). Within ten points here too.
   */
  @Test
  void aGoodPostOnSmallWeedsComesWithinTenPointsOfAPre() {
    Kernel k = field("corn", "2027-05-05", "AMATU", 0);
    // Four days before planting: a day before, rain of 2019 holds it up until corn is up.
    double pre =
        walk(
                k,
                Sprays.pass(
                    -4, Sprays.mix("S-metolachlor", 1.43, "mesotrione", 0.188, "atrazine", 0.53)))
            .controlPct();
    double post =
        walk(k, Sprays.pass(20, Sprays.mix("mesotrione", 0.094, "atrazine", 0.5))).controlPct();
    assertThat(post).isCloseTo(pre, within(10.0));
  }

  /**
   * On glyphosate-resistant giant ragweed glyphosate once gave 40-47 %, twice 59-95 %, with a
   * growth regulator 100 % (Vink et al. 2012, Weed Technology 26, with dicamba; here 2,4-D choline,
   * the one of the fixtures). Only the order is held.
   */
  @Test
  void glyphosateOnceTwiceAndWithAGrowthRegulatorInThatOrder() {
    Kernel k = field("soybean", "2027-05-11", "AMBTR", 0.6, 9);
    Pass early = Sprays.pass(10, Sprays.mix("glyphosate", 0.8));
    Pass late = Sprays.pass(24, Sprays.mix("glyphosate", 0.8));
    double once = walk(k, early).controlPct();
    double twice = walk(k, early, late).controlPct();
    double both =
        walk(
                k,
                Sprays.pass(10, Sprays.mix("glyphosate", 0.8, "2,4-D choline", 0.95)),
                Sprays.pass(24, Sprays.mix("glyphosate", 0.8, "2,4-D choline", 0.95)))
            .controlPct();
    assertThat(once).isLessThan(twice);
    assertThat(twice).isLessThan(both - 20);
  }

  /**
   * Glufosinate 3 days after it had failed on waterhemp of 30 cm gave 90-100 % (Haarmann et al.
   * 2020; the abstract has the same for 7 and 11 days, where these forms take fewer of the
   * survivors themselves in warm weather: see the README). A plant that was never set back would be
   * as good as immune.
   */
  @Test
  void aResprayOfAFailedContactPassFindsPlantsThatWereSetBack() {
    HeightClock clock = new HeightClock(new HeightModel(Fixtures.weed("AMATU").height()));
    double[] glufosinate = new FoliarCurve(0.86, 4 * 2.54, FoliarCurve.CONTACT_GAMMA).table(1);
    int sprayed = HeightClasses.of(30);
    double age = clock.ageAfter(Setback.CONTACT.rank(), sprayed);
    double grown = Math.max(age, age + 3 * 14 - Setback.CONTACT.pauseDegreeDays());
    assertThat(100 * glufosinate[clock.classAt(grown)]).isGreaterThanOrEqualTo(90);
    assertThat(100 * glufosinate[sprayed]).isLessThan(10);
  }
}
