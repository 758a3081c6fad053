package org.swathbook.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.swathbook.book.Field;
import org.swathbook.book.WeedPressure;
import org.swathbook.growth.Timings;
import org.swathbook.growth.TraceSet;
import org.swathbook.rules.TankOffers;

/** Foliar sites that the demo book's house can ask of one tank; it names two. */
final class TankOffersTest {

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
    assertThat(asked("QH-2", "AMAPA", LocalDate.of(2027, 6, 8), true, 2)).isEqualTo(2);
    assertThat(asked("QH-2", "AMAPA", LocalDate.of(2027, 6, 8), true, 3)).isEqualTo(2);
  }

  /** Where nothing works one is asked all the same: what stays standing is to be seen. */
  @Test
  void oneIsAskedWhereThereIsNone() {
    assertThat(asked("OB-3", "SORVU", LocalDate.of(2027, 6, 25), true, 0)).isEqualTo(1);
  }

  private static int asked(
      String fieldId, String weedId, LocalDate date, boolean stands, int effective) {
    Field field = DemoFields.field(fieldId);
    TraceSet traces = DemoFields.traces(field);
    WeedPressure weed =
        traces.weeds().stream()
            .filter(w -> w.weed().id().value().equals(weedId))
            .findFirst()
            .orElseThrow();
    return new TankOffers(DemoFields.BOOK, traces)
        .foliarSitesAsked(weed, Timings.at(traces, date), stands, effective);
  }
}
