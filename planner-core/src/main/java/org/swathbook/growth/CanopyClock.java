package org.swathbook.growth;

import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import org.swathbook.book.Field;
import org.swathbook.catalog.Canopy;
import org.swathbook.catalog.Crop;
import org.swathbook.model.ModelCard;
import org.swathbook.model.ModelSection;

/**
 * When the rows close and how much of the ground is covered until then: {@code 1 - (1 - t/T)²}, t
 * days since emergence, T days from emergence to closure (default, from memory).
 *
 * <p>Rows of a dry, low-yielding stand that never close cover at most {@value #OPEN_STAND} of the
 * ground, on the way that their spacing would take (default, ours). An unknown row spacing counts
 * as the widest stated one: the rows that close last.
 */
final class CanopyClock {
  /** Greatest cover of a stand that never closes. */
  static final double OPEN_STAND = 0.7;

  private final int emergenceDay;
  private final int harvestDay;
  private final int canopyDay;
  private final int daysToClose;
  private final double greatest;

  CanopyClock(Crop crop, Field field, CropClock clock, int harvestDay) {
    int days = clock.stage().length;
    this.emergenceDay = clock.emergenceDay();
    this.harvestDay = harvestDay;
    int closing = closingDay(crop.canopy(), crop, field, clock);
    this.daysToClose = Math.max(1, closing - emergenceDay);
    boolean never =
        crop.canopy().neverBelowBuPerAcre().isPresent()
            && !field.irrigated()
            && field.yieldGoalBuPerAcre() < crop.canopy().neverBelowBuPerAcre().getAsDouble();
    this.canopyDay = never || closing > harvestDay ? days : closing;
    this.greatest = never ? OPEN_STAND : 1;
  }

  private static int closingDay(Canopy canopy, Crop crop, Field field, CropClock clock) {
    int days = clock.stage().length;
    if (canopy.stage().isPresent()) {
      int wanted = crop.findStage(canopy.stage().get()).orElseThrow();
      for (int d = 0; d < days; d++) {
        if (clock.stage()[d] >= wanted) {
          return d;
        }
      }
      return days;
    }
    if (canopy.daysByRowCm().isEmpty() || clock.emergenceDay() >= days) {
      return days;
    }
    double row = field.rowSpacingCm().orElse(canopy.daysByRowCm().lastKey());
    return Math.min(days, clock.emergenceDay() + daysForRow(canopy.daysByRowCm(), row));
  }

  /** Days by row spacing: straight lines between stated rows, level outside them. */
  static int daysForRow(SortedMap<Double, Integer> byRow, double rowCm) {
    double x0 = byRow.firstKey();
    double d0 = byRow.values().iterator().next();
    if (rowCm <= x0) {
      return (int) d0;
    }
    for (Map.Entry<Double, Integer> e : byRow.entrySet()) {
      if (rowCm <= e.getKey()) {
        double share = (rowCm - x0) / (e.getKey() - x0);
        return (int) Math.round(d0 + (e.getValue() - d0) * share);
      }
      x0 = e.getKey();
      d0 = e.getValue();
    }
    return (int) d0;
  }

  /** Day on which the rows close; the number of days of the year when they never do. */
  int canopyDay() {
    return canopyDay;
  }

  /** Whether weeds grow and come up under a closed canopy. */
  boolean isClosed(int day) {
    return day >= canopyDay && day <= harvestDay;
  }

  /** Share of the ground under the crop; 0 before it is up and after harvest. */
  double cover(int day) {
    if (day < emergenceDay || day > harvestDay) {
      return 0;
    }
    double left = 1 - Math.min(1, (double) (day - emergenceDay) / daysToClose);
    return Math.min(greatest, 1 - left * left);
  }

  /** What the reference prints. */
  static List<ModelCard> cards() {
    return List.of(
        ModelCard.of(
                ModelSection.CROP,
                CanopyClock.class,
                "canopy",
                "at a stage, or days after emergence by row spacing (straight lines between stated rows)",
                "default, from memory")
            .given(
                "soybean 30, 40, 55 days at 7.5, 15, 30 in; corn at V10; sorghum 50 days at 30 in, never on dry ground under 100 bu/acre, from the catalog"),
        ModelCard.of(
                ModelSection.CROP,
                CanopyClock.class,
                "ground cover",
                "1 − (1 − t/T)², t days of the T from emergence to canopy",
                "default")
            .with("at most, where rows never close,", OPEN_STAND, "")
            .given("share"));
  }
}
