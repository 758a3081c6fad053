package org.swathbook.program;

import java.util.Optional;
import java.util.OptionalDouble;
import org.swathbook.catalog.DropletClass;

/**
 * How the sprayer is set.
 *
 * @param droplets class of the spray (ANSI/ASABE S572)
 * @param nozzlesListed whether somebody held nozzles and pressure against the lists of the labels
 */
public record SprayerSetup(
    Optional<DropletClass> droplets,
    OptionalDouble speedMph,
    OptionalDouble pressurePsi,
    Optional<Boolean> nozzlesListed) {

  public static final SprayerSetup UNKNOWN =
      new SprayerSetup(
          Optional.empty(), OptionalDouble.empty(), OptionalDouble.empty(), Optional.empty());
}
