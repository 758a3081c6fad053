package org.swathbook.cli;

import java.time.LocalDate;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;

/** A tank that is no file, typed into the call or a program's pass, and its day. */
final class JobOptions {
  private final TypedTank tank;
  private final Value<LocalDate> date;

  JobOptions(CommandSpec command) {
    tank = new TypedTank(command);
    date =
        Value.option(
            command,
            "--date",
            "DATE",
            LocalDate.class,
            new TodayOption.IsoDate(),
            "Day on which it is to be sprayed; today when left out.");
  }

  @Nullable String field() {
    return tank.field();
  }

  OptionalDouble volume() {
    return tank.volume();
  }

  boolean volumeIsWrong() {
    return tank.volumeIsWrong();
  }

  LocalDate dateOr(LocalDate today) {
    return date.or(today);
  }

  boolean hasDateOrVolume() {
    return date.isGiven() || tank.hasVolume();
  }
}
