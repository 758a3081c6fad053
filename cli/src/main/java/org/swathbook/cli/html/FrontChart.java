package org.swathbook.cli.html;

import java.util.List;
import org.swathbook.cli.text.ProgramWords;
import org.swathbook.measure.Numbers;
import org.swathbook.plan.FrontProgram;

/**
 * What more money buys: net return against cost, each program a disc, steps worth a line numbered.
 */
final class FrontChart {
  private static final double HEIGHT = 230;
  private static final double LEFT = 46;
  private static final double RIGHT = 18;
  private static final double TOP = 16;
  private static final double BOTTOM = 40;

  private final double width;
  private final Axis costs;
  private final Axis nets;
  private final Drawing.Pen pen = new Drawing.Pen();

  /** Round numbers around values, dollars. */
  private record Axis(double from, double to, double step) {

    static Axis of(double low, double high) {
      double span = Math.max(high - low, 1);
      double step = 1;
      for (double s : new double[] {1, 2, 5, 10, 20, 25, 50, 100, 200, 250, 500, 1000}) {
        step = s;
        if (span / s <= 6) {
          break;
        }
      }
      while (span / step > 6) {
        step *= 2;
      }
      return new Axis(
          Math.floor(low / step) * step, Math.max(1, Math.ceil(high / step)) * step, step);
    }

    double share(double value) {
      return (value - from) / (to - from);
    }
  }

  private FrontChart(List<FrontProgram> priced, double width) {
    this.width = width;
    this.costs =
        Axis.of(
            priced.stream().mapToDouble(p -> p.cost().dollars()).min().orElse(0),
            priced.stream().mapToDouble(p -> p.cost().dollars()).max().orElse(0));
    this.nets =
        Axis.of(
            priced.stream().mapToDouble(FrontChart::net).min().orElse(0),
            priced.stream().mapToDouble(FrontChart::net).max().orElse(0));
  }

  /**
   * @param front all programs, {@code steps} those that have a row in the table
   */
  static Drawing of(List<FrontProgram> front, List<FrontProgram> steps, double width) {
    List<FrontProgram> priced = front.stream().filter(p -> p.net().isPresent()).toList();
    return new FrontChart(priced, width).drawn(priced, steps);
  }

  private static double net(FrontProgram p) {
    return p.net().orElseThrow().dollars();
  }

  private double x(double dollars) {
    return LEFT + (width - LEFT - RIGHT) * costs.share(dollars);
  }

  private double y(double dollars) {
    return HEIGHT - BOTTOM - (HEIGHT - TOP - BOTTOM) * nets.share(dollars);
  }

  private Drawing drawn(List<FrontProgram> front, List<FrontProgram> steps) {
    for (double c = costs.from(); c <= costs.to() + 1e-6; c += costs.step()) {
      pen.line(x(c), TOP, x(c), HEIGHT - BOTTOM, "grid");
      pen.label(x(c), HEIGHT - BOTTOM + 13, "middle", "month", Numbers.decimals(c, 0));
    }
    for (double n = nets.from(); n <= nets.to() + 1e-6; n += nets.step()) {
      pen.line(LEFT, y(n), width - RIGHT, y(n), "grid");
      pen.label(LEFT - 5, y(n) + 4, "end", "month", Numbers.decimals(n, 0));
    }
    pen.line(LEFT, HEIGHT - BOTTOM, width - RIGHT, HEIGHT - BOTTOM, "axis");
    pen.line(LEFT, TOP, LEFT, HEIGHT - BOTTOM, "axis");
    pen.label(width - RIGHT, HEIGHT - 8, "end", "month", "cost of products and passes, $/acre");
    pen.label(0, 10, "start", "month", "net return, $/acre");
    for (FrontProgram p : front) {
      if (!steps.contains(p)) {
        pen.dot(x(p.cost().dollars()), y(net(p)), 2.5, "dot", tip(p));
      }
    }
    for (int i = 0; i < steps.size(); i++) {
      FrontProgram p = steps.get(i);
      if (p.net().isEmpty()) {
        continue;
      }
      boolean keeps = p.brokenRules().isEmpty();
      double at = x(p.cost().dollars());
      pen.dot(at, y(net(p)), 9, keeps ? "step" : "breaks", tip(p));
      pen.label(at, y(net(p)) + 3.5, "middle", keeps ? "no" : "missedNo", "" + (i + 1));
    }
    return pen.drawing(
        "Net return against cost of the programs met; the numbered ones stand in the table below.",
        width,
        HEIGHT);
  }

  private static String tip(FrontProgram p) {
    return "cost "
        + ProgramWords.money(p.cost())
        + ", net "
        + ProgramWords.money(p.net().orElseThrow())
        + " $/acre, control with the worst site gone "
        + ProgramWords.percent(p.weakestControlPct())
        + " %";
  }
}
