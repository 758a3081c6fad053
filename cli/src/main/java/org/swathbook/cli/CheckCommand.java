package org.swathbook.cli;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.book.file.BookPaths;
import org.swathbook.book.file.MixReader;
import org.swathbook.check.JudgedMix;
import org.swathbook.check.Judgement;
import org.swathbook.check.MendedMix;
import org.swathbook.check.MixJudge;
import org.swathbook.check.MixMending;
import org.swathbook.check.OpenHours;
import org.swathbook.cli.html.CheckHtml;
import org.swathbook.cli.json.CheckJson;
import org.swathbook.cli.report.ReportHead;
import org.swathbook.cli.terminal.ExitCode;
import org.swathbook.cli.text.CheckText;
import org.swathbook.cli.work.NamedJob;
import org.swathbook.cli.work.TankOnItsDay;
import org.swathbook.cli.work.WalkedProgram;
import org.swathbook.program.SprayJob;
import org.swathbook.rules.Verdict;
import org.swathbook.season.outcome.SeasonOutcome;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;

/** Judges a tank before it is loaded, or a whole program. */
final class CheckCommand implements Callable<Integer> {
  final CommandSpec spec = CommandSpec.wrapWithoutInspection(this);
  private final Words words;
  private final Value<String> program;
  private final JobOptions typed;
  private final SprayingOptions spraying;
  private final ReportOptions options;

  CheckCommand() {
    spec.name("check")
        .usageMessage()
        .description(
            "Judges a tank mix for a field and a day before it is loaded: what stands against it,"
                + " whose limit that is, and what would clear it.",
            "For example: check nd-1-june",
            "For example: check --field ND-1 --date 2027-06-08 \"glyphosate-4.5sl 32 fl oz/acre\""
                + " \"ammonium-sulfate 8.5 lb/100 gal\"",
            "With --program the whole program is judged.");
    words =
        Words.positional(
            spec,
            "MIX",
            "A file, else a name in the folder mixes of the book; with --field the products and"
                + " adjuvants of the tank, each with its rate.");
    program =
        Value.option(
            spec,
            "--program",
            "PROGRAM",
            String.class,
            "Judge this program: a file, else a name in the folder programs of the book.");
    typed = new JobOptions(spec);
    spraying = new SprayingOptions(spec);
    options = ReportOptions.of(spec);
  }

  @Override
  public Integer call() {
    LocalDate today = options.today().read();
    checkCall();
    options.checkForm();
    BookOption from = options.book();
    BookPaths paths = from.paths();
    Book book = asked(paths).map(f -> from.loadFor(paths, f)).orElseGet(() -> from.load(paths));
    return program.value() != null
        ? program(book, paths, program.value(), today)
        : mix(book, paths, today);
  }

  /** The one field that a tank is for, as typed. */
  private Optional<String> asked(BookPaths paths) {
    if (typed.field() != null || program.isGiven()) {
      return Optional.ofNullable(typed.field());
    }
    return MixReader.fieldIn(paths.find(BookPaths.Kind.MIX, words.all().get(0)), paths);
  }

  private void checkCall() {
    boolean ofTank = typed.field() != null || typed.hasDateOrVolume() || spraying.isGiven();
    if (program.isGiven() && (ofTank || words.isGiven())) {
      throw wrong("--program judges a program alone; leave out what belongs to a tank");
    }
    if (!program.isGiven() && typed.field() == null && words.all().size() != 1) {
      throw wrong(
          !words.isGiven()
              ? "nothing to check: name a mix, or --field with products, or --program"
              : "one mix at a time; products typed here need --field");
    }
    if (!program.isGiven() && typed.field() == null && typed.hasDateOrVolume()) {
      throw wrong("--date and --volume belong to a tank typed here; a mix file says them itself");
    }
    if (typed.field() != null && !words.isGiven()) {
      throw wrong("no product: write for example \"glyphosate-4.5sl 32 fl oz/acre\"");
    }
    if (typed.volumeIsWrong()) {
      throw wrong("--volume must be above zero, as 15");
    }
    if (spraying.wrong().isPresent()) {
      throw wrong(spraying.wrong().get());
    }
  }

  private ParameterException wrong(String what) {
    return new ParameterException(spec.commandLine(), what);
  }

  private int mix(Book book, BookPaths paths, LocalDate today) {
    NamedJob named =
        typed.field() != null
            ? NamedJob.typed(
                book, typed.field(), typed.dateOr(today), typed.volume(), words.all(), "check")
            : NamedJob.mix(book, paths, words.all().get(0));
    SprayJob job = spraying.over(named.job());
    TankOnItsDay tank = TankOnItsDay.of(book, paths, job);
    MixJudge judge = tank.judge(book, today);
    JudgedMix judged = judge.judge(tank.job());
    Optional<MendedMix> mended = MixMending.of(judge, judged);
    Optional<OpenHours> open = tank.forecast().map(f -> OpenHours.of(judged, f, tank::sun));
    ReportHead head = ReportHead.of(book, List.of(tank.field()), today);
    options.print(
        () -> CheckHtml.of(book, head, tank.field(), judged, mended, open),
        () -> CheckJson.of(book, head, tank.field(), judged, mended, open),
        () -> CheckText.of(book, head, tank.field(), judged, mended, open));
    return exit(judged.judgement());
  }

  private int program(Book book, BookPaths paths, String name, LocalDate today) {
    WalkedProgram walked = WalkedProgram.of(book, paths, name, today);
    Field where = walked.field();
    SeasonOutcome outcome = walked.outcome();
    Judgement judgement = walked.judgement();
    ReportHead head = walked.head();
    options.print(
        () -> CheckHtml.ofProgram(book, head, where, outcome, judgement),
        () -> CheckJson.ofProgram(book, head, where, outcome, judgement),
        () -> CheckText.ofProgram(book, head, where, outcome, judgement));
    return exit(judgement);
  }

  static int exit(Judgement judgement) {
    return judgement.verdict() == Verdict.BLOCKED ? ExitCode.BLOCKED : ExitCode.DONE;
  }
}
