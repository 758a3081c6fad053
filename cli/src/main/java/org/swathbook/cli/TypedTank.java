package org.swathbook.cli;

import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;

/** Field and spray volume of a tank that is no file. */
final class TypedTank {
  private final Value<String> field;
  private final Value<Double> gallonsPerAcre;

  TypedTank(CommandSpec command) {
    field = Value.option(command, "--field", "FIELD", String.class, "Field of a tank typed here.");
    gallonsPerAcre =
        Value.option(
            command,
            "--volume",
            "GALLONS",
            Double.class,
            "Spray volume of a tank that names none itself, gallons per acre.");
  }

  @Nullable String field() {
    return field.value();
  }

  OptionalDouble volume() {
    return gallonsPerAcre.value() != null
        ? OptionalDouble.of(gallonsPerAcre.value())
        : OptionalDouble.empty();
  }

  boolean hasVolume() {
    return gallonsPerAcre.isGiven();
  }

  boolean volumeIsWrong() {
    return gallonsPerAcre.value() != null
        && !(gallonsPerAcre.value() > 0 && Double.isFinite(gallonsPerAcre.value()));
  }
}
