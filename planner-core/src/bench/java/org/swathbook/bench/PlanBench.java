package org.swathbook.bench;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.swathbook.book.Book;
import org.swathbook.book.file.BookLoader;
import org.swathbook.plan.Effort;
import org.swathbook.plan.FieldPlan;
import org.swathbook.plan.Planner;
import org.swathbook.plan.choice.PlanWishes;

/** A field planned whole, by a program that has planned before: all named programs and the front. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 2)
@Measurement(iterations = 5)
public class PlanBench {
  private static final LocalDate WINTER = LocalDate.of(2027, 3, 1);

  private final Book book =
      new BookLoader().load(Path.of(System.getProperty("demo", "demo-data")));

  /** A soybean field with a resistant pigweed, a corn field and one of sorghum. */
  @Param({"ND-1", "ND-2", "OB-3"})
  public String field = "";

  /** A first look, and what a field is planned by. */
  @Param({"QUICK", "USUAL"})
  public Effort effort = Effort.USUAL;

  @Benchmark
  public FieldPlan plan() {
    return new Planner(book, PlanWishes.NONE, effort).plan(book.findField(field).orElseThrow(), WINTER);
  }
}
