package org.swathbook.book;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.swathbook.measure.Dimension;
import org.swathbook.measure.MeasureException;
import org.swathbook.measure.Numbers;
import org.swathbook.measure.Quantity;
import org.swathbook.measure.Unit;

/**
 * One kind of water and how far it is from a field.
 *
 * @param feet of the nearest of its kind; empty when it is known that none is near
 */
public record NearWater(String kind, OptionalDouble feet) {

  /** Kinds as labels tell them apart; {@code runoff} is where the field's runoff enters water. */
  public static final List<String> KINDS =
      List.of("lake", "stream", "well", "inlet", "sinkhole", "runoff");

  private static final String RIGHT =
      "; write kind and distance, as 'stream 90 ft', or 'lake none'; kinds are "
          + String.join(", ", KINDS);

  /** {@code stream at 90 ft}, {@code no lake near}. */
  public String words() {
    return feet.isPresent()
        ? kind + " at " + Numbers.decimals(feet.getAsDouble(), 1) + " ft"
        : "no " + kind + " near";
  }

  /**
   * {@code stream 90 ft} or {@code lake none}.
   *
   * @throws MeasureException in words, when it is neither
   */
  public static NearWater parse(String text) {
    String[] words = text.strip().split("\\s+", 2);
    String kind = words[0].toLowerCase(Locale.ROOT);
    if (words.length < 2 || !KINDS.contains(kind)) {
      throw new MeasureException("'" + text + "' is no water near a field" + RIGHT);
    }
    if (words[1].equalsIgnoreCase("none")) {
      return new NearWater(kind, OptionalDouble.empty());
    }
    double feet = Quantity.parse(words[1], Dimension.LENGTH, "90 ft").in(Unit.FOOT);
    if (feet < 0) {
      throw new MeasureException("'" + text + "' lies below zero" + RIGHT);
    }
    return new NearWater(kind, OptionalDouble.of(feet));
  }
}
