package org.swathbook.cli;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.book.file.BookPaths;
import org.swathbook.book.file.WrittenProgram;
import org.swathbook.check.SeasonSoFar;
import org.swathbook.cli.html.CompareHtml;
import org.swathbook.cli.html.QueueHtml;
import org.swathbook.cli.json.CompareJson;
import org.swathbook.cli.json.KeepJson;
import org.swathbook.cli.json.PlanJson;
import org.swathbook.cli.json.QueueJson;
import org.swathbook.cli.report.ComparedField;
import org.swathbook.cli.report.JournalNotes;
import org.swathbook.cli.report.KeptField;
import org.swathbook.cli.report.PlannedField;
import org.swathbook.cli.report.QueueReport;
import org.swathbook.cli.report.ReportHead;
import org.swathbook.cli.terminal.ExitCode;
import org.swathbook.cli.terminal.Progress;
import org.swathbook.cli.text.CompareText;
import org.swathbook.cli.text.KeepText;
import org.swathbook.cli.text.PlanText;
import org.swathbook.cli.text.QueueText;
import org.swathbook.cli.work.FieldPlans;
import org.swathbook.cli.work.SavedPrograms;
import org.swathbook.plan.FieldPlan;
import org.swathbook.plan.LiftedLimit;
import org.swathbook.plan.Planner;
import org.swathbook.plan.WhyNot;
import org.swathbook.plan.choice.PlanWishes;
import org.swathbook.program.FieldId;
import org.swathbook.program.Program;
import org.swathbook.source.NewFiles;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;

/** Plans the season of fields. */
final class PlanCommand implements Callable<Integer> {
  final CommandSpec spec = CommandSpec.wrapWithoutInspection(this);
  private final AskedFields askedFields;
  private final BookOption bookOption;
  private final TodayOption todayOption;
  private final OutputOption output;
  private final PageOptions pages;
  private final WishOptions wishOptions;
  private final CompareOption compareOption;
  private final KeepOption keepOption;
  private final QueueOption queueOption;
  private final EffortOption effortOption;
  private final Flag save;
  private final Flag force;
  private final Flag timing;
  private final Value<Integer> threads;

  PlanCommand() {
    spec.name("plan")
        .usageMessage()
        .description(
            "Plans fields: the program recommended for each, others to compare, and why.",
            "For example: plan ND-1 --without dicamba --without 'site 14' --max-passes 3 --budget"
                + " 70",
            "For example: plan --queue");
    askedFields = new AskedFields(spec);
    bookOption = new BookOption(spec);
    todayOption = new TodayOption(spec);
    output = new OutputOption(spec);
    pages = new PageOptions(spec);
    wishOptions = new WishOptions(spec);
    compareOption = new CompareOption(spec);
    keepOption = new KeepOption(spec);
    queueOption = new QueueOption(spec);
    effortOption = new EffortOption(spec);
    save =
        Flag.option(
            spec,
            "--save",
            "Write the first program of each field to programs/FIELD.yaml of the book, never over"
                + " another.");
    force =
        Flag.option(spec, "--force", "With --save, --html or --handout: write over what is there.");
    timing = Flag.option(spec, "--timing", "Tell how long each field took.");
    threads =
        Value.option(
            spec,
            "--threads",
            "N",
            Integer.class,
            "Fields planned at the same time; the processors of the machine when left out.");
  }

  @Override
  public Integer call() {
    int threads = threads();
    checkTogether();
    pages.check(spec.commandLine(), output.json(), force.isGiven());
    Asked asked = read();
    if (queueOption.isGiven()) {
      return queue(asked);
    }
    if (compareOption.isGiven()) {
      return compared(asked);
    }
    return keepOption.isGiven() ? kept(asked) : planned(asked, threads);
  }

  /** What a plan is made from, read. */
  private record Asked(
      BookPaths paths, Book book, List<Field> fields, PlanWishes wishes, LocalDate today) {

    /** The head of a report on some of the fields, with what the journal has of them. */
    ReportHead head(List<Field> of) {
      List<String> made = new ArrayList<>();
      of.forEach(f -> made.addAll(JournalNotes.of(f, SeasonSoFar.of(book, f, today))));
      return ReportHead.of(book, of, today)
          .noted(made)
          .asked(wishes.words(book.catalog(), book.house()));
    }
  }

  private Asked read() {
    LocalDate today = todayOption.read();
    BookPaths paths = bookOption.paths();
    Book book = bookOption.load(paths);
    List<Field> fields = askedFields.of(book);
    PlanWishes wishes = wishOptions.read(book.catalog());
    wishOptions.asked(book.catalog());
    return new Asked(paths, book, fields, wishes, today);
  }

  private int threads() {
    int out = threads.or(Runtime.getRuntime().availableProcessors());
    if (out < 1) {
      throw wrong("--threads must be 1 or more");
    }
    return out;
  }

  /** Which options mean nothing together. */
  private void checkTogether() {
    if (force.isGiven() && !save.isGiven() && !pages.isGiven()) {
      throw wrong("--force means nothing without --save, --html or --handout");
    }
    if (pages.isGiven() && keepOption.isGiven()) {
      throw wrong("--keep is told as text or --json; it goes without --html and --handout");
    }
    if (pages.handout() != null && compareOption.isGiven()) {
      throw wrong("--handout is of one program a field; it goes without --compare");
    }
    if (queueOption.isGiven()
        && (save.isGiven()
            || timing.isGiven()
            || compareOption.isGiven()
            || keepOption.isGiven()
            || wishOptions.isGiven()
            || effortOption.isGiven()
            || pages.handout() != null)) {
      throw wrong(
          "--queue plans nothing; it goes with fields, --today, --json, --html and --force alone");
    }
  }

  private ParameterException wrong(String what) {
    return new ParameterException(spec.commandLine(), what);
  }

  private int planned(Asked asked, int threads) {
    Book book = asked.book();
    SavedPrograms saved = new SavedPrograms(asked.paths(), force.isGiven());
    if (save.isGiven()) {
      saved.checkFree(asked.fields(), pages.files());
    }
    Map<FieldId, Program> earlier = pages.earlier(book, asked.paths(), asked.fields());
    FieldPlans planning =
        new FieldPlans(
            field -> planned(asked, field), threads, timing.isGiven(), spec.commandLine().getErr());
    List<PlannedField> plans = planning.of(asked.fields());
    ReportHead head = asked.head(asked.fields());
    NewFiles files = new NewFiles();
    String told;
    if (pages.isGiven()) {
      files.putAll(pages.made(book, head, plans, earlier));
      told = pages.written();
    } else {
      told = output.json() ? PlanJson.of(book, head, plans) : PlanText.of(book, head, plans);
    }
    // Once nothing else can go wrong, and what belongs to the book last.
    SavedPrograms.Written programs = saved.of(save.isGiven() ? plans : List.of());
    files.putAll(programs.files()).write();
    programs.lines().forEach(spec.commandLine().getErr()::println);
    output.print(told);
    return plans.stream().allMatch(PlannedField::isRefused) ? ExitCode.BLOCKED : ExitCode.DONE;
  }

  private PlannedField planned(Asked asked, Field field) {
    Book book = asked.book();
    FieldPlan plan =
        new Planner(book, asked.wishes(), effortOption.effort())
            .withCeiling()
            .plan(field, asked.today());
    pages.keep(book, plan);
    WhyNot.Asker asker =
        new WhyNot.Asker(book, asked.wishes(), plan, effortOption.effort(), asked.today());
    return PlannedField.of(
        plan,
        LiftedLimit.of(book, asked.wishes(), plan, effortOption.effort(), asked.today()),
        wishOptions.asked(book.catalog()).stream().map(asker::whyNot).toList());
  }

  private int queue(Asked asked) {
    Book book = asked.book();
    Progress progress = new Progress(spec.commandLine().getErr(), System.nanoTime());
    QueueReport report =
        queueOption.report(book, asked.paths(), asked.fields(), asked.today(), progress);
    ReportHead head =
        ReportHead.of(
            book,
            asked.fields().stream()
                .filter(f -> report.rows().stream().anyMatch(r -> r.field().equals(f)))
                .toList(),
            asked.today());
    if (pages.html() != null) {
      output.print(HtmlOption.write(pages.html(), QueueHtml.of(book, head, report)));
    } else {
      output.print(
          output.json() ? QueueJson.of(book, head, report) : QueueText.of(book, head, report));
    }
    return ExitCode.DONE;
  }

  private int kept(Asked asked) {
    if (timing.isGiven() || wishOptions.asksWhyNot()) {
      throw wrong("--keep goes without --compare, --timing and --why-not");
    }
    Book book = asked.book();
    SavedPrograms saved = new SavedPrograms(asked.paths(), force.isGiven());
    WrittenProgram standing =
        keepOption.read(book, asked.paths(), askedFields.typed(), asked.fields());
    Field field = book.findField(standing.program().field().value()).orElseThrow();
    if (save.isGiven()) {
      saved.checkFree(List.of(field), List.of());
    }
    KeptField kept =
        keepOption.keep(
            book, field, standing, asked.wishes(), effortOption.effort(), asked.today());
    ReportHead head = asked.head(List.of(field));
    String told = output.json() ? KeepJson.of(book, head, kept) : KeepText.of(book, head, kept);
    if (save.isGiven()) {
      SavedPrograms.Written written = saved.of(kept);
      written.files().write();
      written.lines().forEach(spec.commandLine().getErr()::println);
    }
    output.print(told);
    return kept.isRefused() ? ExitCode.BLOCKED : ExitCode.DONE;
  }

  private int compared(Asked asked) {
    if (save.isGiven() || timing.isGiven() || keepOption.isGiven() || wishOptions.asksWhyNot()) {
      throw wrong("--compare goes without --save, --timing, --keep and --why-not");
    }
    compareOption.checkBest(effortOption);
    Book book = asked.book();
    ComparedField compared =
        compareOption.compare(
            book,
            asked.paths(),
            asked.fields(),
            asked.wishes(),
            effortOption.effort(),
            asked.today());
    ReportHead head = asked.head(asked.fields());
    if (pages.html() != null) {
      output.print(HtmlOption.write(pages.html(), CompareHtml.of(book, head, compared)));
    } else {
      output.print(
          output.json()
              ? CompareJson.of(book, head, compared)
              : CompareText.of(book, head, compared));
    }
    return compared.isBlocked() ? ExitCode.BLOCKED : ExitCode.DONE;
  }
}
