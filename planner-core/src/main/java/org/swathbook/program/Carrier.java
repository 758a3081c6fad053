package org.swathbook.program;

import java.util.OptionalDouble;

/**
 * What carries the products. Its volume is the mix's own.
 *
 * @param liquid water or a liquid fertilizer
 * @param hardnessPpmCaCo3 hardness of the water as ppm calcium carbonate; empty when not tested
 * @param ph empty when not tested
 * @param ironPpm empty when not tested
 */
public record Carrier(
    Liquid liquid, OptionalDouble hardnessPpmCaCo3, OptionalDouble ph, OptionalDouble ironPpm) {

  /** What fills the tank. */
  public enum Liquid {
    WATER("water"),
    LIQUID_FERTILIZER("liquid-fertilizer");

    private final String spelling;

    Liquid(String spelling) {
      this.spelling = spelling;
    }

    public String spelling() {
      return spelling;
    }
  }

  /** Water that nobody tested. */
  public static final Carrier UNKNOWN =
      new Carrier(
          Liquid.WATER, OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());
}
