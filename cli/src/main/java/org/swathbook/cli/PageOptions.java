package org.swathbook.cli;

import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;
import org.swathbook.book.Book;
import org.swathbook.cli.report.SeasonCalendar;
import org.swathbook.plan.FieldPlan;
import org.swathbook.program.FieldId;
import picocli.CommandLine;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

/** A plan as a page, and what its charts are drawn from. */
final class PageOptions {
  @Option(
      names = "--html",
      paramLabel = "FILE",
      description = "Write a page with charts, to read and to print, in place of text.")
  @Nullable Path html;

  /** Of the first program of each field; filled while fields are planned, from several threads. */
  private final Map<FieldId, SeasonCalendar> calendars = new ConcurrentHashMap<>();

  boolean isGiven() {
    return html != null;
  }

  /** Looks before the work whether the call makes sense and the page can be written. */
  void check(CommandLine command, boolean json, boolean force) {
    if (html == null) {
      return;
    }
    if (json) {
      throw new ParameterException(command, "--html writes a page in place of --json");
    }
    HtmlOption.checkFree(html, force);
  }

  /** Keeps what a chart needs of the trace, which is not kept. */
  void keep(Book book, FieldPlan plan) {
    if (isGiven() && !plan.programs().isEmpty()) {
      calendars.put(
          plan.field().id(),
          SeasonCalendar.of(book, plan.traces(), plan.programs().get(0).outcome()));
    }
  }

  Map<FieldId, SeasonCalendar> calendars() {
    return Map.copyOf(calendars);
  }
}
