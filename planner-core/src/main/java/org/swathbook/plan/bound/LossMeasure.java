package org.swathbook.plan.bound;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.swathbook.season.Kernel;
import org.swathbook.season.loss.LossEnvelope;

/** What the yield that a blend leaves to be lost is worth at least, dollars on an acre. */
final class LossMeasure implements Measure.Total {
  /** By year; none where nothing can be lost. */
  private final @Nullable LossEnvelope[] envelopes;

  private final double dollars;

  private LossMeasure(@Nullable LossEnvelope[] envelopes, double dollars) {
    this.envelopes = envelopes;
    this.dollars = dollars;
  }

  static Measure of(AllDoses all, Kernel kernel) {
    double[] load = all.reach().load();
    double[] most = new double[all.years()];
    for (int c = 0; c < load.length; c++) {
      most[all.yearOf(c)] += load[c];
    }
    @Nullable LossEnvelope[] envelopes = new LossEnvelope[most.length];
    for (int y = 0; y < most.length; y++) {
      envelopes[y] = most[y] > 0 ? new LossEnvelope(kernel.yieldLoss(), most[y]) : null;
    }
    return new Measure(
        all,
        load,
        Day::lossReach,
        Optional.empty(),
        new LossMeasure(envelopes, kernel.weedFreeDollars() / most.length));
  }

  @Override
  public double of(double[] byYear) {
    double sum = 0;
    for (int y = 0; y < byYear.length; y++) {
      LossEnvelope envelope = envelopes[y];
      sum += envelope == null ? 0 : dollars * envelope.share(byYear[y]);
    }
    return sum;
  }

  @Override
  public double[] slopes(double[] byYear) {
    double[] out = new double[byYear.length];
    for (int y = 0; y < out.length; y++) {
      LossEnvelope envelope = envelopes[y];
      if (envelope != null && byYear[y] > 0) {
        out[y] = dollars * envelope.slope(byYear[y]) / byYear[y];
      }
    }
    return out;
  }
}
