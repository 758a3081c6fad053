package org.swathbook.book.file;

import java.util.Optional;
import java.util.OptionalDouble;
import org.swathbook.book.ScoutedCount;
import org.swathbook.book.ScoutedHeight;
import org.swathbook.measure.Density;
import org.swathbook.measure.Dimension;
import org.swathbook.measure.MeasureException;
import org.swathbook.measure.Numbers;
import org.swathbook.measure.Quantity;
import org.swathbook.measure.Unit;
import org.swathbook.source.Texts;

/** Readings of the cells that only scouting has. Each throws {@link MeasureException}. */
final class ScoutingCells {
  private static final String HEIGHTS = "; write for example '4 in', or '2-5 in' for a range";

  private ScoutingCells() {}

  /** {@code 4 in}, or {@code 2-5 in} for the tenth to the ninetieth percentile. */
  static ScoutedHeight height(String text) {
    Numbers.SplitRange r = Numbers.splitRange(text);
    Unit unit =
        Optional.of(r.rest())
            .filter(rest -> !rest.isEmpty())
            .flatMap(Unit::find)
            .filter(u -> u.dimension() == Dimension.LENGTH)
            .orElse(null);
    if (unit == null) {
      throw new MeasureException("'" + text + "' is no height" + HEIGHTS);
    }
    if (!(r.low() > 0)) {
      throw new MeasureException(
          "'"
              + text
              + "' is not above zero; write a height, or a count of 0 where no plant stands");
    }
    return ScoutedHeight.range(
        new Quantity(r.low(), unit).in(Unit.CENTIMETRE),
        new Quantity(r.high(), unit).in(Unit.CENTIMETRE));
  }

  /** {@code 3 /m2}, a count that names its area itself. */
  static ScoutedCount density(String text) {
    if (!text.contains("/")) {
      throw new MeasureException(
          "'"
              + text
              + "' counts plants on no area; name it in area, as 10 ft2, or write a density, as '3"
              + " /m2'");
    }
    return new ScoutedCount(Density.parse(text).perM2(), OptionalDouble.empty());
  }

  /** {@code 23}, plants on an area that the row names. */
  static double plants(String text) {
    if (text.contains("/")) {
      throw new MeasureException(
          "'" + text + "' is a density already; leave the area blank, or write the plants alone");
    }
    double plants = Texts.number(text);
    if (plants < 0) {
      throw new MeasureException("'" + text + "' is below zero; write 0 where no plant stands");
    }
    return plants;
  }

  /** {@code 10 ft2}, in m². */
  static double areaM2(String text) {
    double area = Quantity.parse(text, Dimension.AREA, "10 ft2").in(Unit.SQUARE_METRE);
    if (!(area > 0)) {
      throw new MeasureException(
          "'" + text + "' is no ground to count on; write for example '10 ft2'");
    }
    return area;
  }

  /** {@code 0.8 in} of water. */
  static double irrigationMm(String text) {
    double mm = Texts.in(Unit.MILLIMETRE, "0.8 in").parse(text);
    if (!(mm > 0)) {
      throw new MeasureException(
          "'" + text + "' is no water; write for example '0.8 in', or leave the cell blank");
    }
    return mm;
  }
}
