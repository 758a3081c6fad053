package org.swathbook.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Function;
import org.swathbook.book.Application;
import org.swathbook.book.Book;
import org.swathbook.book.FederalRecord;
import org.swathbook.book.Field;
import org.swathbook.book.file.BookPaths;
import org.swathbook.book.file.Correction;
import org.swathbook.book.file.JournalImport;
import org.swathbook.book.file.JournalWriter;
import org.swathbook.book.file.MixWords;
import org.swathbook.book.file.NewPass;
import org.swathbook.book.file.PassCells;
import org.swathbook.check.Judgement;
import org.swathbook.cli.json.ImportJson;
import org.swathbook.cli.json.RecordJson;
import org.swathbook.cli.report.ImportedPass;
import org.swathbook.cli.report.RecordedPass;
import org.swathbook.cli.report.ReportHead;
import org.swathbook.cli.terminal.ExitCode;
import org.swathbook.cli.text.ImportText;
import org.swathbook.cli.text.RecordText;
import org.swathbook.cli.work.NamedJob;
import org.swathbook.cli.work.TankOnItsDay;
import org.swathbook.program.SprayJob;
import org.swathbook.source.Mark;
import org.swathbook.source.ProblemsException;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;

/** Writes into the journal what was sprayed. */
final class RecordCommand implements Callable<Integer> {
  final CommandSpec spec = CommandSpec.wrapWithoutInspection(this);
  private final NamedTank which;
  private final Value<String> corrects;
  private final Flag voids;
  private final Value<String> id;
  private final Flag again;
  private final Value<Path> table;
  private final Value<Path> map;
  private final JournalOutput journal;
  private final TypedTank typed;
  private final RecordOptions facts;
  private final BookOption bookOption;
  private final TodayOption todayOption;
  private final OutputOption output;

  RecordCommand() {
    spec.name("record")
        .usageMessage()
        .description(
            "Writes into the journal what was sprayed, a line a product, and prints the id of the"
                + " pass.",
            "For example: record nd-1-june --end 13:10 --applicator 'A. Person' --cert 4101",
            "For example: record nd-1-two-layers --pass 1 --date 2027-05-11",
            "For example: record --field ND-1 --date 2027-06-08 \"glyphosate-4.5sl 32 fl oz/acre\"",
            "For example: record --corrects A-27-001/2 --acres 70",
            "For example: record --import sprayed.csv --map sprayed-map.yaml",
            "For example: record --export --field ND-1 --from 2027-01-01",
            "For example: record --notice A-27-001",
            "The pass is judged as by 'check'; what is blocked is recorded too, since it was"
                + " sprayed.");
    which = new NamedTank(spec);
    corrects =
        Value.option(
            spec,
            "--corrects",
            "ID/LINE",
            String.class,
            "Put a new row in the place of this one: as it was, but for what is given here, and the"
                + " product with its rate where one is typed.");
    voids = Flag.option(spec, "--void", "With --corrects: it was not sprayed at all.");
    id =
        Value.option(
            spec,
            "--id",
            "ID",
            String.class,
            "Id of the pass; the next of the season, A-27-004, when left out.");
    again = Flag.option(spec, "--again", "Write it down though the journal has the same already.");
    table =
        Value.option(
            spec,
            "--import",
            "CSV",
            Path.class,
            "Write down all rows of a table of sprayings, or none.");
    map =
        Value.option(
            spec,
            "--map",
            "YAML",
            Path.class,
            "With --import: which of its columns is which of the journal's; not needed where the"
                + " names are the same.");
    journal = new JournalOutput(spec);
    typed = new TypedTank(spec);
    facts = new RecordOptions(spec);
    bookOption = new BookOption(spec);
    todayOption = new TodayOption(spec);
    output = new OutputOption(spec);
  }

  @Override
  public Integer call() {
    LocalDate today = todayOption.read();
    checkCall();
    BookPaths paths = bookOption.paths();
    Book book = bookOption.load(paths);
    if (journal.isAsked()) {
      output.print(journal.of(book, typed.field(), today));
      return ExitCode.DONE;
    }
    if (table.value() != null) {
      return imported(book, paths, table.value(), today);
    }
    RecordedPass done =
        corrects.value() != null
            ? correction(book, paths, corrects.value(), today)
            : pass(book, paths, today);
    ReportHead head = ReportHead.of(book, List.of(done.field()), today);
    // What is printed tells that it is on the disk.
    output.print(output.json() ? RecordJson.of(book, head, done) : RecordText.of(book, head, done));
    return ExitCode.DONE;
  }

  private int imported(Book book, BookPaths paths, Path from, LocalDate today) {
    List<NewPass> passes = JournalImport.read(from, Optional.ofNullable(map.value()), paths, book);
    JournalWriter.Written written = JournalWriter.passes(paths, book, passes, againOrNot());
    List<ImportedPass> done = ImportedPass.of(book, written);
    ReportHead head = ReportHead.of(book, List.of(), today);
    output.print(
        output.json()
            ? ImportJson.of(head, done, written.addedColumns())
            : ImportText.of(head, done, written.addedColumns()));
    return ExitCode.DONE;
  }

  private JournalWriter.Again againOrNot() {
    return again.isGiven() ? JournalWriter.Again.ALLOWED : JournalWriter.Again.REFUSED;
  }

  /** Whether nothing is said of a pass that is to be written down. */
  private boolean saysNothingElse() {
    return which.words().isEmpty()
        && which.pass() == null
        && !corrects.isGiven()
        && !id.isGiven()
        && !voids.isGiven()
        && facts.isEmpty();
  }

  private void checkOutput() {
    boolean one = journal.export() != (journal.notice() != null);
    boolean narrowed = journal.narrows() || typed.field() != null;
    if (!one
        || journal.notice() != null && narrowed
        || table.isGiven()
        || again.isGiven()
        || output.json()) {
      throw wrong(
          "--export prints a table, --notice a text, each alone; --field, --customer, --from and"
              + " --to narrow an export");
    }
    if (!saysNothingElse()) {
      throw wrong("--export and --notice write nothing down; leave out what belongs to a pass");
    }
  }

  private void checkCall() {
    if (journal.isAsked()) {
      checkOutput();
      return;
    }
    if (journal.narrows()) {
      throw wrong("--customer, --from and --to belong to --export");
    }
    if (table.isGiven() || map.isGiven()) {
      if (!table.isGiven() || typed.field() != null || !saysNothingElse()) {
        throw wrong("--import reads a table alone, with --map where its columns have other names");
      }
      return;
    }
    if (voids.isGiven() && (!corrects.isGiven() || !which.words().isEmpty())) {
      throw wrong("--void goes with --corrects ID/LINE alone");
    }
    if (corrects.isGiven()) {
      if (which.words().size() > 1
          || which.pass() != null
          || typed.field() != null
          || id.isGiven()
          || again.isGiven()) {
        throw wrong(
            "--corrects mends one row; give what is to be different, and at most a product");
      }
      return;
    }
    if (which.words().isEmpty()) {
      throw wrong("nothing to record: name a mix, a program with --pass, or --field with products");
    }
    if (typed.field() == null && which.words().size() != 1) {
      throw wrong("one mix at a time; products typed here need --field");
    }
    if (typed.field() != null && which.pass() != null) {
      throw wrong("--pass is of a program; --field is for products typed here");
    }
    if (typed.hasVolume() && (typed.field() == null || typed.volumeIsWrong())) {
      throw wrong("--volume is that of products typed here, above zero, as 15");
    }
  }

  private ParameterException wrong(String what) {
    return new ParameterException(spec.commandLine(), what);
  }

  private RecordedPass pass(Book book, BookPaths paths, LocalDate today) {
    NamedJob named = named(book, paths, today);
    Field where = book.findField(named.job().field().value()).orElseThrow();
    Map<String, String> given = facts.cells();
    Function<String, Mark> marks = facts.where(named.source());
    SprayJob job =
        PassCells.met(named.job(), book.catalog().crop(where.crop()), book.season(), given, marks);
    if (job.date().isAfter(today)) {
      throw ProblemsException.of(
          marks.apply("date"),
          job.date() + " is after today, " + today,
          "record what was sprayed; the day of the spraying is --date");
    }
    List<Map<String, String>> lines = new ArrayList<>();
    for (Map<String, String> line : PassCells.of(job, where, book.season(), named.name())) {
      Map<String, String> cells = new LinkedHashMap<>(line);
      given.forEach((column, text) -> put(cells, column, text, lines.isEmpty()));
      lines.add(cells);
    }
    NewPass fresh =
        NewPass.of(Optional.ofNullable(id.value()), book.season(), facts.numbered(lines), marks);
    // Judged before it is written, so that a failure to judge leaves nothing behind.
    TankOnItsDay tank = TankOnItsDay.of(book, paths, job);
    Judgement judgement = tank.judge(book, today).judge(tank.job()).judgement();
    JournalWriter.Written written = JournalWriter.passes(paths, book, List.of(fresh), againOrNot());
    return new RecordedPass(
        where,
        job.date(),
        written,
        Optional.of(judgement),
        FederalRecord.of(where, job.date(), written.rows()));
  }

  /** A note goes on the first line, beside what the mix says. */
  private static void put(
      Map<String, String> cells, String column, String text, boolean firstLine) {
    if (!column.equals("note")) {
      cells.put(column, text);
    } else if (firstLine) {
      String before = cells.getOrDefault("note", "");
      cells.put("note", before.isEmpty() ? text : text + "; " + before);
    }
  }

  private NamedJob named(Book book, BookPaths paths, LocalDate today) {
    if (typed.field() != null) {
      return NamedJob.typed(
          book, typed.field(), dateIn(book, today), typed.volume(), which.words(), "record");
    }
    return which.pass() != null
        ? NamedJob.pass(book, paths, which.words().get(0), which.pass(), dateIn(book, today))
        : NamedJob.mix(book, paths, which.words().get(0));
  }

  /** A day that cannot be read is told later, with all the rest. */
  private LocalDate dateIn(Book book, LocalDate today) {
    return PassCells.date(facts.cells(), book.season()).orElse(today);
  }

  private RecordedPass correction(Book book, BookPaths paths, String target, LocalDate today) {
    Map<String, String> changed = new LinkedHashMap<>(facts.cells());
    if (!which.words().isEmpty()) {
      changed.putAll(PassCells.dose(MixWords.dose(book, which.words().get(0))));
    }
    Optional<Application> old = JournalWriter.find(book, target);
    Map<String, String> line = new LinkedHashMap<>(changed);
    line.putIfAbsent("product", old.map(a -> a.dose().product().id().value()).orElse(""));
    String number = facts.numbered(List.of(line)).get(0).getOrDefault("epaRegNo", "");
    if (!number.isEmpty()) {
      changed.put("epaRegNo", number);
    }
    if (changed.isEmpty() && !voids.isGiven()) {
      throw wrong("--corrects needs what is to be different, or --void");
    }
    Function<String, Mark> marks = facts.where("record");
    LocalDate date =
        PassCells.date(changed, book.season())
            .orElseGet(() -> old.map(Application::date).orElse(today));
    if (date.isAfter(today)) {
      throw ProblemsException.of(
          marks.apply("date"), date + " is after today, " + today, "write the day of the spraying");
    }
    JournalWriter.Written written =
        JournalWriter.correct(paths, book, new Correction(target, voids.isGiven(), changed, marks));
    Field where = book.findField(written.field()).orElseThrow();
    return new RecordedPass(
        where, date, written, Optional.empty(), FederalRecord.of(where, date, written.passes()));
  }
}
