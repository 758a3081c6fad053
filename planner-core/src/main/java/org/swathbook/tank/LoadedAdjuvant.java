package org.swathbook.tank;

import java.util.List;
import java.util.Optional;
import org.swathbook.measure.Quantity;

/**
 * An adjuvant as it goes into one load.
 *
 * @param rates as written; of several the one that is more at this spray volume governs
 * @param amount empty when no rate says how much is poured
 */
public record LoadedAdjuvant(String kind, List<String> rates, Optional<Quantity> amount) {

  public LoadedAdjuvant {
    rates = List.copyOf(rates);
  }

  /** As it is measured out, never less than the rate asks for. */
  public Optional<PouredAmount> poured() {
    return amount.map(a -> PouredAmount.of(a, PouredAmount.Toward.MORE));
  }
}
