package org.swathbook.tank;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.swathbook.catalog.AdjuvantKind;
import org.swathbook.program.Adjuvant;
import org.swathbook.program.Dose;
import org.swathbook.program.Mix;

/**
 * The order in which a tank is filled, by formulation: what has to dissolve or disperse first, what
 * makes an emulsion late, what wets last. Order after Oklahoma State University Extension PSS-2789,
 * SDSU Extension, Utah State University Extension and the North Dakota guide as quoted; where they
 * disagree the step says so. A label's own order goes before all of it.
 */
public final class MixingOrder {

  /**
   * A step.
   *
   * @param what product, adjuvant or work
   * @param why the kind of thing it is: {@code water-dispersible granule}
   * @param disagreement where sources put it elsewhere; empty when they agree
   */
  public record Step(String what, String why, String disagreement) {}

  private record Placed(int rank, Step step) {}

  private MixingOrder() {}

  /** From the first water to topping up. */
  public static List<Step> of(Mix mix) {
    List<Placed> placed = new ArrayList<>();
    placed.add(
        new Placed(
            0,
            new Step(
                "half the water, agitator running",
                "carrier",
                "sources say a third to three quarters")));
    for (Dose d : mix.doses()) {
      placed.add(ofFormulation(d.product().name(), d.product().formulation()));
    }
    for (Adjuvant a : mix.adjuvants()) {
      placed.add(ofAdjuvant(a));
    }
    if (placed.stream().anyMatch(p -> p.rank() == 3 || p.rank() == 4)) {
      placed.add(
          new Placed(
              5, new Step("wait until all that is dry is uniform, some minutes", "agitation", "")));
    }
    placed.add(new Placed(13, new Step("top up with water", "carrier", "")));
    placed.sort(Comparator.comparingInt(Placed::rank).thenComparing(p -> p.step().what()));
    return placed.stream().map(Placed::step).distinct().toList();
  }

  /** Whether it is poured dry. */
  public static boolean isDry(String formulation) {
    return switch (code(formulation)) {
      case "WG", "WDG", "DF", "WP", "WT", "WS", "SG", "SP", "ST" -> true;
      default -> false;
    };
  }

  /** Whether it makes an emulsion. */
  public static boolean isEmulsion(String formulation) {
    return switch (code(formulation)) {
      case "EC", "EW", "EO", "OD", "ME", "SE" -> true;
      default -> false;
    };
  }

  private static String code(String formulation) {
    return formulation.toUpperCase(Locale.ROOT);
  }

  private static Placed ofFormulation(String name, String formulation) {
    return switch (code(formulation)) {
      case "SG", "SP", "ST" ->
          new Placed(
              3,
              new Step(
                  name,
                  "soluble dry product",
                  "North Dakota has it early, Utah State after emulsions and solutions"));
      case "WG", "WDG", "DF", "WP", "WT", "WS" ->
          new Placed(4, new Step(name, "dry, dispersed in water; stir it to a slurry first", ""));
      case "SC", "F", "FL" -> new Placed(6, new Step(name, "suspension", ""));
      case "CS", "ZC", "ZE", "ZW" ->
          new Placed(
              7,
              new Step(
                  name, "capsules in suspension", "SDSU has capsules after concentrates of oil"));
      case "SE" -> new Placed(8, new Step(name, "suspended emulsion", ""));
      case "EC", "EW", "EO", "OD", "ME", "DC" ->
          new Placed(9, new Step(name, "makes an emulsion", ""));
      case "SL", "S" ->
          new Placed(
              10, new Step(name, "solution", "Oklahoma State has solutions before emulsions"));
      default ->
          new Placed(9, new Step(name, "formulation " + formulation + ": see its label", ""));
    };
  }

  private static Placed ofAdjuvant(Adjuvant a) {
    Optional<AdjuvantKind> kind = AdjuvantKind.find(a.kind());
    if (kind.isEmpty()) {
      return new Placed(11, new Step(a.kind(), "adjuvant: see its label", ""));
    }
    return switch (kind.get()) {
      case AMMONIUM_SULFATE -> new Placed(2, new Step(a.kind(), "water conditioner", ""));
      case VOLATILITY_REDUCER ->
          new Placed(2, new Step(a.kind(), "before the herbicide, unless its label says else", ""));
      case NONIONIC_SURFACTANT -> new Placed(11, new Step(a.kind(), "wets, foams", ""));
      case CROP_OIL, METHYLATED_SEED_OIL ->
          new Placed(11, new Step(a.kind(), "oil", "North Dakota has oils with emulsions"));
      case LIQUID_NITROGEN -> new Placed(12, new Step(a.kind(), "liquid fertilizer", ""));
      case DRIFT_REDUCER -> new Placed(12, new Step(a.kind(), "drift reducer", ""));
    };
  }
}
