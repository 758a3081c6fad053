package org.swathbook.catalog.starter;

import java.time.LocalDate;
import java.time.Month;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiPredicate;
import org.swathbook.catalog.CropId;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.RotationRow;
import org.swathbook.catalog.Stated;
import org.swathbook.measure.Period;

/**
 * Intervals before the next crop. Two waiting times are compared by the days on which they end,
 * from every day of four years: a month is a calendar month and 30 days are not always one.
 */
final class RotationLimits {
  private static final LocalDate FIRST = LocalDate.of(2024, Month.JANUARY, 1);
  private static final LocalDate LAST = LocalDate.of(2027, Month.DECEMBER, 31);

  /** Corn, soybean, sorghum and cotton are not planted later. Common practice, no source. */
  private static final MonthDay LATEST_SUMMER_CROP = MonthDay.of(Month.JULY, 31);

  private static final MonthDay LATEST_WHEAT = MonthDay.of(Month.DECEMBER, 31);

  private RotationLimits() {}

  /** At least this long. */
  static Verdict interval(PublishedLimit limit, Ingredient ingredient) {
    Period wanted = Period.parse(limit.value());
    if (wanted.equals(Period.NONE)) {
      return Verdict.FOLLOWED;
    }
    Verdict rotation =
        everyCrop(
            limit,
            ingredient,
            (row, next) -> always((day) -> !ends(row, day).isBefore(wanted.after(day))));
    if (!limit.position().equals("burndown")) {
      return rotation;
    }
    // A spraying that is a use of the next crop itself is judged by the wait of that use.
    return Verdict.every(
        List.of(rotation, PlantingLimits.waitBefore(limit, ingredient, limit.of(), wanted)));
  }

  /** No planting in the calendar year of the spraying. */
  static Verdict notInTheYear(PublishedLimit limit, Ingredient ingredient) {
    return everyCrop(
        limit,
        ingredient,
        (row, next) -> always(day -> ends(row, day).isAfter(latest(next, day.getYear()))));
  }

  /** Sprayed after a day, no planting in the next calendar year either. */
  static Verdict notInTheNextYear(PublishedLimit limit, Ingredient ingredient) {
    MonthDay after = MonthDay.parse("--" + limit.value());
    List<Verdict> all = new ArrayList<>();
    for (String crop : limit.of()) {
      CropId next = CropId.of(crop);
      all.add(
          Verdict.of(
              ingredient.rotationTo(next),
              rows ->
                  always(
                      day ->
                          !MonthDay.from(day).isAfter(after)
                              || rowsFor(limit, rows, Optional.of(MonthDay.from(day))).stream()
                                  .allMatch(
                                      r ->
                                          ends(r, day).isAfter(latest(next, day.getYear() + 1))))));
    }
    return Verdict.every(all);
  }

  /** Only a test on the field itself tells, so no stated time may open it. */
  static Verdict bioassay(PublishedLimit limit, Ingredient ingredient) {
    return Verdict.every(
        limit.of().stream()
            .map(c -> ingredient.rotationTo(CropId.of(c)))
            .map(
                s ->
                    s.isUnknown()
                        ? Verdict.FOLLOWED
                        : Verdict.of(
                            s,
                            rows -> rows.stream().allMatch(r -> r.interval().equals(Period.NEVER))))
            .toList());
  }

  private static Verdict everyCrop(
      PublishedLimit limit, Ingredient ingredient, BiPredicate<RotationRow, CropId> strict) {
    List<Verdict> all = new ArrayList<>();
    for (String crop : limit.of()) {
      CropId next = CropId.of(crop);
      Stated<List<RotationRow>> stated = ingredient.rotationTo(next);
      all.add(
          Verdict.of(
              stated,
              rows -> {
                List<RotationRow> own = rowsFor(limit, rows, Optional.empty());
                return !own.isEmpty() && own.stream().allMatch(r -> strict.test(r, next));
              },
              rows -> next + " " + rows.stream().map(RotationLimits::show).toList()));
    }
    return Verdict.every(all);
  }

  /**
   * Rows that may be the answer for what the limit speaks of. Limits are of crops without a special
   * trait, so rows for such a trait are not looked at.
   *
   * @param day sprayed on this day of the year; empty for any
   */
  private static List<RotationRow> rowsFor(
      PublishedLimit limit, List<RotationRow> rows, Optional<MonthDay> day) {
    List<RotationRow> possible = new ArrayList<>();
    for (RotationRow row : rows) {
      boolean otherDay =
          day.isPresent()
              && row.sprayedAfter().isPresent()
              && !day.get().isAfter(row.sprayedAfter().get());
      boolean otherRate =
          row.rateAbove().isPresent()
              && limit.rate().isPresent()
              && !limit.rate().get().isAbove(row.rateAbove().get());
      boolean otherProduct =
          !row.formulations().isEmpty()
              && limit.formulation().isPresent()
              && !row.formulations().contains(limit.formulation().get());
      if (row.trait().isPresent() || otherDay || otherRate || otherProduct) {
        continue;
      }
      possible.add(row);
      boolean certain =
          row.when().isAlways()
              && (row.sprayedAfter().isEmpty() || day.isPresent())
              && (row.rateAbove().isEmpty() || limit.rate().isPresent())
              && (row.formulations().isEmpty() || limit.formulation().isPresent());
      if (certain) {
        break;
      }
    }
    return possible;
  }

  private static LocalDate ends(RotationRow row, LocalDate sprayed) {
    return row.interval().after(sprayed);
  }

  private static LocalDate latest(CropId crop, int year) {
    return (crop.value().equals("wheat") ? LATEST_WHEAT : LATEST_SUMMER_CROP).atYear(year);
  }

  private static boolean always(java.util.function.Predicate<LocalDate> holds) {
    return FIRST.datesUntil(LAST.plusDays(1)).allMatch(holds);
  }

  private static String show(RotationRow row) {
    return row.interval()
        + row.sprayedAfter().map(d -> " after " + d).orElse("")
        + row.rateAbove().map(r -> " above " + r).orElse("")
        + (row.formulations().isEmpty() ? "" : " " + row.formulations())
        + row.trait().map(t -> " " + t).orElse("");
  }
}
