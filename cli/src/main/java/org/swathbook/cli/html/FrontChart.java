package org.swathbook.cli.html;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import org.swathbook.cli.text.ProgramWords;
import org.swathbook.measure.Money;
import org.swathbook.measure.Numbers;
import org.swathbook.plan.FrontProgram;
import org.swathbook.season.outcome.SeasonOutcome;

/**
 * What more money buys: net return against cost, each program a disc, steps worth a line numbered.
 */
final class FrontChart {
  private static final double HEIGHT = 230;
  private static final double LEFT = 46;
  private static final double RIGHT = 18;
  private static final double TOP = 16;
  private static final double BOTTOM = 40;

  /** Radius of a disc with and without its number. */
  private static final double LARGE = 7.5;

  private static final double SMALL = 4;

  private final Function<FrontProgram, Marked> tips;
  private final double width;
  private final Axis costs;
  private final Axis nets;
  private final Drawing.Pen pen = new Drawing.Pen();

  /** Round numbers around values, dollars. */
  private record Axis(double from, double to, double step) {

    static Axis of(List<Double> values) {
      double low = Collections.min(values);
      double high = Collections.max(values);
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
      return new Axis(Math.floor(low / step) * step, (Math.floor(high / step) + 1) * step, step);
    }

    double share(double value) {
      return (value - from) / (to - from);
    }
  }

  private FrontChart(
      List<FrontProgram> priced,
      SeasonOutcome first,
      Function<FrontProgram, Marked> tips,
      double width) {
    this.tips = tips;
    this.width = width;
    List<Double> cost = new ArrayList<>(priced.stream().map(p -> p.cost().dollars()).toList());
    List<Double> net = new ArrayList<>(priced.stream().map(FrontChart::net).toList());
    first.cost().ifPresent(m -> cost.add(m.dollars()));
    first.net().ifPresent(m -> net.add(m.dollars()));
    this.costs = Axis.of(cost);
    this.nets = Axis.of(net);
  }

  /**
   * @param front all programs, {@code steps} those that have a row in the table
   * @param first the program that the page shows in full
   * @param at where the programs stand in the JSON document
   */
  static Drawing of(
      List<FrontProgram> front,
      List<FrontProgram> steps,
      SeasonOutcome first,
      String at,
      double width) {
    List<FrontProgram> priced = front.stream().filter(p -> p.net().isPresent()).toList();
    return new FrontChart(priced, first, p -> tip(p, at + front.indexOf(p)), width)
        .drawn(priced, steps, first);
  }

  /** A square around where the program stands that the page shows in full. */
  private void first(Money cost, Money net) {
    double at = x(cost.dollars());
    pen.box(
        at - 11, y(net.dollars()) - 11, 22, 22, "edge heavy", Marked.plain("the first program"));
    boolean right = at < width - 120;
    pen.label(
        right ? at - 4 : at - 14,
        y(net.dollars()) + 23,
        right ? "start" : "end",
        "size",
        "the first program");
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

  private Drawing drawn(List<FrontProgram> front, List<FrontProgram> steps, SeasonOutcome first) {
    for (double c = costs.from(); c <= costs.to() + 1e-6; c += costs.step()) {
      pen.line(x(c), TOP, x(c), HEIGHT - BOTTOM, "grid");
      pen.label(
          x(c), HEIGHT - BOTTOM + 13, "middle", "month", Marked.of(Numbers.decimals(c, 0), "-"));
    }
    for (double n = nets.from(); n <= nets.to() + 1e-6; n += nets.step()) {
      pen.line(LEFT, y(n), width - RIGHT, y(n), "grid");
      pen.label(LEFT - 5, y(n) + 4, "end", "month", Marked.of(Numbers.decimals(n, 0), "-"));
    }
    pen.line(LEFT, HEIGHT - BOTTOM, width - RIGHT, HEIGHT - BOTTOM, "axis");
    pen.line(LEFT, TOP, LEFT, HEIGHT - BOTTOM, "axis");
    pen.label(width - RIGHT, HEIGHT - 8, "end", "month", "cost of products and passes, $/acre");
    pen.label(0, 10, "start", "month", "net return, $/acre");
    for (FrontProgram p : front) {
      if (!steps.contains(p)) {
        pen.dot(x(p.cost().dollars()), y(net(p)), 2.5, "dot", tips.apply(p));
      }
    }
    List<FrontProgram> shown = steps.stream().filter(p -> p.net().isPresent()).toList();
    List<FrontProgram> numbered = numbered(shown);
    shown.stream().filter(p -> !numbered.contains(p)).forEach(p -> disc(p, SMALL));
    for (FrontProgram p : numbered) {
      disc(p, LARGE);
      pen.label(
          x(p.cost().dollars()),
          y(net(p)) + 3.5,
          "middle",
          keeps(p) ? "no" : "missedNo",
          Marked.of("" + (steps.indexOf(p) + 1), "-"));
    }
    first.cost().ifPresent(c -> first.net().ifPresent(n -> first(c, n)));
    return pen.drawing(
        "Net return against cost of the programs met; the numbered ones stand in the table below.",
        width,
        HEIGHT);
  }

  private void disc(FrontProgram p, double radius) {
    pen.dot(x(p.cost().dollars()), y(net(p)), radius, keeps(p) ? "step" : "breaks", tips.apply(p));
  }

  private static boolean keeps(FrontProgram p) {
    return p.brokenRules().isEmpty();
  }

  /** Those that have room for a number; those that break no house rule go first. */
  private List<FrontProgram> numbered(List<FrontProgram> steps) {
    List<FrontProgram> out = new ArrayList<>();
    steps.stream()
        .sorted(Comparator.comparing(p -> !keeps(p)))
        .filter(p -> out.stream().allMatch(o -> apart(o, p) >= 2 * LARGE + 1))
        .forEach(out::add);
    return out;
  }

  private double apart(FrontProgram a, FrontProgram b) {
    return Math.hypot(x(a.cost().dollars()) - x(b.cost().dollars()), y(net(a)) - y(net(b)));
  }

  private static Marked tip(FrontProgram p, String at) {
    return Marked.of(
        "cost "
            + ProgramWords.money(p.cost())
            + ", net "
            + ProgramWords.money(p.net().orElseThrow())
            + " $/acre, control with the worst site gone "
            + ProgramWords.percent(p.weakestControlPct())
            + " %",
        at + "/costPerAcre",
        at + "/netPerAcre",
        at + "/controlPctWithoutWeakest");
  }
}
