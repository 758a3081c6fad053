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
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** What a sprayer gives, and how it is set to what is wanted. */
@Command(
    addMethodSubcommands = false,
    name = "calibrate",
    description = {
      "Reckons a sprayer's volume, nozzle flow, speed and pressure from what was measured, and what"
          + " brings the volume that is wanted. It needs no book.",
      "For example: calibrate --spacing 20 --mph 10 --gpa 15",
      "For example: calibrate --spacing 20 --course 204 --time 14 --catch 17 --gpa 15 --psi 40"
    })
final class CalibrateCommand implements Callable<Integer> {
  @Spec CommandSpec spec;

  @Option(
      names = "--spacing",
      paramLabel = "INCHES",
      required = true,
      description =
          "Ground that one nozzle covers: spacing of the nozzles; width of the band where bands are"
              + " sprayed; spacing of the rows over their nozzles where several spray one row.")
  @Nullable Double spacing;

  @Option(names = "--gpa", paramLabel = "GALLONS", description = "Spray volume wanted, gal/acre.")
  @Nullable Double wanted;

  @Option(names = "--mph", paramLabel = "MPH", description = "Speed, miles per hour.")
  @Nullable Double mph;

  @Option(
      names = "--course",
      paramLabel = "FEET",
      description = "Length of the course; that of a 128th of an acre when left out.")
  @Nullable Double course;

  @Option(
      names = "--time",
      paramLabel = "SECONDS",
      description = "What the course took in the field, in place of --mph.")
  @Nullable Double seconds;

  @Option(
      names = "--catch",
      paramLabel = "OUNCES",
      description = "Fluid ounces that one nozzle gave in the time of the course.")
  @Nullable Double caught;

  @Option(
      names = "--flow",
      paramLabel = "GPM",
      description = "What one nozzle gave, gallons per minute, in place of --catch.")
  @Nullable Double flow;

  @Option(
      names = "--psi",
      paramLabel = "PSI",
      description = "Pressure at which the nozzle gave that.")
  @Nullable Double psi;

  @Option(
      names = "--gravity",
      paramLabel = "N",
      description = "Specific gravity of the spray, 1.28 for 28 %% nitrogen; that of water is 1.")
  @Nullable Double gravity;

  @Mixin OutputOption output = new OutputOption();

  @Override
  public Integer call() {
    double widthIn = checkCall();
    double feet = course != null ? course : CatchCourse.feet(widthIn);
    OptionalDouble speed =
        seconds != null ? OptionalDouble.of(GroundSpeed.mph(feet, seconds)) : of(mph);
    Calibration calibration =
        new Calibration(widthIn, speed, feet, of(wanted), measured(), of(psi), of(gravity));
    output.print(output.json ? CalibrationJson.of(calibration) : CalibrationText.of(calibration));
    return ExitCode.DONE;
  }

  private double checkCall() {
    check("--gpa", wanted, "15");
    check("--mph", mph, "10");
    check("--course", course, "204");
    check("--time", seconds, "14");
    check("--catch", caught, "15");
    check("--flow", flow, "0.5");
    check("--psi", psi, "40");
    check("--gravity", gravity, "1.28");
    check("--spacing", spacing, "20");
    if (mph != null && seconds != null) {
      throw wrong("the speed is --mph or the --time of the course, not both");
    }
    if (caught != null && flow != null) {
      throw wrong("what the nozzle gave is --catch or --flow, not both");
    }
    if (psi != null && caught == null && flow == null) {
      throw wrong("--psi is the pressure of what was measured; give --catch or --flow too");
    }
    if (gravity != null && wanted == null) {
      throw wrong("--gravity changes the volume by which a nozzle is chosen; give --gpa too");
    }
    // Never null: the option is required.
    return spacing == null ? Double.NaN : spacing;
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
    if (caught != null) {
      return new Calibration.Caught(caught);
    }
    return flow != null ? new Calibration.Flow(flow) : new Calibration.Nothing();
  }

  private static OptionalDouble of(@Nullable Double value) {
    return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
  }
}
