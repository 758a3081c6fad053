package org.swathbook.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.book.file.BookPaths;
import org.swathbook.book.file.ObservationDraft;
import org.swathbook.book.file.ObservationFile;
import org.swathbook.book.file.ObservationReader;
import org.swathbook.book.file.WatchFile;
import org.swathbook.catalog.Site;
import org.swathbook.cli.html.EscapesHtml;
import org.swathbook.cli.json.EscapesJson;
import org.swathbook.cli.report.ReportHead;
import org.swathbook.cli.terminal.Answers;
import org.swathbook.cli.terminal.ExitCode;
import org.swathbook.cli.text.DueText;
import org.swathbook.cli.text.EscapesText;
import org.swathbook.escapes.DueLook;
import org.swathbook.escapes.EscapeJudge;
import org.swathbook.escapes.EscapeReport;
import org.swathbook.escapes.WeedReading;
import org.swathbook.program.Observation;
import org.swathbook.source.NewFiles;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;

/** Judges what lived through a pass, or tells where a look is due. */
final class EscapesCommand implements Callable<Integer> {
  final CommandSpec spec = CommandSpec.wrapWithoutInspection(this);
  private final Value<String> observation;
  private final Value<String> field;
  private final Value<LocalDate> date;
  private final Value<String> save;
  private final Flag due;
  private final Flag watch;
  private final ReportOptions options;

  EscapesCommand() {
    spec.name("escapes")
        .usageMessage()
        .description(
            "Judges the plants that were seen after a pass: dead, dying or living on, what the"
                + " survivors cost, and whether to look again, spray again or stop the seed.",
            "Without an observation it asks, question by question, for what a file would hold.",
            "With --due: the passes of the journal that somebody should look at.",
            "For example: escapes nd-1-june",
            "For example: escapes --field ND-1 --save nd-1-july");
    observation =
        Value.positional(
            spec,
            "OBSERVATION",
            String.class,
            "A file, else a name in the folder observations of the book; asked for step by step"
                + " when left out.");
    field =
        Value.option(
            spec,
            "--field",
            "FIELD",
            String.class,
            "The field that is asked about; asked for when left out.");
    date =
        Value.option(
            spec,
            "--date",
            "DATE",
            LocalDate.class,
            new TodayOption.IsoDate(),
            "The day on which it was sprayed; asked for when left out.");
    save =
        Value.option(
            spec,
            "--save",
            "NAME",
            String.class,
            "Keep the answers: a name in the folder observations of the book, or a file. Asked for"
                + " when left out; --force writes over one that is there.");
    due = Flag.option(spec, "--due", "Tell which passes should be looked at, and when.");
    watch =
        Flag.option(
            spec,
            "--watch",
            "Add a suspicion that is worth a test to watch.csv, unless it stands there already.");
    options = ReportOptions.of(spec);
  }

  @Override
  public Integer call() {
    LocalDate today = options.today().read();
    check();
    BookPaths paths = options.book().paths();
    Path kept = save.value() != null ? paths.newObservation(save.value()) : null;
    if (kept != null) {
      ObservationFile.checkFree(kept, paths, options.html().force());
    }
    Book book = options.book().load(paths);
    if (due.isGiven()) {
      return due(book, paths, today);
    }
    if (observation.value() == null) {
      return asked(book, paths, kept, today);
    }
    Observation seen =
        ObservationReader.read(
            paths.find(BookPaths.Kind.OBSERVATION, observation.value()), paths, book);
    return judge(book, paths, seen, null, today);
  }

  private void check() {
    if (due.isGiven()
        && (observation.isGiven()
            || watch.isGiven()
            || field.isGiven()
            || date.isGiven()
            || save.isGiven())) {
      throw new ParameterException(
          spec.commandLine(), "--due asks about the whole book, and goes with none of the rest");
    }
    if (observation.isGiven() && (field.isGiven() || date.isGiven() || save.isGiven())) {
      throw new ParameterException(
          spec.commandLine(),
          "--field, --date and --save belong to questions; an observation, as nd-1-june, holds the"
              + " answers");
    }
    if (due.isGiven() && options.isPage()) {
      throw new ParameterException(
          spec.commandLine(), "--due is told as text and with --json, not on a page");
    }
    if (!save.isGiven() || options.isPage()) {
      options.checkForm();
    }
  }

  /** Asks, keeps the answers where somebody wants them kept, and judges them. */
  private int asked(Book book, BookPaths paths, @Nullable Path kept, LocalDate today) {
    Answers answers = Swathbook.of(spec).answers();
    EscapesQuestions questions = new EscapesQuestions(book, paths, answers, today);
    ObservationDraft draft = questions.ask(field.value(), date.value());
    Observation seen = draft.read();
    @Nullable Path[] file = {kept};
    if (kept == null) {
      answers.ask(
          "Keep these answers, and under which name?",
          "as " + draft.suggestedName(),
          "not kept",
          text -> {
            Path typed = paths.newObservation(text);
            ObservationFile.checkFree(typed, paths, options.html().force());
            file[0] = typed;
          });
    }
    return judge(
        book,
        paths,
        seen,
        file[0] == null ? null : ObservationFile.of(file[0], paths, draft),
        today);
  }

  /**
   * @param kept the answers, to be written once everything is judged
   */
  private int judge(
      Book book, BookPaths paths, Observation seen, @Nullable NewFiles kept, LocalDate today) {
    Field where = book.findField(seen.field().value()).orElseThrow();
    EscapeReport report = EscapeJudge.judge(book, seen, today);
    List<WatchFile.Entry> entries = entries(book, report);
    ReportHead head = ReportHead.of(book, List.of(where), today);
    if (kept != null) {
      head = head.noted(List.of("Kept as " + String.join(", ", kept.shown()) + "."));
    }
    Told told = new Told(book, head, where, report, entries);
    if (watch.isGiven()) {
      // What is added is known once the file is held, and stands on the page that is written with
      // it.
      List<WatchFile.Entry> fresh =
          WatchFile.add(paths, book, entries, f -> files(told.noted(added(f)), kept));
      print(told.noted(added(fresh)));
    } else {
      files(told, kept).write();
      print(told);
    }
    return ExitCode.DONE;
  }

  /** What is told of a look, whatever the form. */
  private record Told(
      Book book, ReportHead head, Field where, EscapeReport report, List<WatchFile.Entry> entries) {

    Told noted(List<String> notes) {
      return new Told(book, head.noted(notes), where, report, entries);
    }
  }

  /** The page, when one is wanted, and then the answers. */
  private NewFiles files(Told t, @Nullable NewFiles kept) {
    NewFiles out = new NewFiles();
    Path html = options.html().file();
    if (html != null) {
      String page = EscapesHtml.of(t.book(), t.head(), t.where(), t.report(), t.entries());
      HtmlOption.put(out, html, page);
    }
    return kept == null ? out : out.putAll(kept);
  }

  private void print(Told t) {
    Path html = options.html().file();
    if (html != null) {
      options.output().print(HtmlOption.written(html));
    } else {
      options.print(
          () -> EscapesJson.of(t.head(), t.where(), t.report(), t.entries()),
          () -> EscapesText.of(t.book(), t.head(), t.where(), t.report(), t.entries()));
    }
  }

  /**
   * A row a site that should have worked, of weeds whose suspicion is worth a test; what weeds.csv
   * lists already needs no watching.
   */
  private static List<WatchFile.Entry> entries(Book book, EscapeReport report) {
    List<WatchFile.Entry> out = new ArrayList<>();
    for (WeedReading w : report.weeds()) {
      if (w.suspicion().isWorthATest()) {
        for (Site site : w.suspicion().sites()) {
          if (isListed(book, report, w, site)) {
            continue;
          }
          out.add(
              new WatchFile.Entry(
                  report.seen().field(),
                  w.weed(),
                  site,
                  report.seen().seen(),
                  w.suspicion().level().word()
                      + " suspicion: "
                      + String.join("; ", w.suspicion().evidenceFor())));
        }
      }
    }
    return out;
  }

  private static boolean isListed(Book book, EscapeReport report, WeedReading w, Site site) {
    return book.weedsOf(report.seen().field()).stream()
        .filter(p -> p.weed().id().equals(w.weed()))
        .flatMap(p -> p.listed().stream())
        .anyMatch(r -> !r.isWatched() && r.site().filter(site::equals).isPresent());
  }

  private static List<String> added(List<WatchFile.Entry> fresh) {
    return List.of(
        fresh.isEmpty()
            ? "watch.csv: nothing to add."
            : "watch.csv: added "
                + fresh.stream()
                    .map(e -> e.weed() + " and site " + e.site())
                    .collect(Collectors.joining(", "))
                + ".");
  }

  private int due(Book book, BookPaths paths, LocalDate today) {
    Set<DueLook.Looked> looked =
        paths.observations().stream()
            .map(f -> ObservationReader.read(f, paths, book))
            // A look that came too early does not stand for the one that is due.
            .filter(o -> EscapeJudge.isLateEnough(book, o))
            .map(o -> new DueLook.Looked(o.field(), o.sprayed()))
            .collect(Collectors.toSet());
    List<DueLook> all = DueLook.of(book, today, looked);
    ReportHead head = ReportHead.of(book, List.of(), today);
    options.print(() -> EscapesJson.due(head, all), () -> DueText.of(head, all));
    return ExitCode.DONE;
  }
}
