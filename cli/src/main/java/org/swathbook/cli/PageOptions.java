package org.swathbook.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.book.file.BookPaths;
import org.swathbook.book.file.ProgramReader;
import org.swathbook.cli.html.HandoutHtml;
import org.swathbook.cli.html.PlanHtml;
import org.swathbook.cli.report.PlannedField;
import org.swathbook.cli.report.ReportHead;
import org.swathbook.cli.report.SeasonCalendar;
import org.swathbook.plan.FieldPlan;
import org.swathbook.program.FieldId;
import org.swathbook.program.Program;
import org.swathbook.source.NewFiles;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;

/** A plan as a page, and what its charts are drawn from. */
final class PageOptions {
  private final Value<Path> html;
  private final Value<Path> handout;

  PageOptions(CommandSpec command) {
    html =
        Value.option(
            command,
            "--html",
            "FILE",
            Path.class,
            "Write a page with charts, to read and to print, in place of text.");
    handout =
        Value.option(
            command,
            "--handout",
            "FILE",
            Path.class,
            "Write the grower's copy: a page of the farm with what to order, and a page a field in"
                + " plain words.");
  }

  @Nullable Path html() {
    return html.value();
  }

  @Nullable Path handout() {
    return handout.value();
  }

  /** Of the first program of each field; filled while fields are planned, from several threads. */
  private final Map<FieldId, SeasonCalendar> calendars = new ConcurrentHashMap<>();

  /** What is to be written, in its order. */
  List<Path> files() {
    return Stream.of(html.value(), handout.value()).filter(Objects::nonNull).toList();
  }

  boolean isGiven() {
    return html.isGiven() || handout.isGiven();
  }

  /** Looks before the work whether the call makes sense and the page can be written. */
  void check(CommandLine command, boolean json, boolean force) {
    if (isGiven() && json) {
      throw new ParameterException(command, "--html and --handout write a page in place of --json");
    }
    if (SheetOptions.isOneNamedTwice(files())) {
      throw new ParameterException(command, "--html and --handout name the same file");
    }
    for (Path file : files()) {
      HtmlOption.checkFree(file, force);
    }
  }

  /** Keeps what a chart needs of the trace, which is not kept. */
  void keep(Book book, FieldPlan plan) {
    if (isGiven() && !plan.programs().isEmpty()) {
      calendars.put(
          plan.field().id(),
          SeasonCalendar.of(book, plan.traces(), plan.programs().get(0).outcome()));
    }
  }

  /** The version of each field's program that the book keeps; read before it is written over. */
  Map<FieldId, Program> earlier(Book book, BookPaths paths, List<Field> fields) {
    Map<FieldId, Program> out = new HashMap<>();
    for (Field f : !handout.isGiven() ? List.<Field>of() : fields) {
      Path file = paths.programOf(f.id());
      if (Files.exists(file)) {
        out.put(f.id(), ProgramReader.read(file, paths, book));
      }
    }
    return out;
  }

  /** What was asked for, to be written. */
  NewFiles made(
      Book book, ReportHead head, List<PlannedField> plans, Map<FieldId, Program> earlier) {
    Map<FieldId, SeasonCalendar> all = Map.copyOf(calendars);
    NewFiles out = new NewFiles();
    if (html.value() != null) {
      HtmlOption.put(out, html.value(), PlanHtml.of(book, head, plans, all));
    }
    if (handout.value() != null) {
      HtmlOption.put(out, handout.value(), HandoutHtml.of(book, head, plans, all, earlier));
    }
    return out;
  }

  /** What is told once they are written, a line each. */
  String written() {
    return files().stream().map(HtmlOption::written).collect(Collectors.joining());
  }
}
