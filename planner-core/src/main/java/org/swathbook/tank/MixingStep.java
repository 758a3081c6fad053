package org.swathbook.tank;

import java.util.List;
import java.util.Optional;

/**
 * One step in which a tank is filled.
 *
 * @param what what is poured, or what is done
 * @param formulation international formulation code of a product; empty for what is no product
 * @param form the kind of thing that it is poured as, in the plural; empty for the carrier and for
 *     waiting
 * @param guides published guides that give its kind a place; empty where none does
 */
public record MixingStep(
    Kind kind,
    String what,
    Optional<String> formulation,
    Optional<String> form,
    List<String> guides) {

  /** What is done. */
  public enum Kind {
    CARRIER_FIRST,
    PRODUCT,
    ADJUVANT,
    WAIT,
    TOP_UP
  }

  public MixingStep {
    guides = List.copyOf(guides);
  }

  static MixingStep of(Kind kind, String what) {
    return new MixingStep(kind, what, Optional.empty(), Optional.empty(), List.of());
  }
}
