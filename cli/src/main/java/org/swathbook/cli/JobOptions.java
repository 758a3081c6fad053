package org.swathbook.cli;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** A tank that is no file, typed into the call or a program's pass, and its day. */
final class JobOptions {
  @Mixin TypedTank tank = new TypedTank();

  @Option(
      names = "--date",
      paramLabel = "DATE",
      converter = TodayOption.IsoDate.class,
      description = "Day on which it is to be sprayed; today when left out.")
  @Nullable LocalDate date;

  LocalDate dateOr(LocalDate today) {
    return date != null ? date : today;
  }

  boolean hasDateOrVolume() {
    return date != null || tank.hasVolume();
  }
}
