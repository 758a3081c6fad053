package org.swathbook.growth;

import java.util.ArrayList;
import java.util.List;
import org.swathbook.book.Field;
import org.swathbook.book.Tillage;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.Crop;

/**
 * The outdoors of a field in every weather year, with weeds as the model has them. Sights of weeds
 * change their cohorts and nothing else, so one outdoors serves for all that was or may be seen of
 * them.
 */
public final class FieldOutdoors {
  private final Field field;
  private final Crop crop;
  private final List<WeedPressure> weeds;
  private final int season;
  private final ScoutedField seen;
  private final List<Year> years;

  FieldOutdoors(
      Field field,
      Crop crop,
      List<WeedPressure> weeds,
      int season,
      ScoutedField seen,
      List<Year> years) {
    this.field = field;
    this.crop = crop;
    this.weeds = weeds;
    this.season = season;
    this.seen = seen;
    this.years = List.copyOf(years);
  }

  /** One year; cohorts and days until which control is needed in the order of the field's weeds. */
  record Year(
      int year,
      int plantingDay,
      int emergenceDay,
      int harvestDay,
      int canopyDay,
      SeasonTrace.Daily daily,
      List<CohortSet> modelled,
      List<Integer> neededUntil) {}

  /**
   * The trace with the weeds as they were seen.
   *
   * @throws IllegalArgumentException when crop or irrigation were seen otherwise than here
   */
  public TraceSet with(ScoutedField weedsSeen) {
    if (!weedsSeen.stages().equals(seen.stages())
        || !weedsSeen.cropHeightsCm().equals(seen.cropHeightsCm())
        || !weedsSeen.irrigationMm().equals(seen.irrigationMm())) {
      throw new IllegalArgumentException("crop and water were seen otherwise");
    }
    List<SeasonTrace> traces = new ArrayList<>(years.size());
    for (Year y : years) {
      traces.add(trace(y, weedsSeen));
    }
    return new TraceSet(field, crop, weeds, traces);
  }

  private SeasonTrace trace(Year y, ScoutedField weedsSeen) {
    ScoutedYear scouted = new ScoutedYear(weedsSeen, season, y.year());
    boolean tilled = field.tillage() == Tillage.TILLED;
    List<CohortSet> cohorts = new ArrayList<>();
    for (int w = 0; w < weeds.size(); w++) {
      cohorts.add(
          ScoutedCohorts.apply(
              y.modelled().get(w),
              scouted.sights(weeds.get(w).weed().id(), y.daily().stage().length),
              y.plantingDay(),
              tilled));
    }
    return new SeasonTrace(
        y.year(),
        season,
        crop,
        y.plantingDay(),
        y.emergenceDay(),
        y.harvestDay(),
        y.canopyDay(),
        y.daily(),
        cohorts,
        y.neededUntil().stream().mapToInt(Integer::intValue).toArray());
  }
}
