package org.swathbook.catalog;

import java.util.Arrays;
import java.util.Optional;

/** Kinds of adjuvants that labels ask for or refuse. */
public enum AdjuvantKind {
  AMMONIUM_SULFATE("ammonium-sulfate"),
  /** Takes hardness out of the water without ammonium, for labels that refuse it. */
  WATER_CONDITIONER("water-conditioner"),
  CROP_OIL("crop-oil"),
  METHYLATED_SEED_OIL("methylated-seed-oil"),
  NONIONIC_SURFACTANT("nonionic-surfactant"),
  LIQUID_NITROGEN("liquid-nitrogen"),
  VOLATILITY_REDUCER("volatility-reducer"),
  DRIFT_REDUCER("drift-reducer");

  private final String spelling;

  AdjuvantKind(String spelling) {
    this.spelling = spelling;
  }

  public String spelling() {
    return spelling;
  }

  public static Optional<AdjuvantKind> find(String text) {
    String wanted = Slug.of(text);
    return Arrays.stream(values()).filter(k -> k.spelling.equals(wanted)).findFirst();
  }

  @Override
  public String toString() {
    return spelling;
  }
}
