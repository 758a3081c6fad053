package org.swathbook.rules.timing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.swathbook.book.Field;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.PlantingBand;
import org.swathbook.catalog.Stated;
import org.swathbook.catalog.Use;
import org.swathbook.control.TankActive;
import org.swathbook.growth.PassTiming;
import org.swathbook.growth.SeasonTrace;
import org.swathbook.growth.TraceSet;
import org.swathbook.growth.UseFinder;
import org.swathbook.growth.WindowCheck;
import org.swathbook.program.Mix;
import org.swathbook.rules.PlantingBands;

/**
 * The days to planting that the labels of a tank ask for: each active under a use whose window is
 * open on the day, the one that asks for least where there are several. What a label does not state
 * closes nothing here; {@link PlantingIntervalRule} asks about it.
 */
public final class PlantingWait {

  /** A use with the days that it asks for; none where it asks for none or does not say. */
  private record Asking(Use use, Optional<PlantingBand> band) {}

  /** One active as one formulation, with the uses that leave its dose open. */
  private record Part(Ingredient ingredient, List<Asking> uses) {}

  /** An active and its wait. */
  public record Wait(Ingredient ingredient, PlantingBand band) {}

  private final List<Part> parts = new ArrayList<>();

  public PlantingWait(Mix mix, Field field) {
    for (TankActive a : TankActive.of(mix)) {
      double lbPerAcre = mix.lbPerAcre(a.ingredient());
      for (String formulation : a.formulations()) {
        parts.add(
            new Part(
                a.ingredient(),
                UseFinder.open(a.ingredient(), formulation, field, a.kgPerHa()).stream()
                    .map(u -> new Asking(u, band(u, field, lbPerAcre)))
                    .toList()));
      }
    }
  }

  private static Optional<PlantingBand> band(Use use, Field field, double lbPerAcre) {
    if (!(use.plantingInterval() instanceof Stated.Value<List<PlantingBand>> bands)) {
      return Optional.empty();
    }
    return PlantingBands.strictest(bands.value(), field, lbPerAcre)
        .or(() -> PlantingBands.beyond(bands.value(), field, lbPerAcre))
        .filter(b -> b.days() > 0);
  }

  /**
   * Whether a pass leaves what one use waits for at its highest rate in most of the years, as the
   * rule asks of a dose.
   *
   * @param lbPerAcre that rate
   */
  public static boolean isMetInMostYears(
      Use use, double lbPerAcre, TraceSet traces, PassTiming timing) {
    Optional<PlantingBand> band = band(use, traces.field(), lbPerAcre);
    if (band.isEmpty()) {
      return true;
    }
    int met = 0;
    for (int y = 0; y < traces.years().size(); y++) {
      SeasonTrace trace = traces.years().get(y);
      int day = timing.years().get(y).day();
      boolean isUp = day >= trace.emergenceDay();
      met += isUp || days(band.get(), trace, day) >= band.get().days() ? 1 : 0;
    }
    return 2 * met > traces.years().size();
  }

  /** Whether a day of a weather year, counted as the trace does, leaves every wait. */
  public boolean isMet(SeasonTrace trace, int day) {
    return on(trace, day).stream().allMatch(w -> days(w.band(), trace, day) >= w.band().days());
  }

  /**
   * The waits of the actives sprayed on this day of the trace: after planting those that nothing
   * meets any more, none when the crop is up.
   */
  public List<Wait> on(SeasonTrace trace, int day) {
    List<Wait> out = new ArrayList<>();
    if (day >= trace.emergenceDay()) {
      return out;
    }
    for (Part p : parts) {
      List<Asking> open =
          p.uses().stream().filter(u -> WindowCheck.check(u.use(), trace, day).inside()).toList();
      if (open.stream().allMatch(u -> u.band().isPresent())) {
        open.stream()
            .map(u -> u.band().orElseThrow())
            .min(Comparator.comparingInt(PlantingBand::days))
            .ifPresent(b -> out.add(new Wait(p.ingredient(), b)));
      }
    }
    return out;
  }

  /**
   * Days from a spraying to planting that count in one weather year; below zero where the rain that
   * starts the clock does not come in time.
   *
   * @param day of the trace on which it is sprayed
   */
  static int days(PlantingBand band, SeasonTrace trace, int day) {
    return trace.plantingDay()
        - (band.rainMm().isPresent() ? RainDay.of(trace, day, band.rainMm().getAsDouble()) : day);
  }
}
