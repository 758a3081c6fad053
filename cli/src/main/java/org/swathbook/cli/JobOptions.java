package org.swathbook.cli;

import java.time.LocalDate;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Field, day and volume of a tank that is no file: typed into the call, or a program's pass. */
final class JobOptions {
  @Option(names = "--field", paramLabel = "FIELD", description = "Field of a tank typed here.")
  @Nullable String field;

  @Option(
      names = "--date",
      paramLabel = "DATE",
      converter = TodayOption.IsoDate.class,
      description = "Day on which it is to be sprayed; today when left out.")
  @Nullable LocalDate date;

  @Option(
      names = "--volume",
      paramLabel = "GALLONS",
      description = "Spray volume of a tank that names none itself, gallons per acre.")
  @Nullable Double gallonsPerAcre;

  LocalDate dateOr(LocalDate today) {
    return date != null ? date : today;
  }

  OptionalDouble volume() {
    return gallonsPerAcre != null ? OptionalDouble.of(gallonsPerAcre) : OptionalDouble.empty();
  }

  boolean hasDateOrVolume() {
    return date != null || gallonsPerAcre != null;
  }

  boolean volumeIsWrong() {
    return gallonsPerAcre != null && !(gallonsPerAcre > 0 && Double.isFinite(gallonsPerAcre));
  }
}
