package org.swathbook.cli;

import java.time.LocalTime;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.swathbook.program.Applicator;
import org.swathbook.program.SprayJob;
import org.swathbook.program.SprayerSetup;
import picocli.CommandLine.Option;

/** The hour of a spraying, who does it and whether it is worked in, over what the mix says. */
final class SprayingOptions {
  @Option(
      names = "--time",
      paramLabel = "HH:MM",
      description = "Hour of the day by the clock at the field; over what the mix says.")
  @Nullable String time;

  @Option(
      names = "--applicator",
      paramLabel = "NAME",
      description = "Who applies it or supervises; over what the mix says.")
  @Nullable String applicator;

  @Option(
      names = "--cert",
      paramLabel = "NUMBER",
      description = "Number of the certificate of --applicator.")
  @Nullable String cert;

  @Option(
      names = "--training",
      paramLabel = "COURSE",
      description =
          "A training that --applicator has had, as labels name it: paraquat; once for each, or"
              + " none.")
  @Nullable List<String> training;

  @Option(
      names = "--incorporated",
      paramLabel = "yes|no",
      description = "Whether the spray is worked into the soil with steel.")
  @Nullable String incorporated;

  boolean isGiven() {
    return time != null
        || applicator != null
        || cert != null
        || training != null
        || incorporated != null;
  }

  /** What is wrong with them, in words; empty when nothing is. */
  Optional<String> wrong() {
    if (applicator == null && (cert != null || training != null)) {
      return Optional.of("--cert and --training need --applicator, whose they are");
    }
    if (applicator != null && applicator.isBlank()) {
      return Optional.of("--applicator is empty: write a name");
    }
    if (time != null && clock().isEmpty()) {
      return Optional.of("--time '" + time + "' is no hour: write it as 09:30");
    }
    if (incorporated != null && worked().isEmpty()) {
      return Optional.of("--incorporated must be yes or no");
    }
    return Optional.empty();
  }

  private Optional<LocalTime> clock() {
    try {
      return Optional.ofNullable(time).map(t -> LocalTime.parse(t.strip()));
    } catch (DateTimeParseException noHour) {
      return Optional.empty();
    }
  }

  private Optional<Boolean> worked() {
    return switch (incorporated == null ? "" : incorporated.strip().toLowerCase(Locale.ROOT)) {
      case "yes" -> Optional.of(true);
      case "no" -> Optional.of(false);
      default -> Optional.empty();
    };
  }

  SprayJob over(SprayJob job) {
    SprayJob at = clock().map(c -> job.on(job.date(), c)).orElse(job);
    SprayJob by = applicator == null ? at : at.by(who(applicator));
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
        cert == null ? "" : cert.strip(),
        Optional.ofNullable(training)
            .map(
                all ->
                    all.stream()
                        .map(t -> t.strip().toLowerCase(Locale.ROOT))
                        .filter(t -> !t.equals("none"))
                        .toList()));
  }
}
