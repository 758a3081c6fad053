package org.swathbook.cli.work;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Function;
import org.swathbook.book.Field;
import org.swathbook.cli.report.PlannedField;
import org.swathbook.cli.terminal.Progress;

/** Plans fields on several threads; the results come in the order of the fields. */
public final class FieldPlans {
  private final Function<Field, PlannedField> planner;
  private final int threads;
  private final boolean timing;
  private final Progress progress;

  /**
   * @param planner plans one field; called from several threads
   * @param timing whether the plans tell the time that they took
   * @param err where progress is told
   */
  public FieldPlans(
      Function<Field, PlannedField> planner, int threads, boolean timing, PrintWriter err) {
    this.planner = planner;
    this.threads = threads;
    this.timing = timing;
    this.progress = new Progress(err, System.nanoTime());
  }

  public List<PlannedField> of(List<Field> fields) {
    if (fields.isEmpty()) {
      return List.of();
    }
    ExecutorService workers = Executors.newFixedThreadPool(Math.min(threads, fields.size()));
    try {
      List<Future<PlannedField>> futures = new ArrayList<>();
      for (Field f : fields) {
        futures.add(workers.submit(() -> plan(f)));
      }
      List<PlannedField> plans = new ArrayList<>();
      for (int i = 0; i < fields.size(); i++) {
        plans.add(await(futures, fields, i));
      }
      return plans;
    } finally {
      workers.shutdownNow();
    }
  }

  private PlannedField plan(Field field) {
    long start = System.nanoTime();
    PlannedField plan = planner.apply(field);
    long millis = TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - start);
    return timing ? plan.timed(millis) : plan;
  }

  private PlannedField await(List<Future<PlannedField>> futures, List<Field> fields, int i) {
    while (true) {
      try {
        PlannedField plan = futures.get(i).get(Progress.PERIOD_MILLIS, TimeUnit.MILLISECONDS);
        tell(futures, fields.get(i));
        return plan;
      } catch (TimeoutException e) {
        tell(futures, fields.get(i));
      } catch (ExecutionException e) {
        throw asThrown(e);
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
        throw new IllegalStateException("interrupted", e);
      }
    }
  }

  private void tell(List<Future<PlannedField>> futures, Field field) {
    long done = futures.stream().filter(Future::isDone).count();
    if (done < futures.size()) {
      progress.tell(
          "planning " + field.id() + " … " + done + " of " + futures.size(), System.nanoTime());
    }
  }

  /** What planning threw, so that it is told as if there had been no other thread. */
  private static RuntimeException asThrown(ExecutionException e) {
    if (e.getCause() instanceof Error error) {
      throw error;
    }
    return e.getCause() instanceof RuntimeException r ? r : new IllegalStateException(e);
  }
}
