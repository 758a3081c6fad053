package org.swathbook.catalog.starter;

import java.util.List;
import java.util.Optional;
import org.swathbook.catalog.Catalog;
import org.swathbook.catalog.Ingredient;

/** Judges the starter by published limits. */
final class Comparison {
  private final Catalog starter;

  Comparison(Catalog starter) {
    this.starter = starter;
  }

  /**
   * The verdict on one limit. Where it is of a premix or a tank, the strictest of its actives
   * counts: so the program judges a mix, and so a premix never relaxes an active by itself. An
   * active that the starter does not have cannot make it stricter and is passed over.
   */
  Verdict judge(PublishedLimit limit) {
    return Verdict.every(
        limit.ingredients().stream()
            .map(
                mix ->
                    Verdict.any(
                        mix.stream()
                            .map(starter::findIngredient)
                            .flatMap(Optional::stream)
                            .map(i -> judge(limit, i))
                            .toList()))
            .toList());
  }

  boolean isCrop(String name) {
    return starter.findCrop(name).isPresent();
  }

  boolean knowsAnIngredientOf(PublishedLimit limit) {
    return limit.ingredients().stream()
        .allMatch(mix -> mix.stream().anyMatch(i -> starter.findIngredient(i).isPresent()));
  }

  private Verdict judge(PublishedLimit limit, Ingredient i) {
    return switch (limit.kind()) {
      case "rotation" -> RotationLimits.interval(limit, i);
      case "not-in-the-year" -> RotationLimits.notInTheYear(limit, i);
      case "not-in-the-next-year" -> RotationLimits.notInTheNextYear(limit, i);
      case "bioassay" -> RotationLimits.bioassay(limit, i);
      case "wait" -> PlantingLimits.wait(limit, i);
      case "clock-rain" -> PlantingLimits.clockRain(limit, i);
      case "earliest" -> PlantingLimits.earliest(limit, i);
      case "latest" -> PlantingLimits.latest(limit, i);
      case "before-planting" -> PlantingLimits.beforePlanting(limit, i);
      case "height-to" -> CropLimits.heightTo(limit, i);
      case "height-from" -> CropLimits.heightFrom(limit, i);
      case "stage-to" -> CropLimits.stageTo(starter, limit, i);
      case "stage-before" -> CropLimits.stageBefore(starter, limit, i);
      case "stage-from" -> CropLimits.stageFrom(starter, limit, i);
      case "not-labelled" -> CropLimits.notLabelled(limit, i);
      case "trait" -> CropLimits.trait(limit, i);
      case "harvest" -> CropLimits.harvest(limit, i);
      case "rate-to" -> AmountLimits.rateTo(limit, i);
      case "cap" -> AmountLimits.cap(limit, i);
      case "applications" -> AmountLimits.applications(limit, i);
      case "repeat" -> AmountLimits.repeat(limit, i);
      case "cutoff" -> RegistrationLimits.cutoff(limit, i);
      case "rainfast" -> SprayLimits.rainfast(limit, i);
      case "reentry" -> SprayLimits.reentry(limit, i);
      case "carrier" -> SprayLimits.carrier(limit, i);
      case "restricted-use" -> SprayLimits.restrictedUse(limit, i);
      case "jar-test-refused" -> SprayLimits.jarTestRefused(limit, i);
      case "no-residual" -> SprayLimits.noResidual(limit, i);
      case "activating-rain" -> SprayLimits.activatingRain(limit, i);
      case "weed-height" -> SprayLimits.weedHeight(limit, i);
      case "adjuvant-needed" -> SprayLimits.adjuvantNeeded(limit, i);
      case "adjuvant-refused" -> SprayLimits.adjuvantRefused(limit, i);
      case "droplets" -> SprayLimits.droplets(limit, i);
      case "wind-to" -> SprayLimits.windTo(limit, i);
      case "wind-from" -> SprayLimits.windFrom(limit, i);
      case "temperature-to" -> SprayLimits.temperatureTo(limit, i);
      case "hours" -> SprayLimits.hours(limit, i);
      case "runoff-rain" -> SprayLimits.runoffRain(limit, i);
      case "buffer" -> SprayLimits.buffer(limit, i);
      case "setback" -> SprayLimits.setback(limit, i);
      case "incorporate" -> SprayLimits.incorporate(limit, i);
      default -> throw new IllegalArgumentException(limit + ": no such kind of limit");
    };
  }

  /** Limits that can be compared. */
  static List<PublishedLimit> comparable(List<PublishedLimit> all) {
    return all.stream().filter(l -> !l.kind().equals("reading")).toList();
  }
}
