package org.swathbook.cli;

import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.swathbook.calibration.Calibration;
import org.swathbook.calibration.CatchCourse;
import org.swathbook.calibration.GroundSpeed;
import org.swathbook.cli.json.CalibrationJson;
import org.swathbook.cli.terminal.ExitCode;
import org.swathbook.cli.text.CalibrationText;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;

/** What a sprayer gives, and how it is set to what is wanted. */
final class CalibrateCommand implements Callable<Integer> {
  final CommandSpec spec = CommandSpec.wrapWithoutInspection(this);
  private final Value<Double> spacing;
  private final Value<Double> wanted;
  private final Value<Double> mph;
  private final Value<Double> course;
  private final Value<Double> seconds;
  private final Value<Double> caught;
  private final Value<Double> flow;
  private final Value<Double> psi;
  private final Value<Double> gravity;
  private final OutputOption output;

  CalibrateCommand() {
    spec.name("calibrate")
        .usageMessage()
        .description(
            "Reckons a sprayer's volume, nozzle flow, speed and pressure from what was measured,"
                + " and what brings the volume that is wanted. It needs no book.",
            "For example: calibrate --spacing 20 --mph 10 --gpa 15",
            "For example: calibrate --spacing 20 --course 204 --time 14 --catch 17 --gpa 15 --psi"
                + " 40");
    spacing =
        Value.requiredOption(
            spec,
            "--spacing",
            "INCHES",
            Double.class,
            "Ground that one nozzle covers: spacing of the nozzles; width of the band where bands"
                + " are sprayed; spacing of the rows over their nozzles where several spray one"
                + " row.");
    wanted = Value.option(spec, "--gpa", "GALLONS", Double.class, "Spray volume wanted, gal/acre.");
    mph = Value.option(spec, "--mph", "MPH", Double.class, "Speed, miles per hour.");
    course =
        Value.option(
            spec,
            "--course",
            "FEET",
            Double.class,
            "Length of the course; that of a 128th of an acre when left out.");
    seconds =
        Value.option(
            spec,
            "--time",
            "SECONDS",
            Double.class,
            "What the course took in the field, in place of --mph.");
    caught =
        Value.option(
            spec,
            "--catch",
            "OUNCES",
            Double.class,
            "Fluid ounces that one nozzle gave in the time of the course.");
    flow =
        Value.option(
            spec,
            "--flow",
            "GPM",
            Double.class,
            "What one nozzle gave, gallons per minute, in place of --catch.");
    psi =
        Value.option(spec, "--psi", "PSI", Double.class, "Pressure at which the nozzle gave that.");
    gravity =
        Value.option(
            spec,
            "--gravity",
            "N",
            Double.class,
            "Specific gravity of the spray, 1.28 for 28 %% nitrogen; that of water is 1.");
    output = new OutputOption(spec);
  }

  @Override
  public Integer call() {
    double widthIn = checkCall();
    double feet = course.or(CatchCourse.feet(widthIn));
    OptionalDouble speed =
        seconds.value() != null
            ? OptionalDouble.of(GroundSpeed.mph(feet, seconds.value()))
            : of(mph.value());
    Calibration calibration =
        new Calibration(
            widthIn,
            speed,
            feet,
            of(wanted.value()),
            measured(),
            of(psi.value()),
            of(gravity.value()));
    output.print(output.json() ? CalibrationJson.of(calibration) : CalibrationText.of(calibration));
    return ExitCode.DONE;
  }

  private double checkCall() {
    check("--gpa", wanted.value(), "15");
    check("--mph", mph.value(), "10");
    check("--course", course.value(), "204");
    check("--time", seconds.value(), "14");
    check("--catch", caught.value(), "15");
    check("--flow", flow.value(), "0.5");
    check("--psi", psi.value(), "40");
    check("--gravity", gravity.value(), "1.28");
    check("--spacing", spacing.value(), "20");
    if (mph.isGiven() && seconds.isGiven()) {
      throw wrong("the speed is --mph or the --time of the course, not both");
    }
    if (caught.isGiven() && flow.isGiven()) {
      throw wrong("what the nozzle gave is --catch or --flow, not both");
    }
    if (psi.isGiven() && !caught.isGiven() && !flow.isGiven()) {
      throw wrong("--psi is the pressure of what was measured; give --catch or --flow too");
    }
    if (gravity.isGiven() && !wanted.isGiven()) {
      throw wrong("--gravity changes the volume by which a nozzle is chosen; give --gpa too");
    }
    return spacing.required();
  }

  private void check(String option, @Nullable Double value, String example) {
    TypedNumber.wrong(option, value, example)
        .ifPresent(
            what -> {
              throw wrong(what);
            });
  }

  private ParameterException wrong(String what) {
    return new ParameterException(spec.commandLine(), what);
  }

  private Calibration.Measured measured() {
    if (caught.value() != null) {
      return new Calibration.Caught(caught.value());
    }
    return flow.value() != null ? new Calibration.Flow(flow.value()) : new Calibration.Nothing();
  }

  private static OptionalDouble of(@Nullable Double value) {
    return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
  }
}
