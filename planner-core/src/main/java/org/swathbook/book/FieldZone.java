package org.swathbook.book;

import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The time zone in which a field's clock runs, by its state. Where a state has two, by the field's
 * place, in boxes drawn so wide that the limit, which follows counties, runs inside those of which
 * nothing is said (limits of the zones: 49 CFR part 71; the boxes from memory).
 */
public final class FieldZone {
  private static final String EASTERN = "America/New_York";
  private static final String CENTRAL = "America/Chicago";
  private static final String MOUNTAIN = "America/Denver";
  private static final String PACIFIC = "America/Los_Angeles";
  private static final String BOISE = "America/Boise";
  private static final String PHOENIX = "America/Phoenix";

  private static final Map<String, String> WHOLE =
      Map.ofEntries(
          Map.entry("AL", CENTRAL),
          Map.entry("AK", "America/Anchorage"),
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

  /**
   * A part of a state between parallels and meridians.
   *
   * @param zone empty where the limit of two zones runs through it
   */
  private record Part(double south, double north, double west, double east, Optional<String> zone) {
    static Part in(double south, double north, double west, double east, String zone) {
      return new Part(south, north, west, east, Optional.of(zone));
    }

    static Part unsure(double south, double north, double west, double east) {
      return new Part(south, north, west, east, Optional.empty());
    }

    static Part unsure(double west, double east) {
      return unsure(-90, 90, west, east);
    }

    static Part westOf(double longitude, String zone) {
      return in(-90, 90, -180, longitude, zone);
    }

    static Part rest(String zone) {
      return in(-90, 90, -180, 180, zone);
    }

    boolean holds(double latitude, double longitude) {
      return latitude >= south && latitude <= north && longitude >= west && longitude <= east;
    }
  }

  /** The first part that holds a place counts. */
  private static final Map<String, List<Part>> PARTED =
      Map.ofEntries(
          // The nation in the northeast sets its clocks to summer time, the state does not.
          Map.entry("AZ", List.of(Part.unsure(35, 37.1, -111.8, -109), Part.rest(PHOENIX))),
          // Along the Apalachicola.
          Map.entry("FL", eastAndWest(-86.1, -84.1, CENTRAL, EASTERN)),
          // Along the Salmon River.
          Map.entry(
              "ID",
              List.of(
                  Part.in(46.2, 50, -118, -110, PACIFIC),
                  Part.unsure(45, 46.2, -118, -113),
                  Part.rest(BOISE))),
          // Counties of the northwest and the southwest keep the clock of Chicago.
          Map.entry(
              "IN",
              List.of(
                  Part.unsure(40.6, 42, -89, -86.3),
                  Part.unsure(37, 38.7, -89, -86.3),
                  Part.rest(EASTERN))),
          // Four counties, all in the far west.
          Map.entry("KS", List.of(Part.unsure(-103, -101), Part.rest(CENTRAL))),
          Map.entry("KY", eastAndWest(-86.7, -84.7, CENTRAL, EASTERN)),
          // Four counties of the upper peninsula.
          Map.entry("MI", List.of(Part.unsure(44.9, 47, -91, -87.1), Part.rest(EASTERN))),
          // Only the southwest has the clock of Denver.
          Map.entry(
              "ND",
              List.of(
                  Part.in(48.2, 50, -105, -96, CENTRAL),
                  Part.unsure(47, 48.2, -105, -101),
                  Part.unsure(45, 47, -102.1, -100.5),
                  Part.in(45, 47, -105, -102.1, MOUNTAIN),
                  Part.rest(CENTRAL))),
          Map.entry("NE", eastAndWest(-102.1, -100.3, MOUNTAIN, CENTRAL)),
          // One county of the southeast.
          Map.entry("OR", List.of(Part.unsure(41, 44.6, -118.4, -116), Part.rest(PACIFIC))),
          Map.entry("SD", eastAndWest(-102, -99.6, MOUNTAIN, CENTRAL)),
          Map.entry("TN", eastAndWest(-86, -84.2, CENTRAL, EASTERN)),
          Map.entry("TX", eastAndWest(-105.9, -103.9, MOUNTAIN, CENTRAL)));

  private FieldZone() {}

  private static List<Part> eastAndWest(double from, double to, String west, String east) {
    return List.of(Part.unsure(from, to), Part.westOf(from, west), Part.rest(east));
  }

  /** Empty when the state is not known, or the limit of two zones runs too near. */
  public static Optional<ZoneId> of(Field field) {
    if (field.state().isEmpty()) {
      return Optional.empty();
    }
    String state = field.state().get();
    List<Part> parts = PARTED.get(state);
    if (parts == null) {
      return Optional.ofNullable(WHOLE.get(state)).map(ZoneId::of);
    }
    if (field.latitude().isEmpty() || field.longitude().isEmpty()) {
      return Optional.empty();
    }
    double latitude = field.latitude().getAsDouble();
    double longitude = field.longitude().getAsDouble();
    return parts.stream()
        .filter(p -> p.holds(latitude, longitude))
        .findFirst()
        .flatMap(Part::zone)
        .map(ZoneId::of);
  }
}
