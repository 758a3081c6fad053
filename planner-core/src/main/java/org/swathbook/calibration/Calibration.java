package org.swathbook.calibration;

import java.util.OptionalDouble;

/**
 * What somebody measured and wants, and what follows from it. All that is empty is not said.
 *
 * @param widthIn ground that one nozzle covers, inches; see {@link NozzleFlow}
 * @param mph speed
 * @param course length of the course, ft
 * @param wanted spray volume, gal/acre
 * @param measured what one nozzle gave
 * @param psi pressure at which it was measured
 * @param specificGravity of the spray against water
 */
public record Calibration(
    double widthIn,
    OptionalDouble mph,
    double course,
    OptionalDouble wanted,
    Measured measured,
    OptionalDouble psi,
    OptionalDouble specificGravity) {

  /** What one nozzle gave. */
  public sealed interface Measured {}

  /** Nothing was caught. */
  public record Nothing() implements Measured {}

  /** Fluid ounces over the course, or in the time that it takes. */
  public record Caught(double ounces) implements Measured {}

  /** Gallons per minute. */
  public record Flow(double gallonsPerMinute) implements Measured {}

  /**
   * A sprayer whose volume is off by more than this share is set anew (common practice, no source).
   */
  public static final double FAIR_SHARE = 0.05;

  /** Flow that the wanted volume takes, gallons per minute; empty without volume and speed. */
  public OptionalDouble wantedFlow() {
    return wanted.isPresent() && mph.isPresent()
        ? OptionalDouble.of(
            NozzleFlow.gallonsPerMinute(wanted.getAsDouble(), mph.getAsDouble(), widthIn))
        : OptionalDouble.empty();
  }

  /** Ounces that the wanted volume takes over the course. */
  public OptionalDouble wantedCatch() {
    return wanted.isPresent()
        ? OptionalDouble.of(CatchCourse.ounces(wanted.getAsDouble(), course, widthIn))
        : OptionalDouble.empty();
  }

  /** Spray volume that was measured; empty when not caught, or a flow without a speed. */
  public OptionalDouble measuredVolume() {
    if (measured instanceof Caught c) {
      return OptionalDouble.of(CatchCourse.gallonsPerAcre(c.ounces(), course, widthIn));
    }
    return measured instanceof Flow f && mph.isPresent()
        ? OptionalDouble.of(
            NozzleFlow.gallonsPerAcre(f.gallonsPerMinute(), mph.getAsDouble(), widthIn))
        : OptionalDouble.empty();
  }

  /** Flow that was measured, gallons per minute; empty when not caught, or without a speed. */
  public OptionalDouble measuredFlow() {
    if (measured instanceof Flow f) {
      return OptionalDouble.of(f.gallonsPerMinute());
    }
    OptionalDouble volume = measuredVolume();
    return volume.isPresent() && mph.isPresent()
        ? OptionalDouble.of(
            NozzleFlow.gallonsPerMinute(volume.getAsDouble(), mph.getAsDouble(), widthIn))
        : OptionalDouble.empty();
  }

  /** Share by which the measured volume is above the wanted one; below zero where it is less. */
  public OptionalDouble off() {
    OptionalDouble volume = measuredVolume();
    return volume.isPresent() && wanted.isPresent()
        ? OptionalDouble.of(volume.getAsDouble() / wanted.getAsDouble() - 1)
        : OptionalDouble.empty();
  }

  /** Pressure that brings the wanted volume at the same speed, psi. */
  public OptionalDouble psiForWanted() {
    OptionalDouble volume = measuredVolume();
    return volume.isPresent() && wanted.isPresent() && psi.isPresent()
        ? OptionalDouble.of(
            NozzlePressure.psi(wanted.getAsDouble(), volume.getAsDouble(), psi.getAsDouble()))
        : OptionalDouble.empty();
  }

  /** Speed that brings the wanted volume at the same pressure, miles per hour. */
  public OptionalDouble mphForWanted() {
    OptionalDouble flow = measuredFlow();
    return flow.isPresent() && wanted.isPresent()
        ? OptionalDouble.of(NozzleFlow.mph(flow.getAsDouble(), wanted.getAsDouble(), widthIn))
        : OptionalDouble.empty();
  }

  /** Spray volume of water to look up in a table of nozzles for a heavier or lighter spray. */
  public OptionalDouble waterVolume() {
    return wanted.isPresent() && specificGravity.isPresent()
        ? OptionalDouble.of(
            NozzlePressure.waterVolume(wanted.getAsDouble(), specificGravity.getAsDouble()))
        : OptionalDouble.empty();
  }

  /** Seconds that the course takes at this speed. */
  public OptionalDouble courseSeconds() {
    return mph.isPresent()
        ? OptionalDouble.of(GroundSpeed.seconds(course, mph.getAsDouble()))
        : OptionalDouble.empty();
  }
}
