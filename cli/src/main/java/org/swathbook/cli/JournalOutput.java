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
import picocli.CommandLine.Model.CommandSpec;

/** What goes out of the journal: a table of rows, or the notice of one pass. */
final class JournalOutput {
  private final Flag export;
  private final Value<String> customer;
  private final Value<LocalDate> from;
  private final Value<LocalDate> to;
  private final Value<String> notice;

  JournalOutput(CommandSpec command) {
    export =
        Flag.option(
            command,
            "--export",
            "Print the journal after corrections as a CSV table, with customer, place, totals and"
                + " what the federal record lacks.");
    customer =
        Value.option(
            command,
            "--customer",
            "GROWER",
            String.class,
            "With --export: the fields of this grower alone.");
    from =
        Value.option(
            command,
            "--from",
            "DATE",
            LocalDate.class,
            new TodayOption.IsoDate(),
            "With --export: sprayed on this day or later.");
    to =
        Value.option(
            command,
            "--to",
            "DATE",
            LocalDate.class,
            new TodayOption.IsoDate(),
            "With --export: sprayed on this day or earlier.");
    notice =
        Value.option(
            command,
            "--notice",
            "ID|DATE",
            String.class,
            "Print the entry notice of this pass, or those of every pass of a day, a page each.");
  }

  boolean export() {
    return export.isGiven();
  }

  @Nullable String notice() {
    return notice.value();
  }

  boolean isAsked() {
    return export.isGiven() || notice.isGiven();
  }

  /** Whether something was narrowed that only an export has. */
  boolean narrows() {
    return customer.isGiven() || from.isGiven() || to.isGiven();
  }

  String of(Book book, @Nullable String field, LocalDate today) {
    return notice.value() != null ? notice(book, notice.value(), today) : table(book, field);
  }

  private String table(Book book, @Nullable String typed) {
    String grower = customer.value();
    LocalDate first = from.value();
    LocalDate last = to.value();
    if (typed != null && book.findField(typed).isEmpty()) {
      List<String> ids = book.fields().stream().map(f -> f.id().value()).toList();
      throw ProblemsException.of(
          Mark.startOf("--field"),
          "'" + typed + "' is no field of the book",
          "write one of " + String.join(", ", ids));
    }
    List<String> growers = book.fields().stream().map(Field::grower).distinct().toList();
    if (grower != null && growers.stream().noneMatch(g -> isSame(g, grower))) {
      throw ProblemsException.of(
          Mark.startOf("--customer"),
          "no field of the book is farmed by '" + grower + "'",
          "write one of " + String.join(", ", growers));
    }
    List<Application> rows =
        book.journal().applications().stream()
            .filter(a -> typed == null || a.field().matches(typed))
            .filter(a -> grower == null || isSame(grower(book, a), grower))
            .filter(a -> first == null || !a.date().isBefore(first))
            .filter(a -> last == null || !a.date().isAfter(last))
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
