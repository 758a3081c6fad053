package org.swathbook.cli;

import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.book.file.BookPaths;
import org.swathbook.book.file.ProgramReader;
import org.swathbook.book.file.WrittenProgram;
import org.swathbook.check.AddedSite;
import org.swathbook.check.Judgement;
import org.swathbook.check.ProgramJudge;
import org.swathbook.check.SeasonSoFar;
import org.swathbook.cli.html.SeasonHtml;
import org.swathbook.cli.json.SeasonJson;
import org.swathbook.cli.report.JournalNotes;
import org.swathbook.cli.report.ReportHead;
import org.swathbook.cli.report.SeasonCalendar;
import org.swathbook.cli.text.SeasonText;
import org.swathbook.growth.TraceBuilder;
import org.swathbook.growth.TraceSet;
import org.swathbook.program.Program;
import org.swathbook.rules.Verdict;
import org.swathbook.season.SeasonOutcome;
import org.swathbook.season.SeasonWalk;
import org.swathbook.stress.Situation;
import org.swathbook.stress.StressResult;
import org.swathbook.stress.StressTest;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Walks one program through every weather year. */
@Command(
    addMethodSubcommands = false,
    name = "season",
    description = {
      "Walks one program through every weather year and judges it.",
      "With --stress also: no rain or a downpour after the first layer, a late sprayer, late planting, a"
          + " product missing, one more resistance: what breaks, by how much, and what then helps.",
      "For example: season nd-1 --stress",
      "For example: season nd-1-two-layers --html season.html"
    })
final class SeasonCommand implements Callable<Integer> {
  @Spec CommandSpec spec;

  @Parameters(
      paramLabel = "PROGRAM",
      description = "A file, else a name in the folder programs of the book.")
  @Nullable String program;

  @Option(
      names = "--stress",
      description = "Walk it again when the season goes wrong, and look for what then helps.")
  boolean stress;

  @Mixin BookOption bookOption = new BookOption();
  @Mixin TodayOption todayOption = new TodayOption();
  @Mixin HtmlOption html = new HtmlOption();
  @Mixin OutputOption output = new OutputOption();

  @Override
  public Integer call() {
    LocalDate today = todayOption.read();
    html.check(spec.commandLine(), output.json);
    if (html.html != null && stress) {
      throw new ParameterException(
          spec.commandLine(), "--stress is told as text and with --json, not on a page");
    }
    BookPaths paths = bookOption.paths();
    Book book = bookOption.load(paths);
    WrittenProgram written =
        ProgramReader.readWritten(
            paths.find(BookPaths.Kind.PROGRAM, String.valueOf(program)), paths, book);
    Program read = written.program();
    Field field = book.findField(read.field().value()).orElseThrow();
    TraceSet traces = TraceBuilder.build(book, field, today);
    PassTimes.check(written, traces, book.house().sizePercentile());
    SeasonSoFar soFar = SeasonSoFar.of(book, field, today);
    SeasonSoFar.Standing standing = soFar.standing(book, traces, read, today);
    SeasonOutcome outcome = SeasonWalk.walk(book, traces, standing.program());
    Judgement judgement =
        AddedSite.named(
            book,
            traces,
            standing.program(),
            outcome,
            ProgramJudge.judge(book, traces, outcome, today),
            today);
    List<StressResult> stressed =
        stress ? stressed(Situation.of(book, traces, outcome, judgement, today)) : List.of();
    ReportHead head =
        ReportHead.of(book, List.of(field), today)
            .noted(JournalNotes.of(field, soFar))
            .noted(standing.notes());
    if (html.html != null) {
      output.print(
          HtmlOption.write(
              html.html,
              SeasonHtml.of(
                  book,
                  head,
                  field,
                  outcome,
                  judgement,
                  SeasonCalendar.of(book, traces, outcome))));
      return exit(judgement);
    }
    output.print(
        output.json
            ? SeasonJson.of(
                book,
                head,
                field,
                outcome,
                judgement,
                SeasonCalendar.of(book, traces, outcome),
                stressed)
            : SeasonText.of(book, head, field, outcome, judgement, stressed));
    return exit(judgement);
  }

  private static int exit(Judgement judgement) {
    return judgement.verdict() == Verdict.BLOCKED ? ExitCode.BLOCKED : ExitCode.DONE;
  }

  private List<StressResult> stressed(Situation plain) {
    Progress progress = new Progress(spec.commandLine().getErr(), System.nanoTime());
    return StressTest.of(
        plain, name -> progress.tell("asking " + name.replace('-', ' ') + " …", System.nanoTime()));
  }
}
