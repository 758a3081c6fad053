package org.swathbook.program;

import java.util.Optional;
import java.util.OptionalDouble;
import org.swathbook.catalog.DropletClass;

/**
 * How the sprayer is set.
 *
 * @param droplets class of the spray (ANSI/ASABE S572)
 * @param nozzlesListed whether somebody held nozzles and pressure against the lists of the labels
 * @param incorporated whether the spray is worked into the soil with steel afterwards
 */
public record SprayerSetup(
    Optional<DropletClass> droplets,
    OptionalDouble speedMph,
    OptionalDouble pressurePsi,
    Optional<Boolean> nozzlesListed,
    Optional<Boolean> incorporated) {

  /** Of which nobody says whether the spray is worked in. */
  public SprayerSetup(
      Optional<DropletClass> droplets,
      OptionalDouble speedMph,
      OptionalDouble pressurePsi,
      Optional<Boolean> nozzlesListed) {
    this(droplets, speedMph, pressurePsi, nozzlesListed, Optional.empty());
  }

  /** The same with other droplets. */
  public SprayerSetup with(Optional<DropletClass> other) {
    return new SprayerSetup(other, speedMph, pressurePsi, nozzlesListed, incorporated);
  }

  public static final SprayerSetup UNKNOWN =
      new SprayerSetup(
          Optional.empty(), OptionalDouble.empty(), OptionalDouble.empty(), Optional.empty());
}
