package org.swathbook.program;

import org.swathbook.catalog.Method;

/** With what a tank is sprayed: the way, the liquid that carries it, nozzles and tank. */
public record Sprayer(Method method, Carrier carrier, SprayerSetup setup, SprayerTank tank) {

  /** Of which nothing is known but that it sprays broadcast. */
  public static final Sprayer UNKNOWN =
      new Sprayer(Method.BROADCAST, Carrier.UNKNOWN, SprayerSetup.UNKNOWN, SprayerTank.UNKNOWN);

  /** The same with other nozzles. */
  public Sprayer with(SprayerSetup other) {
    return new Sprayer(method, carrier, other, tank);
  }

  /** The same with another liquid. */
  public Sprayer with(Carrier other) {
    return new Sprayer(method, other, setup, tank);
  }

  /** The same with another tank. */
  public Sprayer with(SprayerTank other) {
    return new Sprayer(method, carrier, setup, other);
  }
}
