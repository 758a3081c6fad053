package org.swathbook.season.loss;

/**
 * The largest convex function of the natural logarithm of the load that nowhere, up to a greatest
 * load, lies above Cousens' hyperbola.
 *
 * <p>As a function of {@code u = log x} the hyperbola {@code x / (1 + x/A)} is a logistic curve: it
 * is convex up to x = A and concave from there on. So its envelope is the curve itself up to the
 * point at which its tangent meets the curve again at the greatest load, and that tangent from
 * there on. It rises with the load; so at the logarithm of a sum of exponentials, which is convex,
 * it makes a convex function.
 */
public final class LossEnvelope {
  /** Halvings of the interval in which the point is sought: more than a double can tell apart. */
  private static final int HALVINGS = 200;

  /** No load has a lower logarithm that counts. */
  private static final double LOWEST = -700;

  private final YieldLoss curve;
  private final double touchesAt;
  private final double slope;

  /**
   * @param most greatest load, above 0
   */
  public LossEnvelope(YieldLoss curve, double most) {
    this.curve = curve;
    double top = StrictMath.log(most);
    if (most <= curve.greatest()) {
      touchesAt = top;
    } else {
      double low = LOWEST;
      double high = StrictMath.log(curve.greatest());
      for (int i = 0; i < HALVINGS; i++) {
        double mid = (low + high) / 2;
        boolean below = at(mid) + slopeAt(mid) * (top - mid) < at(top);
        low = below ? mid : low;
        high = below ? high : mid;
      }
      // From the lower side, so that the line lies below the curve at the greatest load.
      touchesAt = low;
    }
    slope = slopeAt(touchesAt);
  }

  private double at(double u) {
    return curve.share(StrictMath.exp(u));
  }

  private double slopeAt(double u) {
    double x = StrictMath.exp(u);
    double over = 1 + x / curve.greatest();
    return x / (over * over);
  }

  /** Share of the yield, never more than is lost; 0 without a load. */
  public double share(double x) {
    if (x <= 0) {
      return 0;
    }
    double u = StrictMath.log(x);
    return u <= touchesAt ? curve.share(x) : at(touchesAt) + slope * (u - touchesAt);
  }

  /** By how much it rises per unit of the load's natural logarithm. */
  public double slope(double x) {
    if (x <= 0) {
      return 0;
    }
    double u = StrictMath.log(x);
    return u <= touchesAt ? slopeAt(u) : slope;
  }
}
