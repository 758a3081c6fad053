package org.swathbook.book;

import java.time.ZoneId;
import java.util.Map;
import java.util.Optional;

/**
 * The time zone in which a field's clock runs, by its state; where a line parts the state, by its
 * longitude, and not known within a degree of that line, since the lines follow counties (from
 * memory).
 */
public final class FieldZone {
  private static final String EASTERN = "America/New_York";
  private static final String CENTRAL = "America/Chicago";
  private static final String MOUNTAIN = "America/Denver";
  private static final String PACIFIC = "America/Los_Angeles";
  private static final double UNSURE_DEGREES = 1;

  private static final Map<String, String> WHOLE =
      Map.ofEntries(
          Map.entry("AL", CENTRAL),
          Map.entry("AK", "America/Anchorage"),
          Map.entry("AZ", "America/Phoenix"),
          Map.entry("AR", CENTRAL),
          Map.entry("CA", PACIFIC),
          Map.entry("CO", MOUNTAIN),
          Map.entry("CT", EASTERN),
          Map.entry("DE", EASTERN),
          Map.entry("DC", EASTERN),
          Map.entry("GA", EASTERN),
          Map.entry("HI", "Pacific/Honolulu"),
          Map.entry("IL", CENTRAL),
          Map.entry("IA", CENTRAL),
          Map.entry("LA", CENTRAL),
          Map.entry("ME", EASTERN),
          Map.entry("MD", EASTERN),
          Map.entry("MA", EASTERN),
          Map.entry("MN", CENTRAL),
          Map.entry("MS", CENTRAL),
          Map.entry("MO", CENTRAL),
          Map.entry("MT", MOUNTAIN),
          Map.entry("NH", EASTERN),
          Map.entry("NJ", EASTERN),
          Map.entry("NM", MOUNTAIN),
          Map.entry("NV", PACIFIC),
          Map.entry("NY", EASTERN),
          Map.entry("NC", EASTERN),
          Map.entry("OH", EASTERN),
          Map.entry("OK", CENTRAL),
          Map.entry("PA", EASTERN),
          Map.entry("PR", "America/Puerto_Rico"),
          Map.entry("RI", EASTERN),
          Map.entry("SC", EASTERN),
          Map.entry("UT", MOUNTAIN),
          Map.entry("VT", EASTERN),
          Map.entry("VA", EASTERN),
          Map.entry("WA", PACIFIC),
          Map.entry("WV", EASTERN),
          Map.entry("WI", CENTRAL),
          Map.entry("WY", MOUNTAIN));

  /** A state that a line of longitude parts, roughly. */
  private record Parted(double longitude, String west, String east) {}

  private static final Map<String, Parted> PARTED =
      Map.of(
          "ND", new Parted(-101.5, MOUNTAIN, CENTRAL),
          "SD", new Parted(-100.6, MOUNTAIN, CENTRAL),
          "NE", new Parted(-101.3, MOUNTAIN, CENTRAL),
          "KS", new Parted(-101.5, MOUNTAIN, CENTRAL),
          "TX", new Parted(-104.9, MOUNTAIN, CENTRAL),
          "KY", new Parted(-86.0, CENTRAL, EASTERN),
          "TN", new Parted(-85.2, CENTRAL, EASTERN),
          "FL", new Parted(-85.1, CENTRAL, EASTERN));

  private FieldZone() {}

  /** Empty when the state is not known, or its line runs too near. */
  public static Optional<ZoneId> of(Field field) {
    if (field.state().isEmpty()) {
      return Optional.empty();
    }
    String whole = WHOLE.get(field.state().get());
    if (whole != null) {
      return Optional.of(ZoneId.of(whole));
    }
    Parted parted = PARTED.get(field.state().get());
    if (parted == null || field.longitude().isEmpty()) {
      return Optional.empty();
    }
    double east = field.longitude().getAsDouble() - parted.longitude();
    return Math.abs(east) < UNSURE_DEGREES
        ? Optional.empty()
        : Optional.of(ZoneId.of(east > 0 ? parted.east() : parted.west()));
  }
}
