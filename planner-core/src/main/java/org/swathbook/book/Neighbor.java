package org.swathbook.book;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.swathbook.measure.Dimension;
import org.swathbook.measure.Quantity;
import org.swathbook.measure.Unit;

/**
 * What lies beside a field.
 *
 * @param bearingDegrees in which direction, clockwise from north
 */
public record Neighbor(String what, double bearingDegrees, double distanceFt) {
  private static final List<String> COMPASS =
      List.of(
          "N", "NNE", "NE", "ENE", "E", "ESE", "SE", "SSE", "S", "SSW", "SW", "WSW", "W", "WNW",
          "NW", "NNW");

  /** How far off its own line a wind still carries drift to it, degrees. */
  private static final double SPREAD = 45;

  /** Words of what small amounts of drift do not harm; everything else they may (default, ours). */
  private static final List<String> HARDY =
      List.of(
          "shelterbelt",
          "windbreak",
          "river",
          "creek",
          "stream",
          "pond",
          "lake",
          "ditch",
          "road",
          "railroad",
          "fallow",
          "stubble");

  /** Words of crops that are grown by the field (from memory); all else is kept farther off. */
  private static final List<String> FIELD_CROPS =
      List.of(
          "corn",
          "soybean",
          "sorghum",
          "milo",
          "wheat",
          "barley",
          "oats",
          "rye",
          "cotton",
          "alfalfa",
          "sunflower",
          "canola",
          "sugar beet");

  /** Words that turn them into something else: the garden beside the corn (default, ours). */
  private static final List<String> NEVER_FIELD_CROPS =
      List.of(
          "garden",
          "orchard",
          "vineyard",
          "house",
          "home",
          "school",
          "organic",
          "greenhouse",
          "park",
          "nursery",
          "yard");

  /** Degrees clockwise from north of a compass point; empty for other text. */
  public static OptionalDouble degrees(String point) {
    int at = COMPASS.indexOf(point.strip().toUpperCase(Locale.ROOT));
    return at >= 0 ? OptionalDouble.of(at * 360.0 / COMPASS.size()) : OptionalDouble.empty();
  }

  /** {@code vineyard NE 1500 ft}, read from the right; the book's reader has checked it. */
  public static Neighbor parse(String text) {
    String[] words = text.strip().split("\\s+");
    int n = words.length;
    for (int from = n - 2; from >= 1; from--) {
      int point = COMPASS.indexOf(words[from].toUpperCase(Locale.ROOT));
      if (point >= 0) {
        String distance = String.join(" ", List.of(words).subList(from + 1, n));
        return new Neighbor(
            String.join(" ", List.of(words).subList(0, from)),
            point * 360.0 / COMPASS.size(),
            Quantity.parse(distance, Dimension.LENGTH, "1500 ft").in(Unit.FOOT));
      }
    }
    throw new IllegalArgumentException("no neighbor: " + text);
  }

  /** Whether it may be plants or people that drift of small amounts harms. */
  public boolean isTender() {
    String low = what.toLowerCase(Locale.ROOT);
    return HARDY.stream().noneMatch(low::contains);
  }

  /** Whether it is a crop of the field, and no orchard, garden or home. */
  public boolean isFieldCrop() {
    String low = what.toLowerCase(Locale.ROOT);
    return FIELD_CROPS.stream().anyMatch(low::contains)
        && NEVER_FIELD_CROPS.stream().noneMatch(low::contains);
  }

  /** The compass point at which it lies. */
  public String bearing() {
    return point(bearingDegrees);
  }

  /** The winds that blow toward it, {@code S to W} for one in the northeast. */
  public String windsToward() {
    return point(bearingDegrees + 180 - SPREAD) + " to " + point(bearingDegrees + 180 + SPREAD);
  }

  private static String point(double degrees) {
    int n = COMPASS.size();
    return COMPASS.get((int) (Math.round(degrees * n / 360) % n));
  }

  /** Whether wind that comes from a direction blows toward it, within 45 degrees. */
  public boolean isDownwind(double windFromDegrees) {
    double toward = (windFromDegrees + 180) % 360;
    double off = Math.abs(toward - bearingDegrees) % 360;
    return Math.min(off, 360 - off) <= SPREAD + 1e-9;
  }
}
