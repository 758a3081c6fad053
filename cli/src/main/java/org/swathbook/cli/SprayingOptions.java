package org.swathbook.cli;

import java.time.LocalTime;
import java.time.format.DateTimeParseException;
import java.util.Locale;
import java.util.Optional;
import org.swathbook.program.Applicator;
import org.swathbook.program.SprayJob;
import org.swathbook.program.SprayerSetup;
import picocli.CommandLine.Model.CommandSpec;

/** The hour of a spraying, who does it and whether it is worked in, over what the mix says. */
final class SprayingOptions {
  private final Value<String> time;
  private final Value<String> applicator;
  private final Value<String> cert;
  private final Words training;
  private final Value<String> incorporated;

  SprayingOptions(CommandSpec command) {
    time =
        Value.option(
            command,
            "--time",
            "HH:MM",
            String.class,
            "Hour of the day by the clock at the field; over what the mix says.");
    applicator =
        Value.option(
            command,
            "--applicator",
            "NAME",
            String.class,
            "Who applies it or supervises; over what the mix says.");
    cert =
        Value.option(
            command,
            "--cert",
            "NUMBER",
            String.class,
            "Number of the certificate of --applicator.");
    training =
        Words.option(
            command,
            "--training",
            "COURSE",
            "A training that --applicator has had, as labels name it: paraquat; once for each, or"
                + " none.");
    incorporated =
        Value.option(
            command,
            "--incorporated",
            "yes|no",
            String.class,
            "Whether the spray is worked into the soil with steel.");
  }

  boolean isGiven() {
    return time.isGiven()
        || applicator.isGiven()
        || cert.isGiven()
        || training.isGiven()
        || incorporated.isGiven();
  }

  /** What is wrong with them, in words; empty when nothing is. */
  Optional<String> wrong() {
    if (applicator.value() == null && (cert.isGiven() || training.isGiven())) {
      return Optional.of("--cert and --training need --applicator, whose they are");
    }
    if (applicator.value() != null && applicator.value().isBlank()) {
      return Optional.of("--applicator is empty: write a name");
    }
    if (time.value() != null && clock().isEmpty()) {
      return Optional.of("--time '" + time.value() + "' is no hour: write it as 09:30");
    }
    if (incorporated.isGiven() && worked().isEmpty()) {
      return Optional.of("--incorporated must be yes or no");
    }
    return Optional.empty();
  }

  private Optional<LocalTime> clock() {
    try {
      return Optional.ofNullable(time.value()).map(t -> LocalTime.parse(t.strip()));
    } catch (DateTimeParseException noHour) {
      return Optional.empty();
    }
  }

  private Optional<Boolean> worked() {
    return switch (incorporated.or("").strip().toLowerCase(Locale.ROOT)) {
      case "yes" -> Optional.of(true);
      case "no" -> Optional.of(false);
      default -> Optional.empty();
    };
  }

  SprayJob over(SprayJob job) {
    SprayJob at = clock().map(c -> job.on(job.date(), c)).orElse(job);
    SprayJob by = applicator.value() == null ? at : at.by(who(applicator.value()));
    if (worked().isEmpty()) {
      return by;
    }
    SprayerSetup s = by.setup();
    return by.with(
        new SprayerSetup(s.droplets(), s.speedMph(), s.pressurePsi(), s.nozzlesListed(), worked()));
  }

  private Applicator who(String name) {
    return new Applicator(
        name.strip(),
        cert.or("").strip(),
        training.isGiven()
            ? Optional.of(
                training.all().stream()
                    .map(t -> t.strip().toLowerCase(Locale.ROOT))
                    .filter(t -> !t.equals("none"))
                    .toList())
            : Optional.empty());
  }
}
