package org.swathbook.cli;

import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Field and spray volume of a tank that is no file. */
final class TypedTank {
  @Option(names = "--field", paramLabel = "FIELD", description = "Field of a tank typed here.")
  @Nullable String field;

  @Option(
      names = "--volume",
      paramLabel = "GALLONS",
      description = "Spray volume of a tank that names none itself, gallons per acre.")
  @Nullable Double gallonsPerAcre;

  OptionalDouble volume() {
    return gallonsPerAcre != null ? OptionalDouble.of(gallonsPerAcre) : OptionalDouble.empty();
  }

  boolean hasVolume() {
    return gallonsPerAcre != null;
  }

  boolean volumeIsWrong() {
    return gallonsPerAcre != null && !(gallonsPerAcre > 0 && Double.isFinite(gallonsPerAcre));
  }
}
