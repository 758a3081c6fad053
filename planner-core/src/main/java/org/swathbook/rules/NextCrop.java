package org.swathbook.rules;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.book.SoilSample;
import org.swathbook.catalog.RotationRow;
import org.swathbook.catalog.Trait;
import org.swathbook.ledger.LedgerEntry;
import org.swathbook.measure.Period;
import org.swathbook.measure.Quantity;
import org.swathbook.program.ActiveDose;
import org.swathbook.weather.StationWeather;
import org.swathbook.weather.WeatherDay;

/**
 * How long a spraying keeps a crop off the field, by the rows of its next-crop table.
 *
 * @param certain first day on which the rows that surely apply let the crop be planted
 * @param possible the same with every row that may apply for want of a fact; not before certain
 * @param interval of the row that gives {@code possible}
 */
public record NextCrop(LocalDate certain, LocalDate possible, Period interval) {
  /** Where nobody knows whether the rain has come that starts the clock. */
  private static final LocalDate NEVER_KNOWN = LocalDate.MAX;

  public boolean dependsOnUnknown() {
    return possible.isAfter(certain);
  }

  /**
   * What a spraying of the journal means for a crop that may follow, by the rain that was observed.
   *
   * @return empty when no row matches: not stated
   */
  public static Optional<NextCrop> after(
      Book book, Field field, LedgerEntry sprayed, List<RotationRow> rows) {
    return of(
        rows,
        field,
        Optional.empty(),
        sprayed.active(),
        sprayed.product().formulation(),
        sprayed.date(),
        (from, mm) -> rainObserved(book.station(field), from, mm));
  }

  /**
   * The answer of the strictest soil.
   *
   * @param traits of the crop to be planted; empty when unknown, then no row that needs one applies
   * @param afterRain the day on which so many mm have fallen after the spraying, empty when that is
   *     not known
   * @return empty when no row matches: not stated
   */
  public static Optional<NextCrop> of(
      List<RotationRow> rows,
      Field field,
      Optional<Set<Trait>> traits,
      ActiveDose active,
      String formulation,
      LocalDate sprayed,
      BiFunction<LocalDate, Double, Optional<LocalDate>> afterRain) {
    Optional<NextCrop> all = Optional.empty();
    for (SoilSample sample : SoilSample.of(field)) {
      List<RotationRow> possible = new ArrayList<>();
      boolean decided = false;
      for (RotationRow row : rows) {
        if (!decided && isFor(row, traits, active, formulation, sprayed)) {
          SoilSample.Fit fit = sample.fits(row.when());
          if (fit != SoilSample.Fit.NO) {
            possible.add(row);
            decided = fit == SoilSample.Fit.YES;
          }
        }
      }
      if (!decided) {
        return Optional.empty();
      }
      NextCrop one = ofRows(possible, sprayed, afterRain);
      all = Optional.of(all.map(a -> later(a, one)).orElse(one));
    }
    return all;
  }

  private static boolean isFor(
      RotationRow row,
      Optional<Set<Trait>> traits,
      ActiveDose active,
      String formulation,
      LocalDate sprayed) {
    return (row.formulations().isEmpty() || row.formulations().contains(formulation))
        && row.trait().map(t -> traits.map(has -> has.contains(t)).orElse(false)).orElse(true)
        && row.sprayedAfter().map(d -> MonthDay.from(sprayed).isAfter(d)).orElse(true)
        && row.rateAbove()
            .map(r -> Quantity.exceeds(active.lbPerAcre(), r.lbPerAcre()))
            .orElse(true);
  }

  private static NextCrop ofRows(
      List<RotationRow> rows,
      LocalDate sprayed,
      BiFunction<LocalDate, Double, Optional<LocalDate>> afterRain) {
    LocalDate certain = LocalDate.MAX;
    LocalDate possible = LocalDate.MIN;
    Period interval = Period.NONE;
    for (RotationRow row : rows) {
      Optional<LocalDate> start =
          row.rainMm().isPresent()
              ? afterRain.apply(sprayed, row.rainMm().getAsDouble())
              : Optional.of(sprayed);
      LocalDate earliest = row.interval().after(start.orElse(sprayed));
      LocalDate latest = start.isPresent() ? earliest : NEVER_KNOWN;
      certain = earliest.isBefore(certain) ? earliest : certain;
      if (latest.isAfter(possible)) {
        possible = latest;
        interval = row.interval();
      }
    }
    return new NextCrop(certain, possible, interval);
  }

  private static NextCrop later(NextCrop a, NextCrop b) {
    NextCrop longest = a.possible.isBefore(b.possible) ? b : a;
    return new NextCrop(
        a.certain.isBefore(b.certain) ? b.certain : a.certain, longest.possible, longest.interval);
  }

  /** The day by which so much rain has fallen after a spraying; empty where the record ends. */
  public static Optional<LocalDate> rainObserved(
      StationWeather station, LocalDate sprayed, double mm) {
    double sum = 0;
    LocalDate day = sprayed;
    while (Quantity.exceeds(mm, sum)) {
      day = day.plusDays(1);
      Optional<WeatherDay> weather = station.find(day);
      if (weather.isEmpty()) {
        return Optional.empty();
      }
      sum += weather.get().rainMm();
    }
    return Optional.of(day);
  }
}
