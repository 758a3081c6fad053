package org.swathbook.catalog;

import java.util.Optional;
import java.util.Set;

/**
 * When a row of a rate or interval table applies: every part that is present must hold. Unknown
 * facts of a field make the answer unknown.
 */
public record SoilCondition(
    Set<SoilTexture> textures,
    Optional<Limit> organicMatterPct,
    Optional<Limit> soilPh,
    Optional<Boolean> erodible,
    Optional<Limit> residuePct) {

  public static final SoilCondition ALWAYS =
      new SoilCondition(
          Set.of(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

  public SoilCondition {
    textures = Ordered.set(textures);
  }

  /** Whether any part is given. */
  public boolean isAlways() {
    return equals(ALWAYS);
  }
}
