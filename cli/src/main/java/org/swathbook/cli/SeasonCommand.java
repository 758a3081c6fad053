package org.swathbook.cli;

import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.book.file.BookPaths;
import org.swathbook.check.Judgement;
import org.swathbook.cli.html.SeasonHtml;
import org.swathbook.cli.json.SeasonJson;
import org.swathbook.cli.report.ReportHead;
import org.swathbook.cli.report.SeasonCalendar;
import org.swathbook.cli.terminal.Progress;
import org.swathbook.cli.text.SeasonText;
import org.swathbook.cli.work.WalkedProgram;
import org.swathbook.growth.TraceSet;
import org.swathbook.season.outcome.SeasonOutcome;
import org.swathbook.stress.Situation;
import org.swathbook.stress.StressResult;
import org.swathbook.stress.StressTest;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;

/** Walks one program through every weather year. */
final class SeasonCommand implements Callable<Integer> {
  final CommandSpec spec = CommandSpec.wrapWithoutInspection(this);
  private final Value<String> program;
  private final Flag stress;
  private final ReportOptions options;

  SeasonCommand() {
    spec.name("season")
        .usageMessage()
        .description(
            "Walks one program through every weather year and judges it.",
            "With --stress also: no rain or a downpour after the first layer, a late sprayer, late"
                + " planting, a product missing, one more resistance: what breaks, by how much, and"
                + " what then helps.",
            "For example: season nd-1 --stress",
            "For example: season nd-1-two-layers --html season.html");
    program =
        Value.requiredPositional(
            spec,
            "PROGRAM",
            String.class,
            "A file, else a name in the folder programs of the book.");
    stress =
        Flag.option(
            spec,
            "--stress",
            "Walk it again when the season goes wrong, and look for what then helps.");
    options = ReportOptions.of(spec);
  }

  @Override
  public Integer call() {
    LocalDate today = options.today().read();
    options.checkForm();
    if (options.isPage() && stress.isGiven()) {
      throw new ParameterException(
          spec.commandLine(), "--stress is told as text and with --json, not on a page");
    }
    BookPaths paths = options.book().paths();
    Book book = options.book().load(paths);
    WalkedProgram walked = WalkedProgram.of(book, paths, program.required(), today);
    Field field = walked.field();
    TraceSet traces = walked.traces();
    SeasonOutcome outcome = walked.outcome();
    Judgement judgement = walked.judgement();
    ReportHead head = walked.head();
    List<StressResult> stressed =
        stress.isGiven()
            ? stressed(Situation.of(book, traces, outcome, judgement, today))
            : List.of();
    Supplier<SeasonCalendar> calendar = () -> SeasonCalendar.of(book, traces, outcome);
    options.print(
        () -> SeasonHtml.of(book, head, field, outcome, judgement, calendar.get()),
        () -> SeasonJson.of(book, head, field, outcome, judgement, calendar.get(), stressed),
        () -> SeasonText.of(book, head, field, outcome, judgement, stressed));
    return CheckCommand.exit(judgement);
  }

  private List<StressResult> stressed(Situation plain) {
    Progress progress = new Progress(spec.commandLine().getErr(), System.nanoTime());
    return StressTest.of(
        plain, name -> progress.tell("asking " + name.replace('-', ' ') + " …", System.nanoTime()));
  }
}
