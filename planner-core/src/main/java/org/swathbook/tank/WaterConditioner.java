package org.swathbook.tank;

import java.util.List;
import java.util.Optional;
import org.swathbook.catalog.AdjuvantKind;
import org.swathbook.measure.Numbers;
import org.swathbook.program.Adjuvant;
import org.swathbook.program.Carrier;

/** What keeps hard water from tying up a weak acid. */
public final class WaterConditioner {
  private WaterConditioner() {}

  /**
   * Ammonium sulfate for this water; where a partner refuses it, a conditioner without ammonium at
   * the rate of its own label; empty where that is refused too.
   */
  public static Optional<Adjuvant> of(Carrier water, List<Partner> partners) {
    if (!isRefused(AdjuvantKind.AMMONIUM_SULFATE, partners)) {
      double pounds =
          AmmoniumSulfate.practicalLbPer100Gal(
              water.hardnessPpmCaCo3().orElse(0), water.ironPpm().orElse(0));
      return Optional.of(
          new Adjuvant(
              AdjuvantKind.AMMONIUM_SULFATE.spelling(),
              Numbers.decimals(pounds, 1) + " lb/100 gal"));
    }
    return isRefused(AdjuvantKind.WATER_CONDITIONER, partners)
        ? Optional.empty()
        : Optional.of(
            new Adjuvant(AdjuvantKind.WATER_CONDITIONER.spelling(), Adjuvant.RATE_OF_THE_LABEL));
  }

  private static boolean isRefused(AdjuvantKind kind, List<Partner> partners) {
    return partners.stream()
        .anyMatch(
            p ->
                p.terms()
                    .tank()
                    .adjuvantRefused()
                    .find()
                    .filter(r -> r.contains(kind))
                    .isPresent());
  }
}
