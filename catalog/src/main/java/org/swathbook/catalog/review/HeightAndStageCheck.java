package org.swathbook.catalog.review;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.swathbook.catalog.Catalog;
import org.swathbook.catalog.Crop;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Limit;
import org.swathbook.catalog.TimePoint;
import org.swathbook.catalog.Use;
import org.swathbook.catalog.file.EntryKind;
import org.swathbook.catalog.file.WrittenCatalog;
import org.swathbook.measure.Inches;

/**
 * A use whose window by stage and window by height never meet: the crop is taller than allowed when
 * the one begins, or has not reached the least height when it ends.
 */
final class HeightAndStageCheck implements Check {
  @Override
  public List<Remark> remarks(WrittenCatalog catalog, LocalDate today) {
    List<Remark> out = new ArrayList<>();
    for (Ingredient i : catalog.catalog().ingredients()) {
      for (Use u : i.uses()) {
        what(catalog.catalog(), u)
            .ifPresent(
                what ->
                    catalog
                        .find(EntryKind.INGREDIENT, i.id().value())
                        .ifPresent(
                            e ->
                                out.add(
                                    Remark.error(
                                        e.mark(),
                                        what,
                                        "correct timing or cropHeight, or the crop's heights"))));
      }
    }
    return out;
  }

  private static Optional<String> what(Catalog catalog, Use u) {
    Optional<Crop> crop = u.crop().map(catalog::crop);
    Optional<Limit> height = u.cropHeightCm().find();
    if (crop.isEmpty() || height.isEmpty()) {
      return Optional.empty();
    }
    String use = crop.get().name() + ", " + u.positions().iterator().next().spelling();
    OptionalDouble start = heightAt(crop.get(), u.timing().find().flatMap(w -> w.from()));
    OptionalDouble end =
        lower(
            heightAt(crop.get(), u.timing().find().flatMap(w -> w.to())),
            heightAt(crop.get(), u.timing().find().flatMap(w -> w.before())));
    OptionalDouble most = height.get().most();
    OptionalDouble least = height.get().least();
    if (start.isPresent() && most.isPresent() && start.getAsDouble() > most.getAsDouble()) {
      return Optional.of(
          use
              + ": the crop is "
              + inches(start)
              + " tall when the window begins, and "
              + inches(most)
              + " is the most");
    }
    if (end.isPresent() && least.isPresent() && end.getAsDouble() < least.getAsDouble()) {
      return Optional.of(
          use
              + ": the crop is "
              + inches(end)
              + " tall when the window ends, and "
              + inches(least)
              + " is the least");
    }
    return Optional.empty();
  }

  /** A window with both ends closes at the one that is reached first. */
  private static OptionalDouble lower(OptionalDouble one, OptionalDouble other) {
    return one.isPresent() && other.isPresent()
        ? OptionalDouble.of(Math.min(one.getAsDouble(), other.getAsDouble()))
        : one.isPresent() ? one : other;
  }

  private static OptionalDouble heightAt(Crop crop, Optional<TimePoint> point) {
    if (point.isEmpty() || !(point.get() instanceof TimePoint.AtStage at)) {
      return OptionalDouble.empty();
    }
    OptionalInt index = crop.findStage(at.stage());
    Double cm =
        index.isEmpty() ? null : crop.heightsCm().get(crop.stages().get(index.getAsInt()).name());
    return cm == null ? OptionalDouble.empty() : OptionalDouble.of(cm);
  }

  private static String inches(OptionalDouble cm) {
    return String.format(Locale.ROOT, "%.0f in", Inches.ofCm(cm.getAsDouble()));
  }
}
