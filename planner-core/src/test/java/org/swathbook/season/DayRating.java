package org.swathbook.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.swathbook.growth.CohortSet;
import org.swathbook.growth.SeasonTrace;
import org.swathbook.program.Mix;

/**
 * What somebody who walks a field on one day would see of the passes made before it.
 *
 * <p>An eye compares the green mass of the treated plot with that of the untreated one: plants
 * count with the square of their height (default, ours: leaf area goes with it), survivors with the
 * height that they were set back to. So what came up last week hides nothing of a good kill, and
 * stunted survivors count for less than upright ones. The season's own figure ({@link
 * WeedOutcome#controlPct}) weighs plants by what they cost the crop instead.
 */
public final class DayRating {
  private final Kernel kernel;
  private final LocalDate on;
  private final LocalDate upFrom;
  private final List<PreparedPass> walked;
  private final double[][] treated;
  private final double[][] untreated;

  private DayRating(Kernel kernel, List<PreparedPass> passes, LocalDate on, LocalDate upFrom) {
    this.kernel = kernel;
    this.on = on;
    this.upFrom = upFrom;
    int years = kernel.traces().years().size();
    int weeds = kernel.traces().weeds().size();
    this.treated = new double[years][weeds];
    this.untreated = new double[years][weeds];
    this.walked = new ArrayList<>();
    for (PreparedPass pass : passes) {
      if (pass.planned().isBefore(on)) {
        walked.add(pass);
      }
    }
    walked.sort(Comparator.comparing(PreparedPass::planned));
    // An empty tank comes on the day itself and sees what the others have left.
    walked.add(kernel.made(Mix.of(List.of()), on));
  }

  /** Rates the passes planned before a day of the book's season on that day of every year. */
  public static DayRating of(Kernel kernel, List<PreparedPass> passes, LocalDate on) {
    return of(kernel, passes, on, LocalDate.MIN);
  }

  /** The same of the plants alone that came up on or after a day of the book's season. */
  public static DayRating of(
      Kernel kernel, List<PreparedPass> passes, LocalDate on, LocalDate upFrom) {
    DayRating rating = new DayRating(kernel, passes, on, upFrom);
    rating.rate();
    return rating;
  }

  private void rate() {
    int last = walked.size() - 1;
    kernel.run(
        walked,
        Optional.empty(),
        up -> {
          if (up.pass() == last) {
            see(up);
          }
        });
  }

  private void see(StandingCohorts up) {
    int weed = up.weed();
    SeasonTrace trace = kernel.traces().years().get(up.year());
    CohortSet cohorts = trace.cohorts(weed);
    int day = trace.dayOf(on);
    double[] unsprayed = up.untreatedPerM2(kernel, day);
    double[] left = up.perM2(kernel, day);
    int first = upFrom.equals(LocalDate.MIN) ? 0 : trace.dayOf(upFrom);
    for (int c = up.from(); c < up.up(); c++) {
      if (cohorts.emergedOn(c) < first) {
        continue;
      }
      int i = c - up.from();
      if (up.alive()[c] > 0) {
        treated[up.year()][weed] += left[i] * mass(up.heightCm()[c]);
      }
      untreated[up.year()][weed] += unsprayed[i] * mass(cohorts.heightCm(c, day));
    }
  }

  private static double mass(double heightCm) {
    return heightCm * heightCm;
  }

  /** Control of a weed in a year, percent; NaN where nothing would stand untreated. */
  public double controlPct(int weed, int year) {
    double all = untreated[year][weed];
    return all > 0 ? 100 * (1 - treated[year][weed] / all) : Double.NaN;
  }

  /** Mean over the years in which the weed would stand untreated; NaN when there is none. */
  public double controlPct(int weed) {
    double sum = 0;
    int years = 0;
    for (int y = 0; y < untreated.length; y++) {
      if (untreated[y][weed] > 0) {
        sum += controlPct(weed, y);
        years++;
      }
    }
    return years > 0 ? sum / years : Double.NaN;
  }
}
