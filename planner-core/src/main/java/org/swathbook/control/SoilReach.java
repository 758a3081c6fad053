package org.swathbook.control;

import java.util.List;
import java.util.OptionalDouble;
import org.swathbook.book.Field;
import org.swathbook.catalog.Catalog;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Residual;
import org.swathbook.catalog.Weed;
import org.swathbook.model.ModelCard;
import org.swathbook.model.ModelSection;

/** How far an active reaches through the soil of a field against a weed. */
public final class SoilReach {
  /** A soil site is judged by its mean over so many days from activation (default). */
  public static final int FIRST_DAYS = 21;

  private SoilReach() {}

  /**
   * Control, 0 to 1, of plants that resist nothing by a dose on bare ground: the mean over the
   * first days, with rain on the next day and in weather in which a stated length is as long as
   * stated. 0 without soil activity; empty when not known.
   *
   * @param kgPerHa of the active
   */
  public static OptionalDouble ofDose(
      Catalog catalog, Field field, Ingredient active, double kgPerHa, Weed weed) {
    OptionalDouble fresh = Responses.fresh(catalog, active, weed);
    if (fresh.isEmpty() || active.residual().isNone()) {
      return fresh;
    }
    Residual residual = active.residual().find().orElseThrow();
    double length = FadeCurve.lengthDays(residual, kgPerHa / LabelRates.soilShare(active, field));
    double sum = 0;
    for (int day = 1; day <= FIRST_DAYS; day++) {
      sum += FadeCurve.relative(day, length);
    }
    return OptionalDouble.of(fresh.getAsDouble() * sum / FIRST_DAYS);
  }

  /** What the reference prints. */
  static List<ModelCard> cards() {
    return List.of(
        ModelCard.of(
                ModelSection.SOIL,
                SoilReach.class,
                "what a soil site does by itself",
                "mean over the first days from activation",
                "default")
            .with("days", FIRST_DAYS, ""));
  }
}
