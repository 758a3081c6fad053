package org.swathbook.season.loss;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.DoubleStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.plan.DemoCopy;

/** The envelope: below the hyperbola, convex in the logarithm of the load, and the largest such. */
class LossEnvelopeProperties {
  private static final Book DEMO = DemoCopy.inMemory();
  private static final int POINTS = 400;

  @Property
  void itLiesBelowAndIsConvex(
      @ForAll @DoubleRange(min = 0.01, max = 200) double most,
      @ForAll @DoubleRange(min = 0, max = 1) double at,
      @ForAll @DoubleRange(min = 0, max = 1) double other) {
    YieldLoss curve = curve();
    LossEnvelope envelope = new LossEnvelope(curve, most);
    double x = most * Math.pow(at, 6);
    double z = most * Math.pow(other, 6);
    assertThat(envelope.share(x)).isLessThanOrEqualTo(curve.share(x) * (1 + 1e-12));
    if (x > 0 && z > 0) {
      double middle = Math.sqrt(x * z);
      assertThat(envelope.share(middle))
          .isLessThanOrEqualTo((envelope.share(x) + envelope.share(z)) / 2 + 1e-12);
      assertThat(envelope.share(x) + envelope.slope(x) * Math.log(z / x))
          .isLessThanOrEqualTo(envelope.share(z) + 1e-12);
    }
  }

  /** The lower convex hull of points of the curve, found by no formula. */
  @Property(tries = 50)
  void itIsTheLowerHullOfTheCurve(@ForAll @DoubleRange(min = 0.01, max = 200) double most) {
    YieldLoss curve = curve();
    LossEnvelope envelope = new LossEnvelope(curve, most);
    double top = Math.log(most);
    double[] u = DoubleStream.iterate(top, v -> v - 0.05).limit(POINTS).toArray();
    for (int i = 1; i < POINTS; i += 7) {
      double hull = Double.POSITIVE_INFINITY;
      for (int left = i; left < POINTS; left++) {
        for (int right = 0; right <= i; right++) {
          double part = left == right ? 0 : (u[i] - u[left]) / (u[right] - u[left]);
          double chord =
              (1 - part) * curve.share(Math.exp(u[left])) + part * curve.share(Math.exp(u[right]));
          hull = Math.min(hull, chord);
        }
      }
      assertThat(envelope.share(Math.exp(u[i]))).isCloseTo(hull, within(2e-3 * curve.share(most)));
    }
  }

  private static YieldLoss curve() {
    Field field = DEMO.fields().get(0);
    return YieldLoss.of(field.crop(), List.copyOf(DEMO.weedsOf(field.id())));
  }
}
