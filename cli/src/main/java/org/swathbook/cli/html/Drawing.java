package org.swathbook.cli.html;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/**
 * A picture of plain shapes, which a template turns into SVG. Lengths are CSS pixels of its own
 * grid, from the upper left corner; {@code css} is a class of the page's style sheet.
 *
 * @param says what it shows, for who cannot see it
 */
public record Drawing(String says, String width, String height, List<Shape> shapes) {

  /** One thing drawn; later ones lie over earlier ones. */
  public sealed interface Shape {}

  /**
   * A rectangle.
   *
   * @param tip shown when the pointer rests on it; empty for none
   */
  public record Box(String x, String y, String width, String height, String css, Marked tip)
      implements Shape {}

  /** A straight line. */
  public record Line(String x1, String y1, String x2, String y2, String css) implements Shape {}

  /** A line of words; {@code anchor} is the end that stands at x: start, middle or end. */
  public record Label(String x, String y, String anchor, String css, Marked words)
      implements Shape {}

  /** A disc. */
  public record Dot(String x, String y, String radius, String css, Marked tip) implements Shape {}

  public Drawing {
    shapes = List.copyOf(shapes);
  }

  /** Collects shapes. */
  static final class Pen {
    private final List<Shape> shapes = new ArrayList<>();

    void box(double x, double y, double width, double height, String css) {
      box(x, y, width, height, css, Marked.plain(""));
    }

    void box(double x, double y, double width, double height, String css, Marked tip) {
      shapes.add(new Box(px(x), px(y), px(Math.max(0, width)), px(Math.max(0, height)), css, tip));
    }

    void line(double x1, double y1, double x2, double y2, String css) {
      shapes.add(new Line(px(x1), px(y1), px(x2), px(y2), css));
    }

    /** A line below everything else. */
    void under(double x1, double y1, double x2, double y2, String css) {
      shapes.add(0, new Line(px(x1), px(y1), px(x2), px(y2), css));
    }

    void label(double x, double y, String anchor, String css, String words) {
      label(x, y, anchor, css, Marked.plain(words));
    }

    void label(double x, double y, String anchor, String css, Marked words) {
      shapes.add(new Label(px(x), px(y), anchor, css, words));
    }

    void dot(double x, double y, double radius, String css, Marked tip) {
      shapes.add(new Dot(px(x), px(y), px(radius), css, tip));
    }

    Drawing drawing(String says, double width, double height) {
      return new Drawing(says, px(width), px(height), shapes);
    }
  }

  /** Tenths of a pixel are finer than anybody sees. */
  private static String px(double value) {
    return new BigDecimal(value)
        .setScale(1, RoundingMode.HALF_UP)
        .stripTrailingZeros()
        .toPlainString();
  }
}
