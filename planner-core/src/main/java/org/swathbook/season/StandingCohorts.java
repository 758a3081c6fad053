package org.swathbook.season;

/**
 * The cohorts of one biotype of a weed that are up when a pass comes in one year, before it does
 * anything. It shows the walk's own arrays, which change as the walk goes on.
 *
 * @param pass place in the list of passes
 * @param year place of the weather year, {@code weed} of the weed, {@code biotype} of its biotype
 * @param from cohorts from to up - 1 stand
 * @param alive share of each cohort's plants alive, of those that tillage left
 * @param heightCm of each cohort of which any plant is alive; nothing where the census does not ask
 * @param heightClass by which the pass acts
 */
// Copies would cost more than the walk itself, and nobody compares two of them.
@SuppressWarnings("ArrayRecordComponent")
record StandingCohorts(
    int pass,
    int year,
    int weed,
    int biotype,
    int from,
    int up,
    double[] alive,
    double[] heightCm,
    byte[] heightClass) {

  /** Plants/m² of each cohort on the day of the pass, the first of those up at place 0. */
  double[] perM2(Kernel kernel, int day) {
    double[] out = untreatedPerM2(kernel, day);
    for (int i = 0; i < out.length; i++) {
      out[i] *= alive[from + i];
    }
    return out;
  }

  /** The same had no pass killed any. */
  double[] untreatedPerM2(Kernel kernel, int day) {
    YearWeed cell = kernel.cell(year, weed);
    double share = kernel.traces().weeds().get(weed).biotypes().get(biotype).share();
    boolean tilled = day >= kernel.traces().years().get(year).plantingDay();
    double[] number = tilled ? cell.start : cell.first;
    double[] out = new double[up - from];
    for (int c = from; c < up; c++) {
      out[c - from] = number[c] * share;
    }
    return out;
  }
}
