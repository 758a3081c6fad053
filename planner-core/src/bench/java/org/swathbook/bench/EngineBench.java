package org.swathbook.bench;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.book.file.BookLoader;
import org.swathbook.book.file.BookPaths;
import org.swathbook.book.file.ProgramReader;
import org.swathbook.growth.TraceBuilder;
import org.swathbook.growth.TraceSet;
import org.swathbook.program.Program;
import org.swathbook.season.Kernel;
import org.swathbook.season.PreparedPass;
import org.swathbook.season.Score;
import org.swathbook.season.outcome.SeasonOutcome;
import org.swathbook.season.SeasonWalk;

/** Field ND-1 of the demo book through its ten weather years, with the demo's program. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
public class EngineBench {
  private final Path folder = Path.of(System.getProperty("demo", "demo-data"));
  private final Book book = new BookLoader().load(folder);
  private final Field field = book.findField("ND-1").orElseThrow();
  private final TraceSet traces = TraceBuilder.build(book, field);
  private final Kernel kernel = Kernel.of(book, traces);
  private final Program program =
      ProgramReader.read(
          folder.resolve("programs").resolve("nd-1-two-layers.yaml"), new BookPaths(folder), book);
  private final List<PreparedPass> passes = SeasonWalk.prepare(kernel, program);

  /** What a search does for each draft. */
  @Benchmark
  public Score score() {
    return kernel.score(passes);
  }

  /** The whole walk, with all that is told of it, by a kernel that knows the field. */
  @Benchmark
  public SeasonOutcome walk() {
    return SeasonWalk.walk(book, kernel, program);
  }

  /** The same by a new kernel that has computed nothing yet. */
  @Benchmark
  public SeasonOutcome firstWalk() {
    return SeasonWalk.walk(book, traces, program);
  }

  @Benchmark
  public TraceSet trace() {
    return TraceBuilder.build(book, field);
  }

  @Benchmark
  public Book loadDemoBook() {
    return new BookLoader().load(folder);
  }
}
