package org.swathbook.cli.text;

import org.swathbook.calibration.Calibration;
import org.swathbook.calibration.GroundSpeed;
import org.swathbook.calibration.NozzleFlow;
import org.swathbook.cli.report.Cautions;
import org.swathbook.measure.Numbers;

/** The result of {@code calibrate}. */
public final class CalibrationText {
  private final Page page = new Page();
  private final Calibration c;

  private CalibrationText(Calibration c) {
    this.c = c;
  }

  public static String of(Calibration calibration) {
    CalibrationText text = new CalibrationText(calibration);
    text.page.line("Swathbook · Calibration");
    text.page.blank();
    text.ground();
    text.missing();
    text.wanted();
    text.measured();
    text.notes();
    text.page.rule('=');
    text.page.line("Cautions");
    Cautions.ALL.forEach(line -> text.page.wrapped(2, 4, line));
    return text.page.toString();
  }

  private void ground() {
    page.line("Course");
    Table table = new Table(2, "lrl");
    table.row("one nozzle covers", tenths(c.widthIn()), "in");
    table.row("course", tenths(c.course()), "ft");
    c.mph()
        .ifPresent(
            mph -> {
              table.row("speed", hundredths(mph), "mph");
              table.row(
                  "time on the course", tenths(GroundSpeed.seconds(c.course(), mph)), "seconds");
            });
    table.on(page);
    page.blank();
  }

  /** What is missing, where nothing was given of which a nozzle or a volume could be reckoned. */
  private void missing() {
    if (c.wanted().isEmpty() && c.measured() instanceof Calibration.Nothing) {
      page.wrapped(
          0,
          2,
          "No volume and no flow can be reckoned of that: give the spray volume wanted (--gpa), or"
              + " what one nozzle gave (--catch or --flow).");
      page.blank();
    }
  }

  private void wanted() {
    if (c.wanted().isEmpty()) {
      return;
    }
    page.line("Wanted, of every nozzle");
    Table table = new Table(2, "lrl");
    table.row("spray volume", tenths(c.wanted().getAsDouble()), "gal/acre");
    c.wantedFlow()
        .ifPresent(
            gpm -> {
              table.row("flow", Numbers.fixed(gpm, 3), "gal/min");
              table.row("", tenths(NozzleFlow.ouncesPerMinute(gpm)), "fl oz/min");
            });
    table.row("to be caught over the course", tenths(c.wantedCatch().orElseThrow()), "fl oz");
    c.waterVolume()
        .ifPresent(gpa -> table.row("to look up in a table for water", tenths(gpa), "gal/acre"));
    table.on(page);
    page.blank();
  }

  private void measured() {
    if (c.measured() instanceof Calibration.Nothing) {
      return;
    }
    page.line("Measured, of one nozzle");
    Table table = new Table(2, "lrl");
    c.measuredVolume().ifPresent(gpa -> table.row("spray volume", tenths(gpa), "gal/acre"));
    c.measuredFlow().ifPresent(gpm -> table.row("flow", Numbers.fixed(gpm, 3), "gal/min"));
    c.psi().ifPresent(psi -> table.row("pressure", tenths(psi), "psi"));
    table.on(page);
    if (c.measuredVolume().isEmpty()) {
      page.wrapped(2, 4, "Its spray volume is NOT KNOWN without a speed: --mph, or --time.");
    }
    c.off().ifPresent(this::off);
    page.blank();
  }

  private void off(double share) {
    String percent = tenths(100 * Math.abs(share));
    page.wrapped(
        2,
        4,
        percent
            + " % "
            + (share < 0 ? "less" : "more")
            + " than wanted"
            + (Math.abs(share) > Calibration.FAIR_SHARE
                ? ": SET IT ANEW (more than 5 % off; common practice, no source)."
                : "."));
    c.psiForWanted()
        .ifPresent(
            psi ->
                page.wrapped(
                    2,
                    4,
                    "At this speed the wanted volume takes "
                        + tenths(psi)
                        + " psi, where the nozzle is made for that."));
    c.mphForWanted()
        .ifPresent(
            mph ->
                page.wrapped(
                    2, 4, "At this pressure the wanted volume takes " + hundredths(mph) + " mph."));
  }

  private void notes() {
    for (String note : NOTES) {
      page.wrapped(0, 2, note);
    }
    page.blank();
  }

  private static String tenths(double value) {
    return Numbers.fixed(value, 1);
  }

  private static String hundredths(double value) {
    return Numbers.fixed(value, 2);
  }

  private static final String[] NOTES = {
    "Time the course in the field, loaded, at the throttle and gear of the spraying. Catch every"
        + " nozzle with clean water: one that gives 10 % more or less than their mean is cleaned or"
        + " replaced (common practice, no source).",
    "Over a 128th of an acre, the course when --course is left out, ounces caught from one nozzle"
        + " are gal/acre.",
    "Pressure goes with the square of the flow, so it is for small changes: a larger one takes"
        + " another nozzle or another speed. More pressure makes finer droplets, less makes coarser"
        + " ones and a narrower fan. Which class of droplets this nozzle makes at this pressure is"
        + " NOT KNOWN here: its maker's table says, and the label says which class it asks for.",
  };
}
