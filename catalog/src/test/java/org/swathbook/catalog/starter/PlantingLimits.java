package org.swathbook.catalog.starter;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import org.swathbook.catalog.CropId;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.PlantingBand;
import org.swathbook.catalog.Position;
import org.swathbook.catalog.TimePoint;
import org.swathbook.catalog.Use;
import org.swathbook.catalog.Window;
import org.swathbook.measure.Period;
import org.swathbook.measure.Quantity;
import org.swathbook.measure.Unit;

/** Limits that count days from planting. */
final class PlantingLimits {

  private PlantingLimits() {}

  /** Days from the spraying to planting. */
  static Verdict wait(PublishedLimit limit, Ingredient ingredient) {
    return waitBefore(limit, ingredient, limit.crops(), Period.parse(limit.value()));
  }

  static Verdict waitBefore(
      PublishedLimit limit, Ingredient ingredient, List<String> crops, Period wanted) {
    if (wanted.equals(Period.NONE)) {
      return Verdict.FOLLOWED;
    }
    if (wanted.months() != 0) {
      throw new IllegalArgumentException(limit + ": a wait before planting is in days");
    }
    return everyBand(limit, ingredient, crops, b -> b.days() >= wanted.days());
  }

  /** Rain after which alone those days count. */
  static Verdict clockRain(PublishedLimit limit, Ingredient ingredient) {
    double mm = Quantity.parse(limit.value()).in(Unit.MILLIMETRE);
    return everyBand(limit, ingredient, limit.crops(), b -> reaches(b.rainMm(), mm));
  }

  private static boolean reaches(OptionalDouble rain, double wanted) {
    return rain.isPresent() && !Quantity.exceeds(wanted, rain.getAsDouble());
  }

  private static Verdict everyBand(
      PublishedLimit limit,
      Ingredient ingredient,
      List<String> crops,
      Predicate<PlantingBand> strict) {
    List<Verdict> all = new ArrayList<>();
    for (Use use : ingredient.uses()) {
      boolean isBefore =
          use.positions().contains(Position.BURNDOWN)
              || use.positions().contains(Position.PREPLANT);
      boolean isOne = crops.stream().anyMatch(c -> use.isFor(CropId.of(c)));
      boolean isProduct =
          use.formulations().isEmpty()
              || limit.formulation().map(use.formulations()::contains).orElse(true);
      if (use.refused()
          || !isBefore
          || !isOne
          || !isProduct
          || !MatchingUses.isRateAllowed(use, limit)) {
        continue;
      }
      all.add(
          Verdict.of(
              use.plantingInterval(),
              bands -> {
                List<PlantingBand> own = bandsFor(limit, bands);
                return !own.isEmpty() && own.stream().allMatch(strict);
              }));
    }
    return Verdict.every(all);
  }

  private static List<PlantingBand> bandsFor(PublishedLimit limit, List<PlantingBand> bands) {
    List<PlantingBand> possible = new ArrayList<>();
    for (PlantingBand band : bands) {
      if (band.upTo().isPresent()
          && limit.rate().isPresent()
          && !limit.rate().get().reaches(band.upTo().get())) {
        continue;
      }
      possible.add(band);
      if (band.when().isAlways() && (band.upTo().isEmpty() || limit.rate().isPresent())) {
        break;
      }
    }
    return possible;
  }

  /** The window does not open earlier before planting. */
  static Verdict earliest(PublishedLimit limit, Ingredient ingredient) {
    int days = Period.parse(limit.value()).days();
    return everyWindow(
        limit,
        ingredient,
        w ->
            w.from().isPresent()
                && (w.from().get() instanceof TimePoint.AtStage
                    || w.from().get() instanceof TimePoint.FromPlanting p && p.days() >= -days));
  }

  /** The window is closed so many days after planting. */
  static Verdict latest(PublishedLimit limit, Ingredient ingredient) {
    int days = Period.parse(limit.value()).days();
    return everyWindow(limit, ingredient, w -> endsBy(w, days));
  }

  /** The window is closed once the crop is planted. */
  static Verdict beforePlanting(PublishedLimit limit, Ingredient ingredient) {
    return everyWindow(limit, ingredient, w -> endsBy(w, 0));
  }

  /** Whether the window ends by this day after planting, the day itself inside. */
  static boolean endsBy(Window window, int days) {
    return day(window.to()).filter(d -> d <= days).isPresent()
        || day(window.before()).filter(d -> d <= days + 1).isPresent();
  }

  private static Optional<Integer> day(Optional<TimePoint> point) {
    return point
        .filter(TimePoint.FromPlanting.class::isInstance)
        .map(p -> ((TimePoint.FromPlanting) p).days());
  }

  private static Verdict everyWindow(
      PublishedLimit limit, Ingredient ingredient, Predicate<Window> strict) {
    return MatchingUses.every(limit, ingredient, u -> Verdict.of(u.timing(), strict));
  }
}
