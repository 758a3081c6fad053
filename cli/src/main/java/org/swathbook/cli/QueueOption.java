package org.swathbook.cli;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.book.file.BookPaths;
import org.swathbook.check.OpenHours;
import org.swathbook.check.PassQueue;
import org.swathbook.check.QueuedPass;
import org.swathbook.check.QueuedPass.State;
import org.swathbook.cli.report.OrderReport;
import org.swathbook.cli.report.QueueReport;
import org.swathbook.cli.terminal.Progress;
import org.swathbook.cli.work.FieldPrograms;
import org.swathbook.cli.work.PassTimes;
import org.swathbook.cli.work.TankOnItsDay;
import org.swathbook.growth.TraceBuilder;
import org.swathbook.growth.TraceSet;
import org.swathbook.program.SprayJob;
import picocli.CommandLine.Model.CommandSpec;

/** The season as it stands today, field by field, by the programs that the book keeps. */
final class QueueOption {
  private static final Set<State> LOOKED = Set.of(State.CLOSES, State.DUE, State.OPEN);

  private final Flag queue;

  QueueOption(CommandSpec command) {
    queue =
        Flag.option(
            command,
            "--queue",
            "Plan nothing: tell of the programs in the book which passes the journal has, which are"
                + " open today, which close this week and why, the most pressing field first.");
  }

  boolean isGiven() {
    return queue.isGiven();
  }

  QueueReport report(
      Book book, BookPaths paths, List<Field> fields, LocalDate today, Progress progress) {
    FieldPrograms kept = FieldPrograms.read(book, paths, fields, List.of());
    Map<String, List<String>> out = new LinkedHashMap<>();
    List<QueueReport.Row> rows = new ArrayList<>();
    for (Field f : fields) {
      progress.tell("looking at " + f.id() + " …", System.nanoTime());
      FieldPrograms.Kept k = kept.of().get(f.id());
      if (k == null) {
        List<String> several = kept.several().getOrDefault(f.id(), List.of());
        out.computeIfAbsent(
                several.isEmpty()
                    ? "no program in the book; 'plan FIELD --save' keeps one"
                    : "several programs ("
                        + String.join(", ", several)
                        + "); keep one under the field's id",
                w -> new ArrayList<>())
            .add(f.id().value());
        continue;
      }
      TraceSet traces = TraceBuilder.build(book, f, today);
      PassTimes.check(k.written(), traces, book.house().sizePercentile());
      for (QueuedPass p : PassQueue.of(book, traces, k.written().program(), today)) {
        rows.add(new QueueReport.Row(f, k.name(), p, hours(book, paths, f, p, today)));
      }
    }
    return new QueueReport(
        rows,
        out.entrySet().stream()
            .map(e -> new OrderReport.LeftOut(e.getValue(), e.getKey()))
            .toList());
  }

  /** By the forecast of the field's station, where the book has one. */
  private static Optional<OpenHours> hours(
      Book book, BookPaths paths, Field field, QueuedPass pass, LocalDate today) {
    if (!LOOKED.contains(pass.state())) {
      return Optional.empty();
    }
    TankOnItsDay tank = TankOnItsDay.of(book, paths, SprayJob.of(field.id(), today, pass.mix()));
    return tank.forecast()
        .map(f -> OpenHours.of(tank.judge(book, today).judge(tank.job()), f, tank::sun));
  }
}
