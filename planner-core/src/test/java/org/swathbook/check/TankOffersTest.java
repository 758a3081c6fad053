package org.swathbook.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.swathbook.book.Field;
import org.swathbook.book.WeedPressure;
import org.swathbook.growth.Timings;
import org.swathbook.growth.TraceSet;
import org.swathbook.rules.StandingDriver;
import org.swathbook.rules.TankOffers;

/** Foliar sites that the demo book's house can ask of one tank; it names two. */
final class TankOffersTest {
  private static final long SITE_2 = 1 << 2;
  private static final long SITE_4 = 1 << 4;
  private static final long SITE_10 = 1 << 10;
  private static final long SITE_22 = 1 << 22;

  /**
   * What a label lets stand together decides, and not how many sites there are.
   *
   * <ul>
   *   <li>ND-1: soybean with traits for 2,4-D and glufosinate, whose labels take each other and
   *       agree on coarse droplets.
   *   <li>QH-2: soybean with traits for dicamba and glufosinate. Over the top, dicamba goes out in
   *       extremely coarse droplets or coarser and glufosinate in coarse ones or finer, so that
   *       Palmer amaranth that resists sites 2, 9 and 14 can meet one of them in a tank; kochia
   *       that resists 9 meets site 2 beside dicamba.
   *   <li>Before planting there are paraquat, glufosinate and more for both.
   * </ul>
   *
   * <p>Sources: glufosinate in medium to coarse droplets, Johnson, Legleiter and Loux, Purdue and
   * Ohio State Universities; the droplets of dicamba over the top and of 2,4-D choline, and which
   * sites work on which weed, from memory, as in the catalog.
   */
  @ParameterizedTest
  @CsvSource({
    "ND-1, AMAPA, 2027-06-01, 2",
    "QH-2, AMAPA, 2027-06-08, 1",
    "QH-2, KCHSC, 2027-06-08, 2",
    "QH-2, AMAPA, 2027-04-26, 2",
    "QH-2, KCHSC, 2027-04-26, 2"
  })
  void asManyAsLabelsLetIntoOneTank(String field, String weed, LocalDate date, int asked) {
    assertThat(asked(field, weed, date, true, 0)).isEqualTo(asked);
  }

  @Test
  void aWeedThatDoesNotStandIsOwedNothing() {
    assertThat(asked("QH-2", "AMAPA", LocalDate.of(2027, 6, 8), false, 0)).isZero();
  }

  /** One that has what the house names has enough, whatever else could be had. */
  @Test
  void thatManyAsTheHouseNamesAreEnough() {
    assertThat(asked("QH-2", "AMAPA", LocalDate.of(2027, 6, 8), true, SITE_4 | SITE_10))
        .isEqualTo(2);
    assertThat(asked("QH-2", "AMAPA", LocalDate.of(2027, 6, 8), true, SITE_2 | SITE_4 | SITE_10))
        .isEqualTo(2);
  }

  /** Where nothing works one is asked all the same: what stays standing is to be seen. */
  @Test
  void oneIsAskedWhereThereIsNone() {
    assertThat(asked("OB-3", "SORVU", LocalDate.of(2027, 6, 25), true, 0)).isEqualTo(1);
  }

  /** Site 4 alone, after site 4 alone: site 10 is to be had there, in a pass of its own. */
  @Test
  void oneMoreIsAskedOfATankThatRestsOnTheSameSiteAgain() {
    LocalDate post = LocalDate.of(2027, 6, 8);
    assertThat(asked("QH-2", "AMAPA", post, true, SITE_4, SITE_4)).isEqualTo(2);
    assertThat(asked("QH-2", "AMAPA", post, true, SITE_4, SITE_10)).isEqualTo(1);
    assertThat(asked("QH-2", "AMAPA", post, true, SITE_10, SITE_4)).isEqualTo(1);
    assertThat(asked("QH-2", "AMAPA", post, true, 0, SITE_4)).isEqualTo(1);
    assertThat(asked("QH-2", "AMAPA", post, true, SITE_4 | SITE_10, SITE_4)).isEqualTo(2);
  }

  /** Shattercane in sorghum: nothing else is to be had, so that nothing more can be owed. */
  @Test
  void noMoreIsAskedWhereThereIsNoOtherSite() {
    LocalDate post = LocalDate.of(2027, 6, 25);
    assertThat(asked("OB-3", "SORVU", post, true, SITE_2, SITE_2)).isEqualTo(1);
  }

  /**
   * South Pivot in late April, when its nights are cold: glufosinate, the one partner of paraquat
   * that works on both, does not count. A tank of four with a layer of two has two places left, and
   * no two carry both weeds by two sites; one of them may be met by paraquat alone.
   */
  @Test
  void aTankThatHasNoRoomMayMissWhatNoneCouldBring() {
    LocalDate april = LocalDate.of(2027, 4, 22);
    assertThat(together(april, 2, SITE_22 | SITE_4, SITE_22)).containsExactly(2, 1);
    assertThat(together(april, 2, SITE_22, SITE_22 | SITE_2)).containsExactly(1, 2);
  }

  /** What is missed beyond that is owed, and to the first weed of the field before the last. */
  @Test
  void whatATankOfThatRoomBringsIsOwed() {
    LocalDate april = LocalDate.of(2027, 4, 22);
    assertThat(together(april, 2, SITE_22, SITE_22)).containsExactly(2, 1);
    assertThat(together(april, 2, SITE_22 | SITE_4, 0)).containsExactly(2, 1);
  }

  /** Without a layer there is room for both, and later it is warm enough for glufosinate. */
  @Test
  void withMoreRoomOrInTheWarmthAllIsOwed() {
    assertThat(together(LocalDate.of(2027, 4, 22), 0, SITE_22 | SITE_4, SITE_22))
        .containsExactly(2, 2);
    assertThat(together(LocalDate.of(2027, 5, 12), 2, SITE_22 | SITE_4, SITE_22))
        .containsExactly(2, 2);
  }

  /** Palmer amaranth, then kochia. */
  private static int[] together(LocalDate date, int soilSites, long onPalmer, long onKochia) {
    TraceSet traces = DemoFields.traces(DemoFields.field("QH-2"));
    List<StandingDriver> standing =
        List.of(
            new StandingDriver(weed(traces, "AMAPA"), onPalmer, 0),
            new StandingDriver(weed(traces, "KCHSC"), onKochia, 0));
    return new TankOffers(DemoFields.BOOK, traces)
        .foliarSitesAsked(standing, Timings.at(traces, date), soilSites);
  }

  private static int asked(
      String fieldId, String weedId, LocalDate date, boolean stands, long effective) {
    return asked(fieldId, weedId, date, stands, effective, 0);
  }

  private static int asked(
      String fieldId,
      String weedId,
      LocalDate date,
      boolean stands,
      long effective,
      long loneBefore) {
    Field field = DemoFields.field(fieldId);
    TraceSet traces = DemoFields.traces(field);
    WeedPressure weed = weed(traces, weedId);
    List<StandingDriver> standing =
        stands ? List.of(new StandingDriver(weed, effective, loneBefore)) : List.of();
    int[] asked =
        new TankOffers(DemoFields.BOOK, traces)
            .foliarSitesAsked(standing, Timings.at(traces, date), 0);
    return stands ? asked[0] : asked.length;
  }

  private static WeedPressure weed(TraceSet traces, String id) {
    return traces.weeds().stream()
        .filter(w -> w.weed().id().value().equals(id))
        .findFirst()
        .orElseThrow();
  }
}
