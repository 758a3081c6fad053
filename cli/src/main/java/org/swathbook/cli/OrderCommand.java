package org.swathbook.cli;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.book.file.BookPaths;
import org.swathbook.catalog.ProductId;
import org.swathbook.check.Judgement;
import org.swathbook.check.ProgramJudge;
import org.swathbook.check.SeasonSoFar;
import org.swathbook.cli.html.OrderHtml;
import org.swathbook.cli.json.OrderJson;
import org.swathbook.cli.report.JournalNotes;
import org.swathbook.cli.report.OrderReport;
import org.swathbook.cli.report.OrderTable;
import org.swathbook.cli.report.OrderedField;
import org.swathbook.cli.report.OrderedField.InItsPlace;
import org.swathbook.cli.report.PlannedField;
import org.swathbook.cli.report.ReportHead;
import org.swathbook.cli.terminal.ExitCode;
import org.swathbook.cli.terminal.Progress;
import org.swathbook.cli.text.OrderText;
import org.swathbook.cli.work.FieldPlans;
import org.swathbook.cli.work.FieldPrograms;
import org.swathbook.cli.work.PassTimes;
import org.swathbook.cli.xlsx.Workbooks;
import org.swathbook.growth.TraceBuilder;
import org.swathbook.growth.TraceSet;
import org.swathbook.plan.Effort;
import org.swathbook.plan.PlannedProgram;
import org.swathbook.plan.Planner;
import org.swathbook.plan.change.Substitutes;
import org.swathbook.plan.choice.PlanWishes;
import org.swathbook.program.Dose;
import org.swathbook.program.FieldId;
import org.swathbook.rules.Verdict;
import org.swathbook.season.SeasonWalk;
import org.swathbook.season.outcome.PassOutcome;
import org.swathbook.season.outcome.SeasonOutcome;
import org.swathbook.source.NewFiles;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;

/** What to buy for planned programs. */
final class OrderCommand implements Callable<Integer> {
  final CommandSpec spec = CommandSpec.wrapWithoutInspection(this);
  private final AskedFields asked;
  private final Words programs;
  private final Flag plan;
  private final EffortOption effortOption;
  private final Flag substitutes;
  private final BookOption bookOption;
  private final TodayOption todayOption;
  private final SheetOptions sheets;
  private final OutputOption output;

  OrderCommand() {
    spec.name("order")
        .usageMessage()
        .description(
            "Adds up what to buy for the programs that the book keeps: in whole packages, by grower"
                + " and all together, what is on hand used first. Passes that the journal has are"
                + " done and need nothing.",
            "Of a field it takes the program named, else programs/FIELD.yaml, else the only one"
                + " there is; with --plan a field that has none is planned anew. A program that a"
                + " rule blocks is not bought for.",
            "For example: order --program nd-1-two-layers --substitutes",
            "For example: order ND-1 QH-2 --plan --xlsx order.xlsx");
    asked = new AskedFields(spec);
    programs =
        Words.option(
            spec,
            "--program",
            "PROGRAM",
            "Buy for this program of its field: a file, else a name in the folder programs of the"
                + " book. May be given more than once.");
    plan = Flag.option(spec, "--plan", "Plan a field anew that has no program.");
    effortOption = new EffortOption(spec);
    substitutes =
        Flag.option(
            spec,
            "--substitutes",
            "Name what could take the place of each product, should it not be had, with what it"
                + " costs and what the rules say of it in that program.");
    bookOption = new BookOption(spec);
    todayOption = new TodayOption(spec);
    sheets = new SheetOptions(spec);
    output = new OutputOption(spec);
  }

  private final List<OrderedField> ordered = new ArrayList<>();
  private final Map<String, List<String>> leftOut = new LinkedHashMap<>();
  private final List<String> notes = new ArrayList<>();
  private int blocked;

  @Override
  public Integer call() {
    sheets.check(spec.commandLine(), output.json());
    if (effortOption.isGiven() && !plan.isGiven()) {
      throw new ParameterException(spec.commandLine(), "--effort means nothing without --plan");
    }
    LocalDate today = todayOption.read();
    BookPaths paths = bookOption.paths();
    Book book = bookOption.load(paths);
    List<Field> fields = asked.of(book);
    FieldPrograms kept = FieldPrograms.read(book, paths, fields, programs.all());
    Map<FieldId, PlannedField> anew = plan.isGiven() ? anew(book, fields, kept, today) : Map.of();
    Progress progress = new Progress(spec.commandLine().getErr(), System.nanoTime());
    for (Field f : fields) {
      progress.tell("reckoning " + f.id() + " …", System.nanoTime());
      FieldPrograms.Kept k = kept.of().get(f.id());
      if (k != null) {
        kept(book, f, k, today);
      } else if (kept.several().containsKey(f.id())) {
        leaveOut(
            f,
            "several programs ("
                + String.join(", ", kept.several().getOrDefault(f.id(), List.of()))
                + "); name one with --program");
      } else if (anew.containsKey(f.id())) {
        planned(book, anew.get(f.id()), today);
      } else {
        leaveOut(f, "no program in the book; 'plan FIELD --save' keeps one, --plan plans it here");
      }
    }
    OrderReport report =
        OrderReport.of(
            book.prices(),
            ordered,
            leftOut.entrySet().stream()
                .map(e -> new OrderReport.LeftOut(e.getValue(), e.getKey()))
                .toList(),
            substitutes.isGiven(),
            today);
    ReportHead head =
        ReportHead.of(book, ordered.stream().map(OrderedField::field).toList(), today).noted(notes);
    output.print(written(book, head, report));
    return ordered.isEmpty() && blocked > 0 ? ExitCode.BLOCKED : ExitCode.DONE;
  }

  private String written(Book book, ReportHead head, OrderReport report) {
    if (!sheets.isGiven()) {
      return output.json() ? OrderJson.of(book, head, report) : OrderText.of(book, head, report);
    }
    // Put together before anything is written: what can fail there leaves no table behind.
    Optional<byte[]> workbook = sheets.workbook(() -> workbook(head, report));
    NewFiles files = new NewFiles();
    if (sheets.csv() != null) {
      files.put(sheets.csv(), sheets.csv().toString(), OrderTable.lines(report).csv());
    }
    if (sheets.xlsx() != null) {
      files.put(sheets.xlsx(), sheets.xlsx().toString(), workbook.orElseThrow());
    }
    if (sheets.html() != null) {
      HtmlOption.put(files, sheets.html(), OrderHtml.of(book, head, report));
    }
    String beside = OrderText.besideAFile(report);
    files.write();
    return sheets.files().stream().map(HtmlOption::written).collect(Collectors.joining()) + beside;
  }

  private static byte[] workbook(ReportHead head, OrderReport report) {
    return Workbooks.of(
        head.today(), List.of(OrderTable.lines(report), OrderTable.remarks(head, report)));
  }

  private void leaveOut(Field field, String why) {
    leftOut.computeIfAbsent(why, w -> new ArrayList<>()).add(field.id().value());
  }

  private void kept(Book book, Field field, FieldPrograms.Kept kept, LocalDate today) {
    TraceSet traces = TraceBuilder.build(book, field, today);
    PassTimes.check(kept.written(), traces, book.house().sizePercentile());
    SeasonSoFar soFar = SeasonSoFar.of(book, field, today);
    SeasonSoFar.Standing standing = soFar.standing(book, traces, kept.written().program(), today);
    SeasonOutcome outcome = SeasonWalk.walk(book, traces, standing.program());
    notes.addAll(JournalNotes.of(field, soFar));
    standing.notes().forEach(n -> notes.add(field.id() + ": " + n));
    put(
        book,
        traces,
        kept.name(),
        ProgramJudge.judge(book, traces, outcome, today),
        outcome,
        today);
  }

  /** Plans of the fields that have no program, several at the same time. */
  private Map<FieldId, PlannedField> anew(
      Book book, List<Field> fields, FieldPrograms kept, LocalDate today) {
    List<Field> without = fields.stream().filter(f -> !kept.knows(f.id())).toList();
    Effort effort = effortOption.effort();
    return new FieldPlans(
            f -> PlannedField.of(new Planner(book, PlanWishes.NONE, effort).plan(f, today)),
            Runtime.getRuntime().availableProcessors(),
            false,
            spec.commandLine().getErr())
        .of(without).stream().collect(Collectors.toMap(p -> p.field().id(), p -> p));
  }

  private void planned(Book book, PlannedField made, LocalDate today) {
    Field field = made.field();
    if (made.isRefused()) {
      blocked++;
      leaveOut(field, "refused: nothing legal was found; see 'plan FIELD'");
      return;
    }
    PlannedProgram first = made.programs().get(0);
    notes.addAll(JournalNotes.of(field, SeasonSoFar.of(book, field, today)));
    put(
        book,
        TraceBuilder.build(book, field, today),
        "planned anew" + (first.recommended() ? "" : ", though not recommended"),
        first.judgement(),
        first.outcome(),
        today);
  }

  private void put(
      Book book,
      TraceSet traces,
      String program,
      Judgement judgement,
      SeasonOutcome outcome,
      LocalDate today) {
    if (judgement.verdict() == Verdict.BLOCKED) {
      blocked++;
      leaveOut(traces.field(), program + " is blocked by a rule; 'season PROGRAM' says which");
      return;
    }
    ordered.add(
        new OrderedField(
            traces.field(),
            program,
            judgement,
            outcome,
            substitutes.isGiven() ? inPlaces(book, traces, outcome, today) : List.of()));
  }

  private List<InItsPlace> inPlaces(
      Book book, TraceSet traces, SeasonOutcome outcome, LocalDate today) {
    Substitutes all = new Substitutes(book, traces, outcome, today);
    Progress progress = new Progress(spec.commandLine().getErr(), System.nanoTime());
    List<InItsPlace> out = new ArrayList<>();
    for (PassOutcome pass : outcome.passes()) {
      for (Dose d : OrderReport.isToCome(pass, today) ? pass.mix().doses() : List.<Dose>of()) {
        ProductId product = d.product().id();
        progress.tell("seeking what may stand for " + product + " …", System.nanoTime());
        out.add(
            new InItsPlace(
                pass.index() + 1,
                d,
                all.failing(pass.planned(), d),
                all.of(pass.planned(), product)));
      }
    }
    return out;
  }
}
