package org.swathbook.calibration;

/**
 * Flow of a nozzle goes with the square root of its pressure: twice the flow takes four times the
 * pressure. The square-root law of an orifice, as extension services teach it (from memory). It
 * holds for one nozzle and one liquid, within the pressures that its maker names.
 */
public final class NozzlePressure {
  private NozzlePressure() {}

  /** Gallons per minute at a pressure, of a nozzle that has {@code flow} at {@code atPsi}. */
  public static double gallonsPerMinute(double flow, double atPsi, double psi) {
    return flow * Math.sqrt(psi / atPsi);
  }

  /**
   * Pressure for another flow of the same nozzle, or another spray volume at the same speed, psi.
   */
  public static double psi(double wanted, double flow, double atPsi) {
    double times = wanted / flow;
    return atPsi * times * times;
  }

  /**
   * Spray volume of water by which a nozzle is chosen for a liquid of another specific gravity: the
   * same nozzle lets less of a heavy liquid through, by the root of its gravity.
   */
  public static double waterVolume(double gallonsPerAcre, double specificGravity) {
    return gallonsPerAcre * Math.sqrt(specificGravity);
  }
}
