package org.swathbook.tank;

import java.util.Locale;
import java.util.Optional;
import org.swathbook.catalog.AdjuvantKind;

/**
 * Kinds of things that are poured into a tank, told apart by how they mix with water. They stand in
 * the order in which they go in where no guide parts two of them.
 */
enum TankPart {
  CONDITIONER("water conditioners"),
  VOLATILITY_REDUCER("volatility reducers"),
  SOLUBLE_DRY("soluble dry products"),
  POWDER("wettable powders"),
  GRANULE("dispersible granules"),
  SUSPENSION("suspensions"),
  CAPSULES("capsules"),
  SUSPENDED_EMULSION("suspended emulsions"),
  EMULSION("emulsions"),
  OTHER("others"),
  SOLUTION("solutions"),
  OIL("oils"),
  SURFACTANT("surfactants"),
  FERTILIZER("liquid fertilizers"),
  DRIFT_REDUCER("drift reducers");

  private final String plural;

  TankPart(String plural) {
    this.plural = plural;
  }

  /** In the words of a sentence. */
  String plural() {
    return plural;
  }

  boolean isDry() {
    return this == SOLUBLE_DRY || this == POWDER || this == GRANULE;
  }

  /** Of an international formulation code, or one that labels write for it. */
  static TankPart ofFormulation(String code) {
    return switch (code.toUpperCase(Locale.ROOT)) {
      case "SG", "SP", "ST" -> SOLUBLE_DRY;
      case "WP", "WS" -> POWDER;
      case "WG", "WDG", "DF", "WT" -> GRANULE;
      case "SC", "F", "FL" -> SUSPENSION;
      case "CS", "ZC", "ZE", "ZW" -> CAPSULES;
      case "SE" -> SUSPENDED_EMULSION;
      case "EC", "EW", "EO", "OD", "ME", "DC" -> EMULSION;
      case "SL", "S" -> SOLUTION;
      default -> OTHER;
    };
  }

  /** Of an adjuvant; one of an unknown kind goes with the others. */
  static TankPart ofAdjuvant(String kind) {
    Optional<AdjuvantKind> known = AdjuvantKind.find(kind);
    if (known.isEmpty()) {
      return OTHER;
    }
    return switch (known.get()) {
      case AMMONIUM_SULFATE, WATER_CONDITIONER -> CONDITIONER;
      case VOLATILITY_REDUCER -> VOLATILITY_REDUCER;
      case NONIONIC_SURFACTANT -> SURFACTANT;
      case CROP_OIL, METHYLATED_SEED_OIL -> OIL;
      case LIQUID_NITROGEN -> FERTILIZER;
      case DRIFT_REDUCER -> DRIFT_REDUCER;
    };
  }
}
