package org.swathbook.plan.exact;

import com.google.ortools.Loader;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.OptionalInt;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * The planner's branch and bound and two solvers from outside on the same linear plans, one after
 * the other in one run. Fails when one of them proves another optimum. What is timed is everything
 * from the plan in arrays to the proof. Instances are drawn from seeds 1, 2, 3 ...
 */
public final class SolversBench {
  private static final int SEEDS = 8;
  private static final int WARM_UPS = 8;

  /** Seeds of the plans on which everything warms up; none of them is timed. */
  private static final int FIRST_WARM_UP = 1000;

  /** Each is timed so often, and its shortest time counts: other work on the machine adds to it. */
  private static final int TIMES = 3;

  /**
   * @param chocoSeconds Choco is stopped then
   */
  private record Shape(int dates, int options, int weeds, int passes, int chocoSeconds) {
    LinearPlan plan(long seed) {
      return LinearInstance.draw(seed, dates, options, weeds, passes);
    }

    String words() {
      return dates + " dates, " + options + " options, " + weeds + " weeds, " + passes + " passes";
    }
  }

  private static final List<Shape> SHAPES =
      List.of(
          new Shape(5, 14, 3, 3, 60),
          new Shape(6, 30, 4, 3, 5),
          new Shape(8, 40, 4, 3, 2),
          new Shape(8, 40, 6, 4, 2));

  private record Timed<T>(T result, double millis) {
    static <T> Timed<T> of(Supplier<T> work, int times) {
      @Nullable Timed<T> best = null;
      for (int i = 0; i < times; i++) {
        long from = System.nanoTime();
        T result = work.get();
        double millis = (System.nanoTime() - from) / 1e6;
        if (best == null || millis < best.millis()) {
          best = new Timed<>(result, millis);
        }
      }
      return Objects.requireNonNull(best);
    }
  }

  private SolversBench() {}

  public static void main(String[] args) {
    Loader.loadNativeLibraries();
    for (Shape shape : SHAPES) {
      for (int seed = FIRST_WARM_UP; seed < FIRST_WARM_UP + WARM_UPS; seed++) {
        ours(shape.plan(seed));
        CpSatModel.cheapest(shape.plan(seed), 1);
      }
      run(shape);
    }
  }

  private static LinearSearch.Result ours(LinearPlan plan) {
    return LinearSearch.cheapest(plan, EnumSet.allOf(Pruning.class));
  }

  private static void run(Shape shape) {
    say("%n%s%n", shape.words());
    say(
        "%5s %9s %8s %7s %10s %10s %10s  %s%n",
        "seed", "$/acre", "tanks", "scored", "ours ms", "CP-SAT 1", "CP-SAT all", "Choco");
    double[] sum = new double[3];
    for (int seed = 1; seed <= SEEDS; seed++) {
      LinearPlan plan = shape.plan(seed);
      Timed<LinearSearch.Result> ours = Timed.of(() -> ours(plan), TIMES);
      Timed<OptionalInt> one = Timed.of(() -> CpSatModel.cheapest(plan, 1), TIMES);
      Timed<OptionalInt> all = Timed.of(() -> CpSatModel.cheapest(plan, 0), TIMES);
      Timed<ChocoModel.Result> choco =
          Timed.of(() -> ChocoModel.cheapest(plan, shape.chocoSeconds()), 1);
      OptionalInt cents = ours.result().cents();
      same(shape, seed, "CP-SAT", cents, one.result());
      same(shape, seed, "CP-SAT on all cores", cents, all.result());
      if (choco.result().proved()) {
        same(shape, seed, "Choco", cents, choco.result().cents());
      }
      double[] millis = {ours.millis(), one.millis(), all.millis()};
      for (int i = 0; i < sum.length; i++) {
        sum[i] += millis[i];
      }
      say(
          "%5d %9s %8d %7d %10.1f %10.1f %10.1f  %s%n",
          seed,
          cents.isPresent() ? String.format(Locale.ROOT, "%.2f", cents.getAsInt() / 100.0) : "none",
          ours.result().candidates(),
          ours.result().scored(),
          millis[0],
          millis[1],
          millis[2],
          choco.result().proved()
              ? String.format(Locale.ROOT, "the same in %.0f ms", choco.millis())
              : "no proof in " + shape.chocoSeconds() + " s");
    }
    say(
        "  all: ours %.0f ms; CP-SAT %.0f ms on one core, %.1f times as long; on all %.0f ms, %.1f"
            + " times%n",
        sum[0], sum[1], sum[1] / sum[0], sum[2], sum[2] / sum[0]);
  }

  private static void same(
      Shape shape, int seed, String solver, OptionalInt ours, OptionalInt theirs) {
    if (!ours.equals(theirs)) {
      throw new IllegalStateException(
          shape.words() + ", seed " + seed + ": ours " + ours + ", " + solver + " " + theirs);
    }
  }

  private static void say(String format, Object... args) {
    System.out.printf(Locale.ROOT, format, args);
  }
}
