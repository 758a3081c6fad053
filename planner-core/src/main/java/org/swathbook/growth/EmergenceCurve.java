package org.swathbook.growth;

import java.util.List;
import java.util.Optional;
import org.swathbook.catalog.Emergence;
import org.swathbook.model.ModelCard;
import org.swathbook.model.ModelSection;

/**
 * Share of a weed's plants that is up at a heat sum: {@code F(x) = 1 - exp(-((x - z)/b)^c)} for x
 * above z, with lag z, scale b and shape c solved so that the curve goes through the 10, 50 and 90
 * % points. Early species come out with c below 1, a density without bound at z: take differences
 * of F, never its slope.
 *
 * <p>A tail lets a last share straggle in evenly from the 90 % point on: {@code F = (1 - s) Flag +
 * s min(1, max(0, (x - x90)/(until - x90)))}.
 *
 * <p>Three points of which the middle one lies so late that no such curve exists ({@code (x50 -
 * x10)/(x90 - x50)} of 1.57 or more) are joined by straight lines, which go on to 100 % at the pace
 * of the last one. Plants that a curve with a lag below zero has up at x = 0 come up with the first
 * heat.
 */
public final class EmergenceCurve {
  private static final double K10 = -StrictMath.log(0.9);
  private static final double K50 = -StrictMath.log(0.5);
  private static final double K90 = -StrictMath.log(0.1);

  /** Limit of the ratio of logarithms as the lag goes to minus infinity. */
  private static final double RATIO = StrictMath.log(K50 / K10) / StrictMath.log(K90 / K50);

  private final double at10;
  private final double at50;
  private final double at90;
  private final boolean weibull;
  private final double lag;
  private final double scale;
  private final double shape;
  private final Optional<Emergence.Tail> tail;

  public EmergenceCurve(Emergence emergence) {
    this.at10 = emergence.at10();
    this.at50 = emergence.at50();
    this.at90 = emergence.at90();
    this.tail = emergence.tail();
    this.weibull = (at50 - at10) / (at90 - at50) < RATIO * (1 - 1e-6);
    this.lag = weibull ? solveLag() : 0;
    this.shape =
        weibull ? StrictMath.log(K90 / K10) / StrictMath.log((at90 - lag) / (at10 - lag)) : 1;
    this.scale = weibull ? (at50 - lag) / StrictMath.pow(K50, 1 / shape) : at50;
  }

  /**
   * Bisects on the logarithm of x10 - z: the ratio of the logarithms of both intervals falls from
   * infinity, at a lag just below the 10 % point, to the ratio of the intervals themselves.
   */
  private double solveLag() {
    double low = StrictMath.log(at10 * 1e-12);
    double high = StrictMath.log(at90 * 1e9);
    for (int i = 0; i < 200; i++) {
      double mid = (low + high) / 2;
      double gap = StrictMath.exp(mid);
      double ratio =
          StrictMath.log1p((at50 - at10) / gap)
              / StrictMath.log1p((at90 - at50) / (at50 - at10 + gap));
      if (ratio > RATIO) {
        low = mid;
      } else {
        high = mid;
      }
    }
    return at10 - StrictMath.exp((low + high) / 2);
  }

  /** Share up at a heat sum in °C-days: rising, 0 at no heat, towards 1. */
  public double at(double heat) {
    if (heat <= 0) {
      return 0;
    }
    double main = weibull ? weibull(heat) : lines(heat);
    if (tail.isEmpty()) {
      return main;
    }
    double share = tail.get().share();
    double late = (heat - at90) / (tail.get().until() - at90);
    return (1 - share) * main + share * Math.min(1, Math.max(0, late));
  }

  private double weibull(double heat) {
    return heat <= lag ? 0 : -StrictMath.expm1(-StrictMath.pow((heat - lag) / scale, shape));
  }

  private double lines(double heat) {
    if (heat <= at10) {
      return 0.1 * heat / at10;
    }
    if (heat <= at50) {
      return 0.1 + 0.4 * (heat - at10) / (at50 - at10);
    }
    return Math.min(1, 0.5 + 0.4 * (heat - at50) / (at90 - at50));
  }

  /** Whether the lagged curve fits the points; else straight lines join them. */
  public boolean isWeibull() {
    return weibull;
  }

  /** z in °C-days. */
  public double lag() {
    return lag;
  }

  /** b in °C-days. */
  public double scale() {
    return scale;
  }

  /** c. */
  public double shape() {
    return shape;
  }

  /** What the reference prints. */
  static List<ModelCard> cards() {
    return List.of(
        ModelCard.of(
                ModelSection.WEEDS,
                EmergenceCurve.class,
                "emergence",
                "F = 1 − exp(−((x − z)/b)^c), z, b, c solved through the 10, 50 and 90 % points",
                "points and their sources in the catalog")
            .given("°C-days of the species' own clock and start"),
        ModelCard.of(
                ModelSection.WEEDS,
                EmergenceCurve.class,
                "tail",
                "F = (1 − s) Flag + s · min(1, max(0, (x − x90)/(until − x90)))",
                "default")
            .given("kochia: s 5 %, until 1400 °F-days, from the catalog"));
  }
}
