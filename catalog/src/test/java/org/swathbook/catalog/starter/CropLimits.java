package org.swathbook.catalog.starter;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import org.swathbook.catalog.Catalog;
import org.swathbook.catalog.Commodity;
import org.swathbook.catalog.Crop;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.TimePoint;
import org.swathbook.catalog.Trait;
import org.swathbook.catalog.Window;
import org.swathbook.measure.Period;
import org.swathbook.measure.Quantity;
import org.swathbook.measure.Unit;

/** Limits of the crop's height, stage, trait and harvest. */
final class CropLimits {

  private CropLimits() {}

  static Verdict heightTo(PublishedLimit limit, Ingredient ingredient) {
    double cm = Quantity.parse(limit.value()).in(Unit.CENTIMETRE);
    return MatchingUses.every(
        limit,
        ingredient,
        u ->
            Verdict.of(
                u.cropHeightCm(),
                h -> h.most().isPresent() && !Quantity.exceeds(h.most().getAsDouble(), cm)));
  }

  static Verdict heightFrom(PublishedLimit limit, Ingredient ingredient) {
    double cm = Quantity.parse(limit.value()).in(Unit.CENTIMETRE);
    return MatchingUses.every(
        limit,
        ingredient,
        u ->
            Verdict.of(
                u.cropHeightCm(),
                h -> h.least().isPresent() && !Quantity.exceeds(cm, h.least().getAsDouble())));
  }

  /** Through a stage. */
  static Verdict stageTo(Catalog starter, PublishedLimit limit, Ingredient ingredient) {
    Crop crop = crop(starter, limit);
    int last = index(crop, limit.value()).orElseThrow();
    return MatchingUses.every(
        limit, ingredient, u -> Verdict.of(u.timing(), w -> ends(crop, w, last, last)));
  }

  /** Before a stage. */
  static Verdict stageBefore(Catalog starter, PublishedLimit limit, Ingredient ingredient) {
    Crop crop = crop(starter, limit);
    int first = index(crop, limit.value()).orElseThrow();
    return MatchingUses.every(
        limit, ingredient, u -> Verdict.of(u.timing(), w -> ends(crop, w, first - 1, first)));
  }

  static Verdict stageFrom(Catalog starter, PublishedLimit limit, Ingredient ingredient) {
    Crop crop = crop(starter, limit);
    int first = index(crop, limit.value()).orElseThrow();
    return MatchingUses.every(
        limit,
        ingredient,
        u ->
            Verdict.of(
                u.timing(),
                w -> {
                  OptionalInt from = index(crop, w.from());
                  return from.isPresent() && from.getAsInt() >= first;
                }));
  }

  private static Crop crop(Catalog starter, PublishedLimit limit) {
    return starter.findCrop(limit.crops().get(0)).orElseThrow();
  }

  /**
   * Whether the window ends with a stage at the latest.
   *
   * @param to last stage whose first day may be inside
   * @param before first stage whose first day must be outside
   */
  private static boolean ends(Crop crop, Window window, int to, int before) {
    OptionalInt t = index(crop, window.to());
    OptionalInt b = index(crop, window.before());
    return t.isPresent() && t.getAsInt() <= to
        || b.isPresent() && b.getAsInt() <= before
        || PlantingLimits.endsBy(window, 0);
  }

  private static OptionalInt index(Crop crop, Optional<TimePoint> point) {
    return point.isPresent() && point.get() instanceof TimePoint.AtStage s
        ? crop.findStage(s.stage())
        : OptionalInt.empty();
  }

  private static OptionalInt index(Crop crop, String stage) {
    return crop.findStage(stage);
  }

  /** No use of this crop and position, by silence or outright. */
  static Verdict notLabelled(PublishedLimit limit, Ingredient ingredient) {
    return Verdict.of(MatchingUses.of(limit, ingredient).isEmpty(), "a use");
  }

  static Verdict trait(PublishedLimit limit, Ingredient ingredient) {
    Trait wanted = Trait.of(limit.value());
    return MatchingUses.every(
        limit, ingredient, u -> Verdict.of(u.traits(), t -> t.contains(wanted)));
  }

  /** Days before each of these harvests, or none of them at all. */
  static Verdict harvest(PublishedLimit limit, Ingredient ingredient) {
    boolean refused = limit.value().equals("refused");
    int days = refused ? 0 : Period.parse(limit.value()).days();
    return Verdict.every(
        limit.of().stream()
            .map(c -> Commodity.valueOf(c.toUpperCase(Locale.ROOT)))
            .map(
                c ->
                    MatchingUses.every(
                        limit,
                        ingredient,
                        u ->
                            Verdict.of(
                                u.harvestLimit(c),
                                h -> h.refused() || !refused && h.days() >= days)))
            .toList());
  }
}
