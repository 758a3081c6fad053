package org.swathbook.cli;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.swathbook.book.Application;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.cli.report.JournalTable;
import org.swathbook.cli.report.ReportHead;
import org.swathbook.cli.text.NoticeText;
import org.swathbook.source.Mark;
import org.swathbook.source.ProblemsException;
import picocli.CommandLine.Option;

/** What goes out of the journal: a table of rows, or the notice of one pass. */
final class JournalOutput {
  @Option(
      names = "--export",
      description =
          "Print the journal after corrections as a CSV table, with customer, place, totals and what"
              + " the federal record lacks.")
  boolean export;

  @Option(
      names = "--customer",
      paramLabel = "GROWER",
      description = "With --export: the fields of this grower alone.")
  @Nullable String customer;

  @Option(
      names = "--from",
      paramLabel = "DATE",
      converter = TodayOption.IsoDate.class,
      description = "With --export: sprayed on this day or later.")
  @Nullable LocalDate from;

  @Option(
      names = "--to",
      paramLabel = "DATE",
      converter = TodayOption.IsoDate.class,
      description = "With --export: sprayed on this day or earlier.")
  @Nullable LocalDate to;

  @Option(
      names = "--notice",
      paramLabel = "ID|DATE",
      description =
          "Print the entry notice of this pass, or those of every pass of a day, a page each.")
  @Nullable String notice;

  boolean isAsked() {
    return export || notice != null;
  }

  /** Whether something was narrowed that only an export has. */
  boolean narrows() {
    return customer != null || from != null || to != null;
  }

  String of(Book book, @Nullable String field, LocalDate today) {
    return notice != null ? notice(book, notice, today) : table(book, field);
  }

  private String table(Book book, @Nullable String typed) {
    if (typed != null && book.findField(typed).isEmpty()) {
      List<String> ids = book.fields().stream().map(f -> f.id().value()).toList();
      throw ProblemsException.of(
          Mark.startOf("--field"),
          "'" + typed + "' is no field of the book",
          "write one of " + String.join(", ", ids));
    }
    List<String> growers = book.fields().stream().map(Field::grower).distinct().toList();
    if (customer != null && growers.stream().noneMatch(g -> isSame(g, customer))) {
      throw ProblemsException.of(
          Mark.startOf("--customer"),
          "no field of the book is farmed by '" + customer + "'",
          "write one of " + String.join(", ", growers));
    }
    List<Application> rows =
        book.journal().applications().stream()
            .filter(a -> typed == null || a.field().matches(typed))
            .filter(a -> customer == null || isSame(grower(book, a), customer))
            .filter(a -> from == null || !a.date().isBefore(from))
            .filter(a -> to == null || !a.date().isAfter(to))
            .toList();
    if (rows.isEmpty()) {
      throw ProblemsException.of(
          Mark.startOf("applications.csv"),
          "no row is of these fields and days",
          "ask for more fields, or a longer time");
    }
    return JournalTable.csv(book, rows);
  }

  private static String grower(Book book, Application a) {
    return book.findField(a.field().value()).map(Field::grower).orElse("");
  }

  private static boolean isSame(String grower, @Nullable String typed) {
    return grower
        .toLowerCase(Locale.ROOT)
        .equals(Objects.requireNonNull(typed).strip().toLowerCase(Locale.ROOT));
  }

  /** A form feed stands between notices: each is posted at its own field. */
  private static String notice(Book book, String asked, LocalDate today) {
    String id = asked.strip();
    boolean isDay = id.matches("\\d{4}-\\d{2}-\\d{2}");
    Map<String, List<Application>> passes = new LinkedHashMap<>();
    book.journal().applications().stream()
        .filter(a -> isDay ? a.date().toString().equals(id) : a.pass().equals(id))
        .forEach(a -> passes.computeIfAbsent(a.pass(), p -> new ArrayList<>()).add(a));
    if (passes.isEmpty()) {
      throw ProblemsException.of(
          Mark.startOf("--notice"),
          "the journal has no pass " + (isDay ? "on " + id : "'" + id + "'"),
          "write the id of a pass, as A-27-001, or a day on which it has passes");
    }
    return passes.values().stream()
        .map(
            rows ->
                NoticeText.of(
                    book,
                    ReportHead.of(book, List.of(), today),
                    book.findField(rows.get(0).field().value()).orElseThrow(),
                    rows))
        .collect(Collectors.joining("\f"));
  }
}
