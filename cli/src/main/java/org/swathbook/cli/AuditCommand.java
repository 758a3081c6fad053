package org.swathbook.cli;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import org.swathbook.audit.ActiveLedger;
import org.swathbook.audit.FieldLedger;
import org.swathbook.audit.PlannedAndApplied;
import org.swathbook.audit.SiteAudit;
import org.swathbook.audit.WhatIf;
import org.swathbook.audit.WhatIfAudit;
import org.swathbook.audit.WhatIfResult;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.cli.html.AuditHtml;
import org.swathbook.cli.html.PlannedHtml;
import org.swathbook.cli.html.WhatIfHtml;
import org.swathbook.cli.json.AuditJson;
import org.swathbook.cli.json.LedgerJson;
import org.swathbook.cli.json.PlannedJson;
import org.swathbook.cli.json.WhatIfJson;
import org.swathbook.cli.report.ReportHead;
import org.swathbook.cli.report.WatchNotes;
import org.swathbook.cli.terminal.ExitCode;
import org.swathbook.cli.terminal.Patience;
import org.swathbook.cli.text.AuditText;
import org.swathbook.cli.text.LedgerText;
import org.swathbook.cli.text.PlannedText;
import org.swathbook.cli.text.WhatIfText;
import org.swathbook.cli.work.PlannedProgram;
import org.swathbook.source.Mark;
import org.swathbook.source.Problems;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;

/** Looks through the journal of fields: diversity of sites, or the ledger. */
final class AuditCommand implements Callable<Integer> {
  final CommandSpec spec = CommandSpec.wrapWithoutInspection(this);
  private final AskedFields asked;
  private final Flag ledger;
  private final Words changes;
  private final Value<String> planned;
  private final Value<Integer> season;
  private final ReportOptions options;

  AuditCommand() {
    spec.name("audit")
        .usageMessage()
        .description(
            "Which fields lean on one chemistry: by driver weed and past season what sites of"
                + " action the journal has, which of them were effective, and how much of the weed"
                + " met fewer than two; the worst first. Then what the rules say of what was"
                + " sprayed.",
            "With --ledger: by field and active what the journal has used of caps and applications,"
                + " what is left, and until when intervals keep people, sprayers, harvest and next"
                + " crops off.",
            "With --what-if: what one change of the last season's passes would have done on every"
                + " field, judged by the same rules: second-foliar-site, overlapping-residual:WEED"
                + " or posts-by:STAGE; more than one are compared.",
            "With --planned: a program beside what the journal has of its season, pass by pass, and"
                + " what was promised beside what came of it.",
            "For example: audit OB-4",
            "For example: audit ND-1 --ledger",
            "For example: audit --what-if posts-by:V3");
    asked = new AskedFields(spec);
    ledger = Flag.option(spec, "--ledger", "Used and left of labels' limits, and open intervals.");
    changes =
        Words.option(
            spec,
            "--what-if",
            "CHANGE",
            "A change to try on every field; may be given more than once.");
    planned =
        Value.option(
            spec,
            "--planned",
            "PROGRAM",
            String.class,
            "A file, else a name in the folder programs of the book.");
    season =
        Value.option(
            spec,
            "--season",
            "YEAR",
            Integer.class,
            "With --planned: year of the harvest that the program was for; the last season of the"
                + " journal when left out.");
    options = ReportOptions.of(spec);
  }

  @Override
  public Integer call() {
    LocalDate today = options.today().read();
    options.checkForm();
    if (options.isPage() && ledger.isGiven()) {
      throw new ParameterException(
          spec.commandLine(), "--ledger is told as text and with --json, not on a page");
    }
    if (options.isJson()) {
      AuditJson.begin();
    }
    Book book = options.book().load(options.book().paths());
    if (planned.isGiven() || season.isGiven()) {
      againstJournal(book, today);
      return ExitCode.DONE;
    }
    if (changes.isGiven()) {
      List<WhatIf> asked = WhatIfWords.read(book.catalog(), changes.all(), ledger.isGiven());
      List<Field> of = fields(book);
      List<WhatIfResult> results = waiting(() -> WhatIfAudit.of(book, of, asked));
      ReportHead head = ReportHead.of(book, List.of(), today);
      options.print(
          () -> WhatIfHtml.of(book, head, results),
          () -> WhatIfJson.of(head, results),
          () -> WhatIfText.of(book, head, results));
      return ExitCode.DONE;
    }
    if (!ledger.isGiven()) {
      List<Field> asked = fields(book);
      SiteAudit audit = waiting(() -> SiteAudit.of(book, asked));
      // The seasons of the journal are walked, each in its own weather; the head lists no others.
      ReportHead head =
          ReportHead.of(book, List.of(), today)
              .noted(WatchNotes.of(book, asked))
              .noted(audit.notes());
      options.print(
          () -> AuditHtml.of(book, head, audit),
          () -> AuditJson.of(book.catalog(), head, audit),
          () -> AuditText.of(book, head, audit));
      return ExitCode.DONE;
    }
    Map<Field, List<ActiveLedger>> ledgers = new LinkedHashMap<>();
    fields(book).forEach(f -> ledgers.put(f, FieldLedger.of(book, f, today)));
    // Nothing here rests on weather years or on what was seen.
    ReportHead head = ReportHead.of(book, List.of(), today);
    options.print(() -> LedgerJson.of(head, ledgers), () -> LedgerText.of(book, head, ledgers));
    return ExitCode.DONE;
  }

  private <T> T waiting(Supplier<T> work) {
    return Patience.with(spec.commandLine().getErr(), "walking the seasons of the journal …", work);
  }

  private void againstJournal(Book book, LocalDate today) {
    PlannedAndApplied compared =
        new PlannedProgram(options.book().paths(), book)
            .compare(
                planned.value(),
                season.value(),
                changes.isGiven() || ledger.isGiven() || !asked.typed().isEmpty());
    ReportHead head = ReportHead.of(book, List.of(), today);
    options.print(
        () -> PlannedHtml.of(book, head, compared),
        () -> PlannedJson.of(head, compared),
        () -> PlannedText.of(book, head, compared));
  }

  private List<Field> fields(Book book) {
    if (asked.typed().isEmpty()) {
      return book.fields();
    }
    Problems problems = new Problems();
    List<String> known = book.fields().stream().map(f -> f.id().value()).toList();
    asked.typed().stream()
        .filter(n -> book.findField(n).isEmpty())
        .forEach(
            n ->
                problems.add(
                    Mark.startOf("FIELD"),
                    "'" + n + "' is no field of the book",
                    "write one of " + String.join(", ", known)));
    problems.throwIfAny();
    return asked.typed().stream().distinct().map(n -> book.findField(n).orElseThrow()).toList();
  }
}
