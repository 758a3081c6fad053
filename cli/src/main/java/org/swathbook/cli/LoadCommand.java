package org.swathbook.cli;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.swathbook.book.Book;
import org.swathbook.book.file.BookPaths;
import org.swathbook.book.file.SeasonDates;
import org.swathbook.check.JudgedMix;
import org.swathbook.cli.html.LoadHtml;
import org.swathbook.cli.json.LoadJson;
import org.swathbook.cli.report.ReportHead;
import org.swathbook.cli.terminal.ExitCode;
import org.swathbook.cli.text.LoadText;
import org.swathbook.cli.work.NamedJob;
import org.swathbook.cli.work.TankOnItsDay;
import org.swathbook.measure.MeasureException;
import org.swathbook.measure.Numbers;
import org.swathbook.program.Mix;
import org.swathbook.program.SprayJob;
import org.swathbook.rules.ActiveUse;
import org.swathbook.rules.Verdict;
import org.swathbook.source.Mark;
import org.swathbook.source.Problems;
import org.swathbook.source.ProblemsException;
import org.swathbook.tank.LoadSheet;
import org.swathbook.tank.LoadSplit;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;

/** The sheet by which a sprayer is filled. */
final class LoadCommand implements Callable<Integer> {
  final CommandSpec spec = CommandSpec.wrapWithoutInspection(this);
  private final NamedTank which;
  private final Value<Double> acres;
  private final Value<Double> tankGallons;
  private final JobOptions typed;
  private final ReportOptions options;

  LoadCommand() {
    spec.name("load")
        .usageMessage()
        .description(
            "Prints the load sheet of a tank mix: how much of what goes into each load and in which"
                + " order, water, jar test, clean-out, re-entry.",
            "With several mixes: the order in which one sprayer makes them with least clean-out,"
                + " and what stands between.",
            "The tank is judged first as by 'check'; one that is blocked gets its verdict and no"
                + " load. Of several mixes those that are blocked are marked.",
            "For example: load nd-1-june --acres 60 --tank 800",
            "For example: load nd-1-two-layers --pass 2 --date 2027-06-06 --tank 1200",
            "For example: load --field ND-1 --date 2027-06-08 --volume 15 --tank 1200"
                + " \"glyphosate-4.5sl 32 fl oz/acre\"",
            "For example: load nd-1-june second.yaml third.yaml");
    which = new NamedTank(spec);
    acres =
        Value.option(
            spec,
            "--acres",
            "N",
            Double.class,
            "Acres to spray; those of the field when left out.");
    tankGallons =
        Value.option(
            spec,
            "--tank",
            "GALLONS",
            Double.class,
            "What the tank holds; as the mix says when left out.");
    typed = new JobOptions(spec);
    options = ReportOptions.of(spec);
  }

  @Override
  public Integer call() {
    LocalDate today = options.today().read();
    checkNumber("--acres", acres.value(), "76");
    checkNumber("--tank", tankGallons.value(), "1200");
    checkCall();
    options.html().checkFree();
    BookPaths paths = options.book().paths();
    Book book = options.book().load(paths);
    if (isDay()) {
      LoadOrder order = LoadOrder.of(book, paths, which.words(), today, options.isJson());
      options.output().print(order.report());
      return order.isBlocked() ? ExitCode.BLOCKED : ExitCode.DONE;
    }
    NamedJob named = named(book, paths, today);
    TankOnItsDay tank = TankOnItsDay.of(book, paths, named.job());
    double on = acres.or(tank.field().acres());
    double holds = checkTank(named.source(), tank.job(), on);
    JudgedMix judged = tank.judge(book, today).judge(tank.job());
    Optional<LoadSheet> sheet = sheet(book, named.source(), judged, on, holds);
    ReportHead head = ReportHead.of(book, List.of(tank.field()), today);
    options.print(
        () -> LoadHtml.of(book, head, tank.field(), judged, sheet),
        () -> LoadJson.of(book, head, tank.field(), judged, sheet),
        () -> LoadText.of(book, head, tank.field(), judged, sheet));
    return CheckCommand.exit(judged.judgement());
  }

  private void checkNumber(String option, @Nullable Double value, String example) {
    TypedNumber.wrong(option, value, example)
        .ifPresent(
            what -> {
              throw new ParameterException(spec.commandLine(), what);
            });
  }

  private void checkCall() {
    if (which.words().isEmpty()) {
      throw wrong("nothing to load: name a mix, a program with --pass, or --field with products");
    }
    if (options.isPage() ? options.isJson() : options.html().force()) {
      throw wrong("--html writes a page in place of --json; --force goes with --html");
    }
    if (isDay()
        && (which.pass() != null || acres.isGiven() || tankGallons.isGiven() || options.isPage())) {
      throw wrong(
          "several mixes are put in order; their sheets, with --acres, --tank, --pass and --html,"
              + " are made one at a time, and products typed here need --field");
    }
    if (typed.field() != null && which.pass() != null) {
      throw wrong("--pass is of a program; --field is for products typed here");
    }
    if (typed.field() == null && which.pass() == null && typed.hasDateOrVolume()) {
      throw wrong(
          "--date and --volume belong to products typed here or a pass; a mix file says them"
              + " itself");
    }
    if (typed.volumeIsWrong()) {
      throw wrong("--volume must be above zero, as 15");
    }
  }

  /** Several mixes are the loads of one sprayer and day. */
  private boolean isDay() {
    return typed.field() == null && which.words().size() > 1;
  }

  private ParameterException wrong(String what) {
    return new ParameterException(spec.commandLine(), what);
  }

  private NamedJob named(Book book, BookPaths paths, LocalDate today) {
    LocalDate date = typed.dateOr(today);
    if (typed.field() != null) {
      return NamedJob.typed(book, typed.field(), date, typed.volume(), which.words(), "load");
    }
    if (which.pass() == null) {
      return NamedJob.mix(book, paths, which.words().get(0));
    }
    SeasonDates.check(book.season(), date, Mark.startOf("--date"));
    NamedJob named = NamedJob.pass(book, paths, which.words().get(0), which.pass(), date);
    Mix mix = named.job().mix();
    if (typed.volume().isEmpty()) {
      return named;
    }
    if (mix.gallonsPerAcre().isPresent()) {
      throw ProblemsException.of(
          Mark.startOf("--volume"),
          named.name()
              + " says itself that it is sprayed at "
              + Numbers.decimals(mix.gallonsPerAcre().getAsDouble(), 1)
              + " gal/acre",
          "leave --volume out, or change the program");
    }
    return new NamedJob(
        named.job().with(new Mix(mix.doses(), mix.adjuvants(), typed.volume())),
        named.source(),
        named.name());
  }

  /** What the tank holds, gallons; every fact that a load needs is there. */
  private double checkTank(String name, SprayJob job, double on) {
    Problems problems = new Problems();
    if (job.mix().gallonsPerAcre().isEmpty()) {
      problems.add(
          Mark.startOf(name),
          "the mix names no spray volume, and a load needs one",
          isFile()
              ? "write for example 'carrier: {volume: 15 gal/acre}'"
              : "call for example with --volume 15");
    }
    double holds = tankGallons.or(job.tank().gallons().orElse(Double.NaN));
    if (!(holds > 0)) {
      problems.add(
          Mark.startOf(name),
          "the mix does not say what the tank holds",
          isFile()
              ? "write for example 'sprayer: {tank: 1200 gal}', or call with --tank 1200"
              : "call for example with --tank 1200");
    }
    problems.throwIfAny();
    double perAcre = job.mix().gallonsPerAcre().getAsDouble();
    if (!(LoadSplit.count(on, perAcre, holds) <= LoadSplit.MOST_LOADS)) {
      problems.add(
          Mark.startOf(name),
          "these acres take more than " + LoadSplit.MOST_LOADS + " loads of this tank",
          "look at acres, spray volume and tank");
    }
    problems.throwIfAny();
    return holds;
  }

  /** Whether a file of the book holds the tank, with all that belongs to it. */
  private boolean isFile() {
    return typed.field() == null && which.pass() == null;
  }

  /** Empty for a tank that may not be sprayed. */
  private static Optional<LoadSheet> sheet(
      Book book, String name, JudgedMix judged, double on, double holds) {
    if (judged.judgement().verdict() == Verdict.BLOCKED) {
      return Optional.empty();
    }
    try {
      return Optional.of(
          LoadSheet.of(
              book,
              judged.job(),
              judged.facts().actives().stream().map(ActiveUse::partner).toList(),
              on,
              holds));
    } catch (MeasureException e) {
      Problems problems = new Problems();
      problems.add(Mark.startOf(name), e, "crop-oil 1 % v/v");
      throw new ProblemsException(problems);
    }
  }
}
